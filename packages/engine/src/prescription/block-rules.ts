import type { Block, Program } from '../program/program.ts';
import { type LeverValues, walkLadder } from './ladder-path.ts';

/** A block as the rules read it: its way up, and when it goes up or down. Made once for each program. */
export interface BlockRules {
  block: Block;
  index: number;
  /** Every place on its ladder, foot first; one place where it has no ladder. */
  path: readonly LeverValues[];
  isCut: boolean;
  cleanSessions: number;
  effortAtMost: number;
  missedShare: number;
  /** Failed sessions running before the dose goes down, by the file; the third goes down whatever it says. */
  failedSessions: number;
  layoff: readonly { days: number; stepsDown: number }[];
}

/** Half of the reps missed is a failed drill, whatever the file says. Own: no source. */
const MOST_MISSED_SHARE = 0.5;

const kept = new WeakMap<Program, readonly BlockRules[]>();

/**
 * The rules of every block of a program.
 * @param program a valid program
 * @returns one a block, in order
 */
export function rulesOf(program: Program): readonly BlockRules[] {
  const known = kept.get(program);
  if (known) return known;
  const rules = program.blocks.map((block, index): BlockRules => {
    const { ladder } = block;
    return {
      ...{ block, index, ...walkLadder(block) },
      cleanSessions: ladder?.climbAfter.cleanSessions ?? 2,
      effortAtMost: ladder?.climbAfter.effortAtMost ?? 7,
      missedShare: Math.min(MOST_MISSED_SHARE, ladder?.stepDownAfter.missedShare ?? 0.2),
      failedSessions: ladder?.stepDownAfter.sessions ?? 1,
      layoff: ladder?.layoff ?? [],
    };
  });
  kept.set(program, rules);
  return rules;
}

/** The weekly growth limits that a program's file sets, if any. */
export function growthLimitsOf({ blocks }: Program): number[] {
  return blocks.flatMap(({ ladder }) => ladder?.weeklyGrowth ?? []);
}
