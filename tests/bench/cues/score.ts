/** How far one contestant's onsets were from the plan. Milliseconds; late is positive. */
export interface Score {
  name: string;
  p50: number;
  p95: number;
  p99: number;
  max: number;
  missed: number;
  /** Of the very first cue, before which nothing had sounded; NaN where it was missed. It is in the other figures too. */
  first: number;
  /** Lateness of the last tenth less that of the first tenth, each by its median. */
  drift: number;
}

/** Leaving a cue or an onset unpaired costs as much as an error of this many milliseconds. */
const UNPAIRED_MS = 700;

/**
 * Pairs onsets with planned cues in order, with the least total error.
 *
 * @param plannedMs when cues were due, ascending
 * @param heardMs when something was heard, ascending
 * @returns the error of each paired cue, in order of the plan, and the cue's place in it
 */
export function pairOnsets(
  plannedMs: readonly number[],
  heardMs: readonly number[],
): { place: number; error: number }[] {
  const width = heardMs.length + 1;
  const cost = new Float64Array((plannedMs.length + 1) * width);
  const at = (row: number, column: number): number => cost[row * width + column] ?? Number.POSITIVE_INFINITY;
  for (let row = 0; row <= plannedMs.length; row += 1) {
    for (let column = 0; column <= heardMs.length; column += 1) {
      if (row === 0 || column === 0) {
        cost[row * width + column] = (row + column) * UNPAIRED_MS;
        continue;
      }
      const error = Math.abs(heardMs[column - 1]! - plannedMs[row - 1]!);
      const unpaired = Math.min(at(row - 1, column), at(row, column - 1)) + UNPAIRED_MS;
      cost[row * width + column] = Math.min(at(row - 1, column - 1) + error, unpaired);
    }
  }
  const pairs: { place: number; error: number }[] = [];
  let row = plannedMs.length;
  let column = heardMs.length;
  while (row > 0 && column > 0) {
    const error = heardMs[column - 1]! - plannedMs[row - 1]!;
    if (Math.abs(at(row, column) - at(row - 1, column - 1) - Math.abs(error)) < 1e-6) {
      pairs.unshift({ place: row - 1, error });
      row -= 1;
      column -= 1;
    } else if (at(row - 1, column) <= at(row, column - 1)) row -= 1;
    else column -= 1;
  }
  return pairs;
}

/**
 * A contestant's figures.
 *
 * @param name who
 * @param plannedMs when cues were due, page clock
 * @param heardMs when they were heard, page clock
 */
export function score(name: string, plannedMs: readonly number[], heardMs: readonly number[]): Score {
  const pairs = pairOnsets(plannedMs, heardMs);
  const errors = pairs.map(({ error }) => error);
  const sizes = errors.map(Math.abs).sort((a, b) => a - b);
  const at = (ratio: number): number =>
    sizes[Math.min(sizes.length - 1, Math.ceil(ratio * sizes.length) - 1)] ?? Number.NaN;
  const tenth = Math.max(1, Math.floor(errors.length / 10));
  return {
    name,
    p50: at(0.5),
    p95: at(0.95),
    p99: at(0.99),
    max: at(1),
    missed: plannedMs.length - errors.length,
    first: pairs[0]?.place === 0 ? pairs[0].error : Number.NaN,
    drift: median(errors.slice(-tenth)) - median(errors.slice(0, tenth)),
  };
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}
