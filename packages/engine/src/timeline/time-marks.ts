import { secondsWords } from './cue-words.ts';
import type { Cue } from './timeline.ts';

/** Shortest rest in which it is said how much is left, milliseconds. Common practice, no source. */
export const REST_MARKS_FROM_MS = 60_000;
/** What is left of a rest when it is said, milliseconds. */
const REST_MARKS_MS = [240_000, 180_000, 120_000, 60_000, 30_000] as const;
/** Shortest hold in which it can be said how much is left, milliseconds. */
const HOLD_MARKS_FROM_MS = 20_000;
const HOLD_MARK_MS = 10_000;
/** Room between a mark and the step's beginning, so that no two words run into each other, milliseconds. */
const ROOM_MS = 8_000;
/** Room between a mark and the word at half of the hold, milliseconds. */
const HALF_ROOM_MS = 3_000;

/**
 * What is said in a long rest, so that nobody has to look how much of it is left.
 * @param startMs the rest's start in the timeline, whole milliseconds
 * @param restMs its length, whole milliseconds
 * @returns marks in order of time; none in a rest under a minute
 */
export function restMarks(startMs: number, restMs: number): Cue[] {
  if (restMs < REST_MARKS_FROM_MS) return [];
  return REST_MARKS_MS.filter((leftMs) => restMs - leftMs >= ROOM_MS).map((leftMs) =>
    markAt(startMs + restMs - leftMs, leftMs),
  );
}

/**
 * What is said in a long hold, every ten seconds, of how much is left.
 * @param startMs the hold's start in the timeline, whole milliseconds
 * @param holdMs its length, whole milliseconds
 * @returns marks in order of time; none close to the word at half, and none in a hold under twenty seconds
 */
export function holdMarks(startMs: number, holdMs: number): Cue[] {
  if (holdMs < HOLD_MARKS_FROM_MS) return [];
  const marks: Cue[] = [];
  for (let leftMs = HOLD_MARK_MS; holdMs - leftMs >= ROOM_MS; leftMs += HOLD_MARK_MS) {
    const isNearHalf = Math.abs(leftMs - holdMs / 2) < HALF_ROOM_MS;
    if (!isNearHalf) marks.unshift(markAt(startMs + holdMs - leftMs, leftMs));
  }
  return marks;
}

function markAt(atMs: number, leftMs: number): Cue {
  return { atMs, kind: 'mark', words: secondsWords(leftMs / 1000) };
}
