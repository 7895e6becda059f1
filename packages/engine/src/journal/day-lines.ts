import type { Arrows, DayEntry, Work } from './journal.ts';

/** Kinds of arrows, in the order of their fields. */
export const arrowKinds = ['blank bale', 'practice', 'scoring'] as const;
/** Kinds of work without a bow, in the order of their fields. */
export const workKinds = ['strength', 'mobility', 'fitness'] as const;

/**
 * The lines of arrows that a day's entry shows: one for each kind, and one more for each further distance.
 * @param entry the day
 * @returns lines in order of kind; what is not shot yet has the count 0
 */
export function arrowLines(entry: DayEntry): Arrows[] {
  const shot = entry.arrows ?? [];
  return arrowKinds.flatMap((kind) => {
    const lines = shot.filter((line) => line.kind === kind);
    return lines.length > 0 ? lines : [{ kind, count: 0 }];
  });
}

/**
 * Lines of arrows after one of them was changed.
 * @param lines as `arrowLines` gives them
 * @param index which one
 * @param changes its new count or distance
 * @returns what the entry keeps: lines that say something; undefined when none does
 */
export function changeArrows(
  lines: readonly Arrows[],
  index: number,
  changes: { count?: number; distanceM?: number | undefined },
): Arrows[] | undefined {
  const next = lines.map((line, place) => {
    if (place !== index) return line;
    const { distanceM, ...rest } = { ...line, ...changes };
    return {
      ...rest,
      count: within(rest.count, 2000),
      ...(distanceM === undefined ? {} : { distanceM: Math.min(Math.max(distanceM, 0), 200) }),
    };
  });
  return kept(next.filter(({ count, distanceM }) => count > 0 || distanceM !== undefined));
}

/**
 * The lines of work that a day's entry shows, one for each kind at least.
 * @param entry the day
 * @returns lines in order of kind; what is not done yet has 0 minutes
 */
export function workLines(entry: DayEntry): Work[] {
  const done = entry.work ?? [];
  return workKinds.flatMap((kind) => {
    const lines = done.filter((line) => line.kind === kind);
    return lines.length > 0 ? lines : [{ kind, minutes: 0 }];
  });
}

/**
 * Lines of work after one of them was changed.
 * @param lines as `workLines` gives them
 * @param index which one
 * @param changes its new minutes or effort
 * @returns what the entry keeps: lines that say something; undefined when none does
 */
export function changeWork(
  lines: readonly Work[],
  index: number,
  changes: { minutes?: number; effort?: number | undefined },
): Work[] | undefined {
  const next = lines.map((line, place) => {
    if (place !== index) return line;
    const { effort, ...rest } = { ...line, ...changes };
    return { ...rest, minutes: within(rest.minutes, 1440), ...(effort === undefined ? {} : { effort }) };
  });
  return kept(next.filter(({ minutes, effort }) => minutes > 0 || effort !== undefined));
}

/**
 * Reads a count that was typed.
 * @param text what is in the field
 * @param most the largest that is allowed
 * @returns a whole number from 0; 0 for what is no number
 */
export function parseCount(text: string, most: number): number {
  return within(Number.parseInt(text, 10), most);
}

function within(value: number, most: number): number {
  return Number.isFinite(value) ? Math.min(Math.max(Math.round(value), 0), most) : 0;
}

function kept<T>(lines: T[]): T[] | undefined {
  return lines.length > 0 ? lines : undefined;
}
