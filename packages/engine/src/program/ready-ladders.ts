import type * as z from 'zod';
import { deload, layoff } from './built-in/rack.ts';
import type { programSchema } from './program.ts';

/** A ladder as a file says it: what is left out has its usual value. */
export type WrittenLadder = NonNullable<z.input<typeof programSchema>['blocks'][number]['ladder']>;

/** What a ready ladder does: only the hold grows; first the reps; or the hold, in the smallest steps. */
export type ReadyLadderKind = 'longer' | 'more' | 'gentle';

/** A ready-made ladder for a block. */
export interface ReadyLadder {
  kind: ReadyLadderKind;
  ladder: WrittenLadder;
}

/** Above it weight is added, not time (K. Lee, "SPT" text, as reprinted at usm-archery.blogspot.com, 2008). */
const LONGEST_HOLD_SECONDS = 45;
/** Steps that a ready ladder has before it asks to be thought over. Own: about two to three months at three sessions a week. */
const STEPS = 5;
const MOST_REPS = 60;

/**
 * Three ladders that fit a block, for whoever writes a program and does not want to work out one.
 * @param block hold in seconds and reps in a set, as the block begins
 * @returns the ladders in the order they are offered; those that have no room to climb are left out
 * @source 5 s steps: acearchers.com, "Archery Exercises"; above 45 s: see LONGEST_HOLD_SECONDS; smaller steps for shorter holds, and all else: own,
 * common practice, no source
 * @example
 * readyLadders({ hold: 30, reps: 10 }).map(({ kind }) => kind); // ['longer', 'more', 'gentle']
 */
export function readyLadders({ hold, reps }: { hold: number; reps: number }): ReadyLadder[] {
  const by = hold < 10 ? 1 : hold < 15 ? 2 : 5;
  const longer = rungOf(hold, by);
  const gentle = rungOf(hold, by === 5 ? 2 : 1);
  const repsBy = reps < 10 ? 1 : 2;
  const most = Math.min(MOST_REPS, reps + 3 * repsBy);
  const more =
    most >= reps + repsBy
      ? [{ raise: 'reps' as const, by: repsBy, until: most }, ...longer.map((rung) => ({ ...rung, resets: { reps } }))]
      : [];
  const always = { deload, layoff };
  const all: ReadyLadder[] = [
    { kind: 'longer', ladder: { rungs: longer, ...always } },
    { kind: 'more', ladder: { rungs: more, ...always } },
    { kind: 'gentle', ladder: { rungs: gentle, climbAfter: { cleanSessions: 4, effortAtMost: 5 }, ...always } },
  ];
  return all.filter(({ ladder }) => ladder.rungs.length > 0);
}

/** The hold by a number of seconds a step; none where there is no room for a step. */
function rungOf(hold: number, by: number) {
  const until = Math.min(LONGEST_HOLD_SECONDS, hold + STEPS * by);
  return until >= hold + by ? [{ raise: 'hold' as const, by, until }] : [];
}
