import { nextPrograms } from '../program/next-programs.ts';
import type { Program } from '../program/program.ts';
import { dayOfNumber } from '../units/calendar-day.ts';
import { levers } from './asked-number.ts';
import type { BlockRules } from './block-rules.ts';
import type { BlockMove, BlockState } from './block-state.ts';
import type { Dose } from './dose.ts';
import { type May, nextUp, stepUp } from './move-block.ts';
import type { LadderFacts, MoveFacts, Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';

/**
 * Where a block's numbers come from, before today asks for less.
 * @param program whose block it is
 * @param rules the block's
 * @param state where it is
 * @param work what is worked with today
 * @param may whether weight may rise, and whether more reps lead on no longer
 * @param mostLbf the most weight that may be added, pounds-force
 * @returns one reason, and another at the top or where a hold fails again and again
 */
export function ladderReasons(
  program: Program,
  rules: BlockRules,
  state: BlockState,
  work: Dose,
  may: May,
  mostLbf: number,
): Reason[] {
  const facts = ladderFacts(rules, state, work, may, mostLbf);
  const reasons = [standReason(rules, state, work, facts)];
  if (isAtTop(rules, state, facts)) reasons.push(topReason(program, rules, work));
  return [...reasons, ...stuckReason(rules, state)];
}

/** How far a block has come, and since when. The facts are its own to add to. */
function standReason(
  { block, index }: BlockRules,
  { move, easedFrom }: BlockState,
  work: Dose,
  facts: LadderFacts,
): Reason {
  if (!move || move.kind === 'begin' || (!easedFrom && !isUp(move.kind))) {
    if (move && move.kind !== 'begin' && block.ladder) {
      return reasonOf('steady', Object.assign(facts, { on: dayOfNumber(move.day) }), { block: index, acts: levers });
    }
    return reasonOf(block.ladder ? 'start' : 'fixed', facts, { block: index, acts: levers });
  }
  const { from, because } = move;
  const moved: MoveFacts = Object.assign(facts, {
    on: dayOfNumber(move.day),
    because,
    fromHold: from.hold,
    fromReps: from.reps,
    fromSets: from.sets,
    fromAddedWeight: from.addedWeight,
  });
  const acts = levers.filter((lever) => move.from[lever] !== work[lever]);
  const rule = ({ effort: 'strain', pain: 'sore' } as const)[move.kind as string] ?? move.kind;
  return reasonOf(rule as 'climb', moved, { block: index, acts });
}

/** Nothing leads on, and what there is was held: on arriving, or after as many clean days as a step would have taken. */
function isAtTop(rules: BlockRules, state: BlockState, facts: LadderFacts): boolean {
  const isLast =
    state.level === rules.path.length - 1 &&
    facts.needDays === undefined &&
    !facts.weightWaits &&
    facts.weightMost === undefined;
  if (!isLast || rules.isCut || !state.isBegun || state.easedFrom) return false;
  return (state.move !== undefined && isUp(state.move.kind)) || state.cleanDays >= rules.cleanSessions;
}

function topReason(program: Program, { block, index }: BlockRules, { hold }: Dose): Reason {
  const next = nextPrograms(program)[0]?.title;
  return reasonOf('top', { title: block.title, hold, ...(next === undefined ? {} : { next }) }, { block: index });
}

const STUCK_TIMES = 3;

/** Where the last move was down and a drill has come after it, nothing eases any more: the block is where it was left. */
function isUp(kind: BlockMove['kind']): boolean {
  return kind === 'climb' || kind === 'recover';
}

function stuckReason({ block, index }: BlockRules, { failed, easedFrom }: BlockState): Reason[] {
  if (!easedFrom || !failed || failed.times < STUCK_TIMES) return [];
  return [reasonOf('stuck', { title: block.title, times: failed.times, hold: failed.hold }, { block: index })];
}

/** The place on the ladder, where the program begins, what leads on, and where the rests come from. */
export function ladderFacts(rules: BlockRules, state: BlockState, work: Dose, may: May, mostLbf: number): LadderFacts {
  const { block, path } = rules;
  const place = path[state.level]!;
  const { rest } = block;
  const facts: LadderFacts = {
    title: block.title,
    level: state.level,
    top: path.length - 1,
    hold: place.hold,
    reps: place.reps,
    sets: place.sets,
    addedWeight: place.addedWeight,
    startHold: block.hold,
    startReps: block.reps,
    startSets: block.sets,
    startAddedWeight: block.addedWeight,
    workHold: work.hold,
    workReps: work.reps,
    workSets: work.sets,
    workAddedWeight: work.addedWeight,
  };
  addNext(facts, rules, state, may, mostLbf);
  if (rules.isCut) facts.isCut = 1;
  if ('timesHold' in rest) {
    facts.restTimesHold = rest.timesHold;
    facts.restHold = Math.max(state.restHold, work.hold);
  }
  if (state.restFactor > 1) facts.restFactor = state.restFactor;
  if (block.setRest === undefined) facts.setRestFrom = 'rest';
  return facts;
}

/** What leads on, where anything does. */
function addNext(facts: LadderFacts, rules: BlockRules, state: BlockState, may: May, mostLbf: number): void {
  const next = nextUp(state, rules, may);
  if (!next) {
    if (!stepUp(state, rules, { ...may, weight: true })) return;
    if (facts.workAddedWeight >= mostLbf) facts.weightMost = mostLbf;
    else facts.weightWaits = 1;
    return;
  }
  facts.needDays = next.days;
  facts.nextHold = next.dose.hold;
  facts.nextReps = next.dose.reps;
  facts.nextSets = next.dose.sets;
  facts.nextAddedWeight = next.dose.addedWeight;
}
