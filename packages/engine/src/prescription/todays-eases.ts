import { arrowsOf } from '../archer/day-sum.ts';
import { ANSWERS_A_STAGE } from '../archer/pain-state.ts';
import { dayOfNumber, mondayNumber } from '../units/calendar-day.ts';
import { levers } from './asked-number.ts';
import { doseOf, withDose } from './block-dose.ts';
import type { BlockRules } from './block-rules.ts';
import type { BlockState } from './block-state.ts';
import {
  type Dose,
  fewerReps,
  fewestOf,
  halfSeconds,
  isSameDose,
  leastHold,
  leastOf,
  shrink,
  totalSeconds,
} from './dose.ts';
import { HARD_EFFORT } from './judge-drill.ts';
import type { KnownToday } from './known-today.ts';
import { afterLayoff, LAYOFF_FROM_DAYS } from './layoff.ts';
import { hasManyArrows, MANY_ARROWS } from './many-arrows.ts';
import type { PrescribedBlock } from './prescription.ts';
import { isLighter, LAST_DRILLS } from './program-state.ts';
import type { Reason, RuleFacts } from './reason.ts';
import { reasonOf } from './reason-of.ts';
import { taper } from './taper.ts';

// The shares are ours, and err to less: common practice, no source.
const HEAVY_KEEP = 0.7;
const EFFORT_KEEP = 0.8;
const ARROWS_KEEP = 0.8;
/** What is left of the time at full draw on the way back after pain, at the most. */
export const STAGE_KEEP = { mimed: 0.2, band: 0.3, 'light-bow': 0.45, bow: 0.65 } as const;
/** A first bad day elsewhere leaves so much of the hold. */
const KEPT_ON_A_BAD_DAY = 0.7;
const ELSEWHERE_DAYS = 28;

/** One block on its way to today's numbers. */
export interface Work {
  rules: BlockRules;
  state: BlockState;
  block: PrescribedBlock;
}

/**
 * Eases a block where today asks for less. Causes are not multiplied: each takes from what is worked with, and of each lever the least that any of
 * them leaves is asked for.
 * @param work the block, fitted to the minutes
 * @param known everything that is known today
 * @returns the block, and the reasons of what acted
 */
export function easeBlock(
  work: Work,
  known: KnownToday,
): { block: PrescribedBlock; reasons: Reason[]; isEased: boolean } {
  const full = doseOf(work.block);
  const reasons: Reason[] = [];
  // What the last drill of this program left, until the next one is done. Its reason is beside the ladder's.
  const worked = work.state.easedFrom ? leastOf(full, work.state.dose) : full;
  let isEased = work.state.easedFrom !== undefined;
  let dose = worked;
  for (const ease of [away, wayBack, elsewhere]) {
    const found = ease(work, worked, known);
    if (!found) continue;
    const next = leastOf(dose, found.dose);
    isEased = true;
    if (!isSameDose(next, dose)) reasons.push(found.reasonFor(dose, next));
    dose = next;
  }
  const cuts = [deload(work, known), seasonal(known), tapered(known), effort(known), heavy(known), ...arrows(known)];
  const deepest = cuts.filter((cut) => cut !== undefined).sort((a, b) => a.keep - b.keep)[0];
  if (!deepest) return { block: withDose(work.block, dose), reasons, isEased };
  const { keep } = deepest;
  const less = fewestOf(dose, fewerReps(withoutAway(work, worked, full, known), keep * totalSeconds(full)));
  const isLess = totalSeconds(less) < totalSeconds(dose);
  // A graver cause has reduced it by as much already; where nothing acted, even the least there is must say so.
  if (isLess || (reasons.length === 0 && isSameDose(worked, full))) {
    const facts = { title: work.block.title, keep, from: full.reps, reps: less.reps, sets: less.sets, hold: less.hold };
    reasons.push(
      reasonOf(deepest.rule, { ...deepest.facts, ...facts } as never, {
        block: work.block.block,
        acts: less.sets === full.sets ? ['reps'] : ['sets', 'reps'],
      }),
    );
  }
  const isUsual = cuts.every((cut) => cut === undefined || cut.rule === 'arrows') && isUsuallyAfterArrows(known.state);
  return { block: withDose(work.block, less), reasons, isEased: isEased || !isUsual };
}

/**
 * The full day at the hold that failing left, here or elsewhere: a cause that cuts reps takes no more of the time than it would of full holds. Days away
 * and pain shorten holds too; with them it takes the same reps, or with more days away there would be more.
 */
function withoutAway(work: Work, worked: Dose, full: Dose, known: KnownToday): Dose {
  return { ...full, hold: Math.min(worked.hold, elsewhere(work, worked, known)?.dose.hold ?? worked.hold) };
}

interface Found {
  dose: Dose;
  reasonFor: (from: Dose, to: Dose) => Reason;
}

function away({ rules, state, block }: Work, dose: Dose, { daysAway, archer }: KnownToday): Found | undefined {
  if (daysAway === undefined || daysAway < 1) return undefined;
  const isOlder = (archer.ageYears ?? 0) > 45;
  const to = afterLayoff(dose, state.level, daysAway, rules, isOlder);
  // However little is left already: after a week away nothing rises.
  if (isSameDose(to, dose) && daysAway < LAYOFF_FROM_DAYS) return undefined;
  const more = { days: daysAway, isOlder: isOlder && daysAway >= LAYOFF_FROM_DAYS ? 1 : 0 };
  return { dose: to, reasonFor: (from, next) => lessReason('away', block, from, next, more) };
}

function wayBack({ rules, block }: Work, dose: Dose, known: KnownToday): Found | undefined {
  const { stage, body, painAnswers } = known;
  if (stage === undefined) return undefined;
  const to = { ...shrink(dose, STAGE_KEEP[stage], Math.min(0.5, leastHold(rules.path[0]!))), addedWeight: 0 };
  const more = {
    ...{ stage, on: dayOfNumber(body.pain.painDay ?? known.day), answers: painAnswers, needed: ANSWERS_A_STAGE },
  };
  return { dose: to, reasonFor: (from, next) => lessReason('wayBack', block, from, next, more) };
}

/** Another program's failing says what the archer can do now, more than what this one saw last. */
function elsewhere({ state, block }: Work, dose: Dose, { body, day, state: program }: KnownToday): Found | undefined {
  const { limit } = body;
  if (!limit || (body.lastDay ?? day) - limit.day >= ELSEWHERE_DAYS || (program.lastDay ?? -1) >= limit.day)
    return undefined;
  if (limit.askedMs < 500 * dose.hold) return undefined;
  const floor = limit.days > 1 || !state.isBegun ? 1 : KEPT_ON_A_BAD_DAY * dose.hold;
  const hold = Math.max(Math.ceil(10 * floor) / 10, halfSeconds((0.85 * limit.holdMs) / 1000));
  if (hold >= dose.hold) return undefined;
  const more = { on: dayOfNumber(limit.day), heldSeconds: limit.holdMs / 1000, askedSeconds: limit.askedMs / 1000 };
  return { dose: { ...dose, hold }, reasonFor: (from, next) => lessReason('elsewhere', block, from, next, more) };
}

function lessReason<R extends 'away' | 'wayBack' | 'elsewhere'>(
  rule: R,
  { title, block }: PrescribedBlock,
  from: Dose,
  to: Dose,
  more: Omit<RuleFacts[R], keyof ReturnType<typeof lessFacts>>,
): Reason {
  const acts = levers.filter((lever) => from[lever] !== to[lever]);
  return reasonOf(rule, { ...lessFacts(title, from, to), ...more } as unknown as RuleFacts[R], { block, acts });
}

/** What a dose was and is, as facts. */
export function lessFacts(title: string, from: Dose, to: Dose) {
  return {
    ...{ title, fromHold: from.hold, hold: to.hold, fromReps: from.reps, reps: to.reps },
    ...{ fromSets: from.sets, sets: to.sets, fromAddedWeight: from.addedWeight, addedWeight: to.addedWeight },
  };
}

/** Who shoots as much on every day with a drill is eased by it each time, and still climbs: else the cap would hold them where they are for good. */
function isUsuallyAfterArrows({ asked }: KnownToday['state']): boolean {
  return asked.length >= LAST_DRILLS && asked.every(({ hasManyArrows }) => hasManyArrows);
}

interface Cut {
  rule: 'deload' | 'lighterWeek' | 'taper' | 'effort' | 'heavy' | 'arrows';
  keep: number;
  facts: Record<string, number | string>;
}

/** The file's own lighter week, where this is one. */
export function deload({ rules }: Pick<Work, 'rules'>, { state, day, daysAway = 0 }: KnownToday): Cut | undefined {
  const lighter = rules.block.ladder?.deload;
  if (!lighter || daysAway >= LAYOFF_FROM_DAYS) return undefined;
  const { count, monday } = state.weeks;
  const week = monday === mondayNumber(day) ? count : count + 1;
  if (!isLighter(lighter.everyWeeks, week)) return undefined;
  return { rule: 'deload', keep: lighter.keep, facts: { week, everyWeeks: lighter.everyWeeks } };
}

function seasonal({ lighter }: KnownToday): Cut | undefined {
  if (!lighter) return undefined;
  const { keepRatio: keep } = lighter;
  if (lighter.rule === 'taper') {
    return { rule: 'taper', keep, facts: { daysLeft: lighter.daysLeft, competition: lighter.day } };
  }
  const { block, week, ofWeeks } = lighter;
  return { rule: 'lighterWeek', keep, facts: { seasonBlock: block, week, ofWeeks } };
}

function tapered({ day, competitionDay }: KnownToday): Cut | undefined {
  const found = taper(day, competitionDay);
  return found && { rule: 'taper', keep: found.keep, facts: found.facts };
}

function effort({ body, day }: KnownToday): Cut | undefined {
  const last = body.effort;
  if (!last || last.effort < HARD_EFFORT || last.day < (body.drillDay ?? day)) return undefined;
  return { rule: 'effort', keep: EFFORT_KEEP, facts: { effort: last.effort, on: dayOfNumber(last.day) } };
}

function heavy({ readiness }: KnownToday): Cut | undefined {
  return readiness === 'heavy' ? { rule: 'heavy', keep: HEAVY_KEEP, facts: { readiness } } : undefined;
}

function arrows({ today, yesterday, day }: KnownToday): Cut[] {
  return [today, yesterday].flatMap((entry, at): Cut[] => {
    if (!hasManyArrows(entry)) return [];
    const facts = { arrows: arrowsOf(entry), on: dayOfNumber(day - at), isToday: 1 - at, many: MANY_ARROWS };
    return [{ rule: 'arrows', keep: ARROWS_KEEP, facts }];
  });
}
