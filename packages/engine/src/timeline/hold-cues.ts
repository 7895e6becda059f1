import type { SpokenAmount } from './spoken-amount.ts';
import { holdMarks } from './time-marks.ts';
import type { Cue } from './timeline.ts';

/** Shortest hold whose half is said, milliseconds. */
export const HALF_FROM_MS = 10_000;
/** Shortest hold whose last three seconds are counted, milliseconds. */
export const COUNT_FROM_MS = 5_000;
/** Room a call needs to the next spoken word, milliseconds. Common practice, no source: a short line takes about that long. */
export const CALL_ROOM_MS = 1_500;

const SEARCH_STEP_MS = 100;

/**
 * Everything that is said in one hold: its beginning, its half, the calls and the count.
 * @param startMs the hold's start in the timeline, whole milliseconds
 * @param holdMs its length, whole milliseconds
 * @param lines lines to say, spread evenly; whoever calls has made sure that they may be said
 * @param spoken how much is said
 * @returns cues in order of time, all before the hold's end
 */
export function holdCues(
  startMs: number,
  holdMs: number,
  lines: readonly string[],
  spoken: SpokenAmount = 'usual',
): Cue[] {
  const endMs = startMs + holdMs;
  const cues: Cue[] = [{ atMs: startMs, kind: 'hold', words: 'Hold' }];
  if (spoken !== 'least' && holdMs >= HALF_FROM_MS)
    cues.push({ atMs: startMs + Math.round(holdMs / 2), kind: 'half', words: 'Half' });
  if (spoken === 'most') cues.push(...holdMarks(startMs, holdMs));
  if (holdMs >= COUNT_FROM_MS) {
    cues.push({ atMs: endMs - 3000, kind: 'count', words: 'three' });
    cues.push({ atMs: endMs - 2000, kind: 'count', words: 'two' });
    cues.push({ atMs: endMs - 1000, kind: 'count', words: 'one' });
  }
  // In order already: in most drills nothing else is said.
  if (lines.length === 0 && spoken !== 'most') return cues;
  const taken = [...cues.map((cue) => cue.atMs), endMs];
  let earliestMs = startMs;
  for (const [index, words] of lines.entries()) {
    const wishedMs = startMs + Math.round((holdMs * (index + 1)) / (lines.length + 1));
    const atMs = nearestFree(wishedMs, earliestMs, endMs, taken) ?? Math.max(wishedMs, earliestMs);
    taken.push(atMs);
    earliestMs = atMs;
    cues.push({ atMs, kind: 'call', words });
  }
  return cues.sort((a, b) => a.atMs - b.atMs);
}

/** The moment nearest to the wished one that leaves every spoken word its room, if there is one. */
function nearestFree(wishedMs: number, fromMs: number, toMs: number, taken: readonly number[]): number | undefined {
  const isFree = (atMs: number) =>
    atMs >= fromMs && atMs <= toMs && taken.every((other) => Math.abs(other - atMs) >= CALL_ROOM_MS);
  for (let shiftMs = 0; shiftMs <= toMs - fromMs; shiftMs += SEARCH_STEP_MS) {
    if (isFree(wishedMs - shiftMs)) return wishedMs - shiftMs;
    if (isFree(wishedMs + shiftMs)) return wishedMs + shiftMs;
  }
  return undefined;
}
