import { type BodyDay, bodyDays, LOAD_DAYS, unknownBody } from '../archer/body-state.ts';
import { summariesOf } from '../archer/day-sum.ts';
import { blockIn, type DrillSummary } from '../archer/drill-summary.ts';
import { foldDays } from '../archer/fold-days.ts';
import type { LoggedDay } from '../archer/logged-day.ts';
import { painOn } from '../archer/pain-state.ts';
import { type Past, pastOf } from '../archer/past.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import { isOfProgram } from '../journal/is-of-program.ts';
import type { Program } from '../program/program.ts';
import { MOST_DAYS_IN_ROW } from '../season/due-today.ts';
import { mondayNumber } from '../units/calendar-day.ts';
import { mayRaiseWeight, type WeightInUse, weightOn } from './added-weight.ts';
import { type BlockRules, growthLimitsOf, rulesOf } from './block-rules.ts';
import { type BlockState, copyOf, notBegun, placeOf } from './block-state.ts';
import { type Dose, leastHold, shrink } from './dose.ts';
import { type DayVerdict, isMostlyHeld, judgeDay } from './judge-drill.ts';
import { LAYOFF_FROM_DAYS } from './layoff.ts';
import { hasManyArrows } from './many-arrows.ts';
import { goDown, goUp, holdPlace, layOff, takeLighter } from './move-block.ts';

/** What one of the last drills asked for. */
export interface AskedDrill {
  summary: DrillSummary;
  addedLbf: number;
  /** Whether its day has arrows that ask for less. */
  hasManyArrows: boolean;
}

/** How far a program has come for an archer. Replayed from the records, never stored; bounded. */
export interface ProgramState {
  blocks: readonly BlockState[];
  /** The last five drills with a rep, the newest last. */
  asked: readonly AskedDrill[];
  /** Training weeks in a row since the last eight days away, and the Monday of the last. */
  weeks: { count: number; monday?: number };
  weight: WeightInUse;
  /** Days of its first and last drill. */
  lastDay?: number;
  /** Days of the last five weeks on which less was asked for by rule: a lighter week, or a seventh day in a row. Kept where the file limits growth. */
  lighterDays: readonly number[];
  /** Whether the last drill was too small to count. */
  isSmall: boolean;
}

/** Of how many drills nothing rises above the most while something eases. */
export const LAST_DRILLS = 5;
/** Days in a row with fewer reps than the dose's after which more reps no longer lead on. */
const CUT_DAYS = 3;
/** No failed dose is asked for more often than this, running, whatever a file says. Own, careful: no source. */
const TIMES_IN_A_ROW = 3;
const HARD_IN_A_ROW = 2;
/** One hard day, and a clean one of fewer reps since. */
const HARD_BEFORE_LAST = 0.5;
/** Whatever less a file allows for a climb, up to this effort a drill leads back to its place. Own: the file format's default. */
const EFFORT_AT_MOST = 7;
const PAIN_KEEP = 0.7;

const kept = new WeakMap<Program, Map<boolean, ReturnType<typeof foldProgram>>>();

/**
 * How far a program has come after the first days of a journal.
 * @param program a valid program
 * @param days the journal by days
 * @param count how many of them
 * @param isOlder over 45: what is not used is lost faster
 * @returns its state then
 */
export function programAfter(
  program: Program,
  days: readonly LoggedDay[],
  count: number,
  isOlder: boolean,
): ProgramState {
  return foldOf(program, isOlder).after(days, count);
}

/**
 * Folds a program ahead of being asked for it; no answer depends on it.
 * @param program a valid program
 * @param days the journal by days
 * @param count how many of them
 * @param isOlder over 45
 */
export function foldProgramAhead(program: Program, days: readonly LoggedDay[], count: number, isOlder: boolean): void {
  foldOf(program, isOlder).ahead(days, count);
}

function foldOf(program: Program, isOlder: boolean): ReturnType<typeof foldProgram> {
  const ofProgram = kept.get(program) ?? new Map<boolean, ReturnType<typeof foldProgram>>();
  kept.set(program, ofProgram);
  const fold = ofProgram.get(isOlder) ?? foldProgram(program, isOlder);
  ofProgram.set(isOlder, fold);
  return fold;
}

/** A program nobody has drilled. */
export function unknownProgram(program: Program): ProgramState {
  return {
    ...{ blocks: rulesOf(program).map(notBegun), asked: [], weeks: { count: 0, monday: undefined } },
    ...{ weight: { lbf: 0, raisedDay: undefined }, isSmall: false, lighterDays: [], lastDay: undefined },
  };
}

function foldProgram(program: Program, isOlder: boolean) {
  const context: Context = { rules: rulesOf(program), isOlder, limitsGrowth: growthLimitsOf(program).length > 0 };
  return foldDays(unknownProgram(program), (state, today, at, days) => {
    const past = pastOf(today);
    if (past) return programOfPast(past, program, isOlder);
    const bodies = bodyDays(days);
    return stepProgram(context, state, today, ownDrills(program, today), bodies[at - 1] ?? unknownBody, bodies[at]!);
  });
}

/**
 * Names a program's state in a folded past: by all that it is made from besides the journal.
 * @param program a valid program
 * @param isOlder over 45
 * @returns a text
 */
export function programKey(program: Program, isOlder: boolean): string {
  return JSON.stringify([program, isOlder]);
}

function programOfPast({ programs }: Past, program: Program, isOlder: boolean): ProgramState {
  const key = programKey(program, isOlder);
  const found = programs.find((one) => one.key === key);
  if (!found) throw new RangeError(`the folded past holds nothing of "${program.title}"`);
  return found.state as ProgramState; // as `foldPast` put it there
}

/** A day's drills of one program, and what each comes to. */
interface OwnDrills {
  records: readonly DrillRecord[];
  summaries: readonly DrillSummary[];
}

function ownDrills(program: Program, today: LoggedDay): OwnDrills {
  const { drills } = today;
  const summaries = summariesOf(today);
  // On most days all of them are, and no list need be made.
  if (drills.every((one) => isOwn(one, program))) return { records: drills, summaries };
  return {
    records: drills.filter((one) => isOwn(one, program)),
    summaries: summaries.filter((_, at) => isOwn(drills[at]!, program)),
  };
}

function isOwn(record: DrillRecord, program: Program): boolean {
  return record.kind !== 'test' && isOfProgram(record, program);
}

/** What is the same on all days. */
interface Context {
  rules: readonly BlockRules[];
  isOlder: boolean;
  limitsGrowth: boolean;
}

/** `before` and `after`: the body before and after the day. */
function stepProgram(
  { rules, isOlder, limitsGrowth }: Context,
  state: ProgramState,
  { day, entry }: LoggedDay,
  own: OwnDrills,
  before: BodyDay,
  after: BodyDay,
): ProgramState {
  const isOwn = own.records.length > 0;
  const days = after.lastDay === day && before.lastDay !== undefined ? day - before.lastDay : 0;
  // A painful day eases once; while it goes on hurting, only a drill that hurt again does.
  const isPainful = after.pain.painDay === day && (before.pain.stage === undefined || isOwn);
  if (!isOwn && !isPainful && days === 0) return state;
  const weeks = weeksAfter(state.weeks, day, days, isOwn);
  let { weight } = state;
  const addedLbf = isOwn ? addedOn(state, own.summaries, before, day) : undefined;
  if (addedLbf !== undefined && addedLbf !== weight.lbf) {
    weight = addedLbf > weight.lbf ? { lbf: addedLbf, raisedDay: day } : { ...weight, lbf: addedLbf };
  }
  let isSmall = isOwn ? false : state.isSmall;
  let isLighterDay = limitsGrowth && isSeventhDay(before, day);
  const about = { before, day, isPainful, mayRaise: mayRaiseWeight(after, weight, day) };
  const blocks = state.blocks.slice();
  for (let index = 0; index < blocks.length; index++) {
    const rule = rules[index]!;
    let now = blocks[index]!;
    if (days > 0) now = layOff(now, rule, day, days, isOlder);
    if (isOwn) {
      const isLighterWeek = isLighter(rule.block.ladder?.deload?.everyWeeks, weeks.count);
      if (limitsGrowth && isLighterWeek) isLighterDay = true;
      const begun = begin(now, rule, own, day);
      const judged = judgeDay(own.records, own.summaries, begun, rule);
      if (judged.verdict === 'small') isSmall = true;
      now = drilled(now, begun, rule, own, judged, about, isLighterWeek);
    }
    blocks[index] = isPainful && now.isBegun ? hurt(now, rule, day) : now;
  }
  if (!isOwn) {
    const isSame = blocks.every((block, index) => block === state.blocks[index]);
    return isSame && weeks === state.weeks ? state : { ...state, blocks, weeks };
  }
  const lighterDays = isLighterDay ? withLighterDay(state.lighterDays, day) : state.lighterDays;
  const asked = lastAsked(state.asked, own, addedLbf ?? 0, hasManyArrows(entry));
  return { blocks, asked, weeks, weight, isSmall, lighterDays, lastDay: day };
}

function withLighterDay(before: readonly number[], day: number): number[] {
  const from = before.findIndex((one) => one > day - LOAD_DAYS);
  return from < 0 ? [day] : before.slice(from).concat(day);
}

function lastAsked(
  before: readonly AskedDrill[],
  own: OwnDrills,
  addedLbf: number,
  hasManyArrows: boolean,
): readonly AskedDrill[] {
  let now = before;
  for (let at = 0; at < own.summaries.length; at++) {
    if (own.records[at]!.reps.length === 0) continue;
    const drill = { summary: own.summaries[at]!, addedLbf, hasManyArrows };
    // Written out, of five: to cut off the oldest and join the newest takes two lists a day, for ten years.
    now = now.length < LAST_DRILLS ? [...now, drill] : [now[1]!, now[2]!, now[3]!, now[4]!, drill];
  }
  return now;
}

/** The added weight that a day's drills tell of; where one does not say, what its day asked for. */
function addedOn(
  { blocks, weight }: ProgramState,
  summaries: readonly DrillSummary[],
  before: BodyDay,
  day: number,
): number | undefined {
  let wished = 0;
  for (const { dose } of blocks) wished = Math.max(wished, dose.addedWeight);
  const weightToday = weightOn(wished, before, weight, day);
  let most: number | undefined;
  for (const { addedLbf = weightToday } of summaries) if (most === undefined || addedLbf > most) most = addedLbf;
  return most;
}

/** Whether a training week is a lighter one. */
export function isLighter(everyWeeks: number | undefined, week: number): boolean {
  return everyWeeks !== undefined && week > 0 && week % everyWeeks === 0;
}

function weeksAfter(weeks: ProgramState['weeks'], day: number, days: number, isOwn: boolean): ProgramState['weeks'] {
  const now = days >= LAYOFF_FROM_DAYS && weeks.count > 0 ? { count: 0, monday: undefined } : weeks;
  const monday = mondayNumber(day);
  return isOwn && now.monday !== monday ? { count: now.count + 1, monday } : now;
}

interface DrilledDay {
  /** The body before the day. */
  before: BodyDay;
  day: number;
  isPainful: boolean;
  mayRaise: boolean;
}

/** A block after a day of drills. `before`: as the day found it; `state`: the same, begun where a drill of the day begins it. */
function drilled(
  before: BlockState,
  state: BlockState,
  rules: BlockRules,
  own: OwnDrills,
  { verdict, at, count, badCount }: DayVerdict,
  about: DrilledDay,
  isLighterWeek: boolean,
): BlockState {
  // What eases, eases the next drill: one that left the block out was it. Else a limit that leaves it out would never end.
  if (!state.isBegun || verdict === 'absent') return before.easedFrom ? { ...before, easedFrom: undefined } : before;
  const counted = copyOf(state);
  counted.easedFrom = undefined;
  if (about.isPainful) {
    counted.cleanDays = 0;
    return counted;
  }
  const record = own.records[at]!;
  const of = blockIn(own.summaries[at]!, rules.index)!;
  const asked = of.longestAskedMs / 1000;
  const isOnWay = painOn(about.before.pain, about.day).stage !== undefined;
  const isCut = isCutShort(state.dose, of.repCount);
  counted.cutDays = isCut && !isLighterWeek ? state.cutDays + (isSeventhDay(about.before, about.day) ? 0 : 1) : 0;
  if (verdict !== 'lighter') counted.lighterDays = 0;
  switch (verdict) {
    case 'clean': {
      if (isOnWay) return counted;
      if (isLighterWeek) return holdPlace(counted, rules, about.day, { heldSeconds: asked, isWhole: false });
      const level = higherPlace(counted, rules, asked, of.repCount);
      const up = goUp(level, rules, about.day, { weight: about.mayRaise, isCut: counted.cutDays >= CUT_DAYS });
      // A clean drill of fewer reps, which is what a hard one leaves of the next, does not tell that the whole is no longer hard.
      if (isCut && state.hardDays === 1) up.hardDays = HARD_BEFORE_LAST;
      return up;
    }
    case 'small':
    case 'lighter': {
      if (isOnWay) return counted;
      // One hold alone is what a rest day or few minutes leave of a drill; of more, the shorter hold was meant.
      const isMeant = verdict === 'lighter' && of.repCount > 1;
      if (isMeant) return takeLighter(counted, rules, asked);
      return holdPlace(counted, rules, about.day, { heldSeconds: asked, isWhole: false });
    }
    case 'strained':
    case 'hard':
    case 'missed': {
      const down = { day: about.day, asked, mostHeld: Math.min(asked, of.mostHeldMs / 1000) };
      const bad = counted;
      bad.cleanDays = 0;
      bad.strainedDays += badCount;
      if (verdict === 'missed') bad.missedDays += count;
      if (verdict === 'hard') bad.hardDays = Math.ceil(bad.hardDays) + count;
      const missedNeeded = state.easedTimes > 0 ? 1 : rules.failedSessions;
      if (bad.hardDays >= HARD_IN_A_ROW) return goDown(bad, rules, { ...down, cause: 'effort', because: bad.hardDays });
      // Hard, but everything was held: no reason to stay below what was proven.
      if (of.missedCount === 0 && isMostlyHeld(of) && verdict === 'strained' && !isOnWay) {
        const isWhole = (record.effort ?? 0) <= EFFORT_AT_MOST && !record.pain;
        return holdPlace(bad, rules, about.day, { heldSeconds: asked, isWhole });
      }
      const isFailed = bad.missedDays >= missedNeeded || (of.missedCount > 0 && bad.strainedDays >= TIMES_IN_A_ROW);
      if (!isFailed) {
        // Where not one rep was held, of however few, the next drill asks for no more than the last five did.
        if (of.missedCount > 0 && of.heldCount === 0) bad.easedFrom = bad.dose;
        return bad;
      }
      const because = Math.max(1, bad.missedDays);
      let lower = goDown(bad, rules, { ...down, cause: 'stepDown', because });
      // A day counts once; but who fails one drill after another on it is not asked for the same again.
      for (let more = count - 1; more >= TIMES_IN_A_ROW; more -= TIMES_IN_A_ROW) {
        const { hold } = lower.dose;
        const { easedFrom } = lower;
        lower = goDown(lower, rules, { ...down, asked: hold, mostHeld: hold, cause: 'stepDown', because });
        lower.easedFrom = easedFrom;
      }
      return lower;
    }
    default:
      return counted;
  }
}

/**
 * Whether a day is one more of a row whose reps are cut, after which more reps no longer lead on.
 * @param state where a block is before the day
 * @param today what it asks; undefined where it is not known
 * @returns as the fold will find it
 */
export function isCutDay({ cutDays, dose }: BlockState, today: Dose | undefined): boolean {
  return cutDays + 1 >= CUT_DAYS && (today === undefined || isCutShort(dose, today.reps * today.sets));
}

function isCutShort({ reps, sets }: Dose, repCount: number): boolean {
  return repCount < 0.95 * reps * sets;
}

/** A rest day, on which half is asked for: whoever drills all the same is not short of minutes. */
function isSeventhDay({ rowDay, rowDays }: BodyDay, day: number): boolean {
  return rowDay === day - 1 && rowDays >= MOST_DAYS_IN_ROW;
}

/** A first drill says where the block begins: what it asked for was made to fit the archer. */
function begin(state: BlockState, rules: BlockRules, { summaries }: OwnDrills, day: number): BlockState {
  if (state.isBegun) return state;
  for (const summary of summaries) {
    const of = blockIn(summary, rules.index);
    if (!of || of.longestAskedMs <= 0) continue;
    const hold = of.longestAskedMs / 1000;
    const level = placeOf(rules, hold, of.repCount, summary.addedLbf ?? 0);
    const place = rules.path[level]!;
    const dose = {
      ...place,
      hold: Math.min(place.hold, hold),
      addedWeight: Math.min(place.addedWeight, summary.addedLbf ?? 0),
    };
    const move = { kind: 'begin', day, from: rules.path[0]!, to: dose, because: 0 } as const;
    return { ...state, isBegun: true, level, dose, restHold: place.hold, move };
  }
  return state;
}

/** Whoever held more than was prescribed is placed where that is on the path. */
function higherPlace(state: BlockState, rules: BlockRules, asked: number, count: number): BlockState {
  if (asked <= state.dose.hold * 1.02) return state;
  const level = Math.max(state.level, placeOf(rules, asked, count, state.dose.addedWeight));
  const place = rules.path[level]!;
  const dose = { ...place, hold: Math.min(place.hold, asked), addedWeight: state.dose.addedWeight };
  return { ...state, level, dose: dose.hold >= state.dose.hold ? dose : state.dose, restHold: place.hold };
}

function hurt(state: BlockState, rules: BlockRules, day: number): BlockState {
  const { dose } = state;
  const shrunk = shrink(dose, PAIN_KEEP, leastHold(rules.path[0]!));
  const to = { ...shrunk, addedWeight: Math.max(0, dose.addedWeight - 2) };
  return {
    ...{ ...state, dose: to, easedFrom: state.easedFrom ?? dose, cleanDays: 0 },
    restHold: Math.max(state.restHold, rules.path[state.level]!.hold),
    move: { kind: 'pain', day, from: dose, to, because: 1 },
  };
}
