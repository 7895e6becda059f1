import { type BlockSummary, blockIn, type DrillSummary } from '../archer/drill-summary.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { BlockRules } from './block-rules.ts';
import { type Dose, leastOf, totalSeconds } from './dose.ts';

/**
 * What one drill says of one block.
 *
 * `clean` leads up; `missed` and `hard` lead down; `strained` (a few missed, or more effort than the file allows) ends a row of clean days;
 * `small` was too little to climb by, and `lighter` asked for less hold than is worked with: both hold the place; `neutral` says nothing;
 * `absent`: not in the drill.
 */
export type Verdict = 'absent' | 'neutral' | 'lighter' | 'small' | 'clean' | 'strained' | 'hard' | 'missed';

/** The share of the foot's time at full draw below which a drill holds the place and does not climb. */
const LEAST_SHARE = 0.3;
/** The share of the reps asked for that were held where a drill is clean in spite of let-downs for form or interruptions. Own: no source. */
const HELD_SHARE = 2 / 3;
/** Effort that is a failure when it comes again and again. */
export const HARD_EFFORT = 9;
/** A hold of less than this share of what is worked with was a shorter one. */
export const NEARLY = 0.98;
/** A drill of fewer reps than the place has: one hold that was let down in it is no share yet, however few there were. Own: no source. */
const SMALLER = 0.95;

/**
 * Judges one block of one drill by what the drill asked for: one that was cut to the minutes counts for what it asked.
 * @param record the drill
 * @param summary of the record
 * @param state what was worked with on the day, and its place on the ladder
 * @param rules the block's
 * @param isAfterClean whether a clean drill went before it on the day: what this one asks for may then be the next step, which the archer did not choose
 * @returns the verdict
 */
function judgeDrill(
  record: DrillRecord,
  summary: DrillSummary,
  { dose, level }: { dose: Dose; level: number },
  rules: BlockRules,
  isAfterClean: boolean,
): Verdict {
  const place = rules.path[level]!;
  const of = blockIn(summary, rules.index);
  if (!of) return 'absent';
  const notBegunCount = summary.notBegunCount > 0 && isLastBlock(summary, rules) ? summary.notBegunCount : 0;
  const saysCount = of.repCount + notBegunCount - of.formCount - of.doubtfulCount;
  const missedMatters = of.missedCount > 0 && (isAfterClean || !isBeyond(of, dose));
  const { reps, sets } = place;
  const isOneOfFew = of.missedCount === 1 && of.repCount < SMALLER * reps * sets;
  if (missedMatters && !isOneOfFew && of.missedCount / saysCount >= rules.missedShare) return 'missed';
  const effort = record.effort ?? 0;
  if (effort >= HARD_EFFORT) return 'hard';
  if (of.missedCount > 0) return missedMatters ? 'strained' : 'neutral';
  if (record.pain || effort > rules.effortAtMost) return 'strained';
  if (notBegunCount > 0 || !isMostlyHeld(of)) return 'neutral';
  if (of.longestAskedMs < dose.hold * 1000 * NEARLY) return 'lighter';
  return of.askedMs / 1000 < leastSecondsToClimb(rules, dose) - 1e-6 ? 'small' : 'clean';
}

function isLastBlock({ blocks }: DrillSummary, { index }: BlockRules): boolean {
  return blocks.every(({ block }) => block <= index);
}

/**
 * The time at full draw from which on a clean drill leads up.
 * @param rules the block's
 * @param dose what is worked with
 * @returns seconds: three tenths of the foot's, with no more hold and no more reps than are worked with
 */
export function leastSecondsToClimb({ path }: BlockRules, dose: Dose): number {
  return LEAST_SHARE * totalSeconds(leastOf(path[0]!, dose));
}

/** Whether enough reps were held to say that the drill was: one that was unsure or interrupted was not, however hard it was. */
export function isMostlyHeld({ heldCount, repCount }: BlockSummary): boolean {
  return heldCount >= HELD_SHARE * repCount;
}

/** Who asks more of themselves than was asked, and holds what was asked, has not failed it. */
function isBeyond({ longestAskedMs, mostHeldMs }: BlockSummary, dose: Dose): boolean {
  const doseMs = dose.hold * 1000;
  return longestAskedMs > doseMs / NEARLY && mostHeldMs >= doseMs;
}

const order: readonly Verdict[] = ['absent', 'neutral', 'small', 'lighter', 'clean', 'strained', 'hard', 'missed'];

/** What a day's drills say of one block: the gravest verdict, the first drill that has it, how many have it, and how many went badly in any way. */
export interface DayVerdict {
  verdict: Verdict;
  at: number;
  count: number;
  badCount: number;
}

/**
 * Judges one block of a day's drills. A day counts once, however many drills: the gravest verdict counts.
 * @param records the day's drills of the program
 * @param summaries of the records, in the same order
 * @param state what was worked with on the day, and its place on the ladder
 * @param rules the block's
 * @returns the verdict and its drills
 */
export function judgeDay(
  records: readonly DrillRecord[],
  summaries: readonly DrillSummary[],
  state: { dose: Dose; level: number },
  rules: BlockRules,
): DayVerdict {
  const day: DayVerdict = { verdict: 'absent', at: 0, count: 0, badCount: 0 };
  let isAfterClean = false;
  for (let at = 0; at < records.length; at++) {
    const verdict = judgeDrill(records[at]!, summaries[at]!, state, rules, isAfterClean);
    if (verdict === 'clean') isAfterClean = true;
    if (isBad(verdict)) day.badCount += 1;
    if (order.indexOf(verdict) > order.indexOf(day.verdict)) {
      day.verdict = verdict;
      day.at = at;
      day.count = 0;
    }
    if (verdict === day.verdict) day.count += 1;
  }
  return day;
}

/** It ends a row of clean days, and three of them running lead down. */
function isBad(verdict: Verdict): boolean {
  return order.indexOf(verdict) >= order.indexOf('strained');
}
