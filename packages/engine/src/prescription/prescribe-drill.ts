import { CAPACITY_DAYS } from '../archer/capacity.ts';
import type { Tool } from '../archer/capacity-state.ts';
import { leverRanges } from '../program/program.ts';
import { dayOfNumber } from '../units/calendar-day.ts';
import { isTooYoungForWeight, mayRaiseWeight, mostAddedLbf, weightOn } from './added-weight.ts';
import { limitToAge } from './age-limits.ts';
import { blockOf, doseOf, withDose } from './block-dose.ts';
import { type BlockRules, rulesOf } from './block-rules.ts';
import { type BlockState, notBegun } from './block-state.ts';
import { keepPace } from './cap-to-last.ts';
import { type Dose, halfSeconds, totalSeconds } from './dose.ts';
import { firstDose } from './first-dose.ts';
import { fitBlocks, type Room } from './fit-blocks.ts';
import { holdBack, nowhereMore } from './hold-back.ts';
import { leastSecondsToClimb, NEARLY } from './judge-drill.ts';
import type { KnownToday } from './known-today.ts';
import { ladderReasons } from './ladder-reason.ts';
import { LAYOFF_FROM_DAYS } from './layoff.ts';
import { limitsAfterEase } from './limits-after-ease.ts';
import type { PrescribedBlock } from './prescription.ts';
import { isCutDay } from './program-state.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';
import { restDay } from './rest-day.ts';
import { timelineDurationMs } from './timeline-duration.ts';
import { deload, easeBlock } from './todays-eases.ts';

/** Without minutes given a drill grows to this many, or to a fifth over its foot where that is longer. The half hour is that of most sources. */
const USUAL_MINUTES = 30;
const OVER_FOOT = 1.2;
/** What somebody who drills on a rest day all the same should do at most. Own: no source. */
const REST_DAY_KEEP = 0.5;
/** No hold is shorter than the shortest that a file may ask for: less is nothing that anybody can hold. */
const LEAST_SECONDS = leverRanges.hold.least;

/** A block's full day, before anything eases. */
interface FullDay {
  rules: BlockRules;
  state: BlockState;
  block: PrescribedBlock;
  /** Where its numbers come from and what leads on; by the part of it that is left today. */
  reasonsFor: (today: PrescribedBlock | undefined) => Reason[];
}

/**
 * A drill's numbers of today: what is worked with, held to pace, minutes and age; then eased by the deepest cause, and nowhere more than the
 * limits leave of the full day.
 * @param known everything that is known today
 * @param tool what is drawn today
 * @param minutes the time there is
 * @returns blocks and reasons, and `rest` where today is better without it
 */
export function prescribeDrill(
  known: KnownToday,
  tool: Tool,
  minutes: number | undefined,
): { blocks: PrescribedBlock[]; reasons: Reason[]; rest?: Reason } {
  const { program, state, archer } = known;
  const offered = rulesOf(program).filter(({ block }) => block.drill !== 'flexibility' || mayHaveClicker(known));
  const rest = restDay(known, tool) ?? noClicker(offered, known);
  const full = offered.map((rules) => fullDay(rules, known, tool));
  const standing = (blocks: readonly PrescribedBlock[]) =>
    full.flatMap(({ rules, reasonsFor }) => reasonsFor(blocks.find(({ block }) => block === rules.index)));
  if (rest?.isEmpty) return { blocks: [], reasons: standing([]), rest: rest.reason };

  const room = roomFor(rulesOf(program), minutes);
  const fitted = fitBlocks(
    full.map(({ block }) => block),
    room,
    (blocks) => counts(blocks, full),
  );
  const paced = rest ? { blocks: fitted.blocks, reasons: [] } : keepPace(fitted.blocks, state, program);
  const aged = limitToAge(paced.blocks, program, archer);
  const eased = aged.blocks.map((block) =>
    easeBlock({ ...full.find(({ rules }) => rules.index === block.block)!, block }, known),
  );
  const isEased = rest !== undefined || known.stage !== undefined || eased.some((one) => one.isEased);
  const easedBlocks = eased.map(({ block }) => block);
  const lessened = rest ? lessOnRestDay(easedBlocks, known) : { blocks: easedBlocks, reasons: [] };
  const held = holdBack(lessened.blocks, aged.blocks, known, isEased);
  // Longer rests than the full day's may no longer fit.
  const again = fitBlocks(held.most, room, () => 'climb');
  const blocks = again.reasons.length === 0 ? held.blocks : nowhereMore(held.blocks, again.blocks);
  const leftOf = (index: number) => {
    const state = full.find(({ rules }) => rules.index === index)?.state;
    return state?.easedFrom && state.dose;
  };
  const isSaid = fitted.reasons.some(({ facts }) => 'counts' in facts && facts.counts === 'place');
  const stands = standing(blocks);
  const leadsOn = ({ block }: PrescribedBlock) =>
    stands.some((one) => one.block === block && 'needDays' in one.facts && one.facts.needDays !== undefined);
  const reasons = [
    ...stands,
    ...limitsAfterEase([...fitted.reasons, ...paced.reasons, ...aged.reasons], leftOf),
    ...eased.flatMap((one) => one.reasons),
    ...lessened.reasons,
    ...held.reasons,
    ...(fitted.reasons.length > 0 ? [] : again.reasons),
    ...seenReasons(known, offered),
    ...smallReasons(known, offered),
    ...(rest || isSaid ? [] : blocks.filter(leadsOn).flatMap((block) => placeReason(block, full, known))),
    ...clickerReasons(known, offered),
  ];
  return { blocks, reasons, ...(rest ? { rest: rest.reason } : {}) };
}

function fullDay(rules: BlockRules, known: KnownToday, tool: Tool): FullDay {
  const { body, day, program, archer, state: ofProgram } = known;
  const { state, reason } = standOf(rules, known, tool);
  const wished = state.easedFrom ?? state.dose;
  const most = mostAddedLbf(program, archer);
  const wishedLbf = rules.path[state.level]!.addedWeight;
  // Days away make nothing heavier: what may not be added after a week may not be after more.
  const weightDay = Math.min(day, (body.lastDay ?? day) + LAYOFF_FROM_DAYS - 1);
  const addedWeight = Math.min(most, weightOn(wished.addedWeight, body, ofProgram.weight, weightDay));
  const work: Dose = { ...wished, addedWeight };
  const mayRaise = mayRaiseWeight(body, ofProgram.weight, weightDay) && work.addedWeight < most;
  const shown = {
    ...(state.easedFrom ? state.dose : work),
    addedWeight: Math.min(addedWeight, state.dose.addedWeight),
  };
  const reasons: Reason[] = [];
  if (addedWeight < wishedLbf && addedWeight < Math.max(wished.addedWeight, rules.path[0]!.addedWeight)) {
    const { title } = rules.block;
    const { ageYears } = archer;
    const where = { block: rules.index, acts: ['addedWeight'] as const };
    const limit = most < wishedLbf && addedWeight >= most ? { most } : {};
    reasons.push(
      isTooYoungForWeight(ageYears)
        ? reasonOf('ageWeight', { title, ageYears, fromLbf: wishedLbf, addedWeight }, where)
        : reasonOf('weightWaits', { title, wished: wishedLbf, addedWeight, ...limit }, where),
    );
  }
  const reasonsFor = (today: PrescribedBlock | undefined) => {
    const may = { weight: mayRaise, isCut: isCutDay(state, today && doseOf(today)) };
    return [...(reason ? [reason] : ladderReasons(program, rules, state, shown, may, most)), ...reasons];
  };
  const block = blockOf(rules, work, Math.max(state.restHold, work.hold), state.restFactor);
  return { rules, state, block, reasonsFor };
}

/**
 * Where a block stands: where its drills left it, or where a first dose begins. After eight weeks of other programs it is worth what was held in them, not
 * what this one saw last, unless a hold as long failed here.
 */
function standOf(rules: BlockRules, known: KnownToday, tool: Tool): ReturnType<typeof firstDose> {
  const { state: program, day, daysAway = 0, stage } = known;
  const before = program.blocks[rules.index]!;
  if (!before.isBegun) return firstDose(rules, before, known, tool);
  const isLongAgo =
    day - (program.lastDay ?? day) >= CAPACITY_DAYS && daysAway < LAYOFF_FROM_DAYS && stage === undefined;
  if (!isLongAgo) return { state: before };
  const anew = firstDose(rules, notBegun(rules), known, tool);
  const { hold } = anew.state.dose;
  const isHeld = anew.reason?.rule === 'firstDose' && anew.reason.facts.from === 'held';
  const isMore = hold > before.dose.hold && hold < (before.failed?.hold ?? Number.POSITIVE_INFINITY);
  return isHeld && isMore ? anew : { state: before };
}

function roomFor(rules: readonly BlockRules[], minutes: number | undefined): Room {
  if (minutes !== undefined) return { minutes, isGiven: true };
  const foot = rules.map((one) => blockOf(one, one.path[0]!, one.path[0]!.hold));
  const footMinutes = timelineDurationMs(foot) / 60_000;
  return { minutes: Math.max(USUAL_MINUTES, Math.floor(OVER_FOOT * footMinutes)), isGiven: false };
}

/** What is left of a full day is enough to climb by from three tenths of the foot's time on. */
function counts(blocks: readonly PrescribedBlock[], full: readonly FullDay[]): 'climb' | 'place' {
  const isEnough = (block: PrescribedBlock) => {
    const { rules, state } = full.find((one) => one.rules.index === block.block)!;
    return totalSeconds(doseOf(block)) >= leastSecondsToClimb(rules, state.dose);
  };
  return blocks.some(isEnough) ? 'climb' : 'place';
}

/** Half of a full day, not of what the last rest days left: whoever drills on them all the same is not led down to nothing. */
function lessOnRestDay(blocks: PrescribedBlock[], { state, program }: KnownToday) {
  const less = restLess(blocks);
  const paced = keepPace(less.blocks, state, program, REST_DAY_KEEP);
  return { blocks: paced.blocks, reasons: [...less.reasons, ...paced.reasons] };
}

function restLess(blocks: PrescribedBlock[]): { blocks: PrescribedBlock[]; reasons: Reason[] } {
  const less = blocks.map((block) => {
    const dose = doseOf(block);
    if (dose.reps > 1) return withDose(block, { ...dose, reps: Math.floor(dose.reps * REST_DAY_KEEP) });
    if (dose.sets > 1) return withDose(block, { ...dose, sets: Math.floor(dose.sets * REST_DAY_KEEP) });
    return withDose(block, {
      ...dose,
      hold: Math.min(dose.hold, Math.max(LEAST_SECONDS, halfSeconds(dose.hold * REST_DAY_KEEP))),
    });
  });
  const reasons = less.map(({ block, title, reps, sets, holdMs }, at) => {
    const facts = { title, from: blocks[at]!.reps, reps, sets, hold: holdMs / 1000 };
    return reasonOf('restLess', facts, { block, acts: ['reps', 'sets', 'hold'] });
  });
  return { blocks: less, reasons };
}

/** Unless the kit says otherwise, a recurve may have a clicker, and other bows have none. */
function mayHaveClicker({ archer: { hasClicker, bow } }: KnownToday): boolean {
  return hasClicker ?? (bow === undefined || bow === 'recurve');
}

function noClicker(
  offered: readonly BlockRules[],
  { program }: KnownToday,
): { reason: Reason; isEmpty: boolean } | undefined {
  return offered.length > 0 ? undefined : { reason: reasonOf('noClicker', { title: program.title }), isEmpty: true };
}

function clickerReasons(known: KnownToday, offered: readonly BlockRules[]): Reason[] {
  return rulesOf(known.program)
    .filter((rules) => !offered.includes(rules))
    .map(({ block, index }) => reasonOf('clicker', { title: block.title }, { block: index }));
}

/** Where the camera knew better than the clock: the rules have read what was seen, and say so. */
function seenReasons({ state: { asked, lastDay } }: KnownToday, offered: readonly BlockRules[]): Reason[] {
  const last = asked.at(-1);
  if (last === undefined || lastDay === undefined) return [];
  return offered.flatMap(({ index, block }) => {
    const apart = last.summary.blocks.find((one) => one.block === index)?.apart;
    if (apart === undefined) return [];
    const tenths = (ms: number) => Math.round(ms / 100) / 10;
    const seconds = { clockSeconds: tenths(apart.clockMs), seenSeconds: tenths(apart.seenMs) };
    return reasonOf(
      'seen',
      { title: block.title, on: dayOfNumber(lastDay), reps: apart.count, ...seconds },
      { block: index },
    );
  });
}

/** Today leads no further: too little or too short a hold is left of it, or the fold lets nobody climb on such a day. */
function placeReason(block: PrescribedBlock, full: readonly FullDay[], known: KnownToday): Reason[] {
  const { rules, state } = full.find((one) => one.rules.index === block.block)!;
  const isSmall = totalSeconds(doseOf(block)) < leastSecondsToClimb(rules, state.dose) - 1e-6;
  const isShort = doseOf(block).hold < NEARLY * state.dose.hold;
  if (!isSmall && !isShort && known.stage === undefined && !deload({ rules }, known)) return [];
  return [reasonOf('holdsPlace', { title: block.title }, { block: block.block })];
}

function smallReasons({ state, program }: KnownToday, offered: readonly BlockRules[]): Reason[] {
  const [first] = offered;
  return state.isSmall && first ? [reasonOf('small', { title: program.title })] : [];
}
