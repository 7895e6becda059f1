import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import type { Program } from '../program/program.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { type Archer, checkArcher } from './archer.ts';
import { type BodyState, bodyAfter, type RecentDrill, recentDrills, recentLoads } from './body-state.ts';
import { type Capacity, capacityOf } from './capacity.ts';
import type { DayLoad } from './logged-day.ts';
import { countUntil, logDays } from './logged-days.ts';
import { ANSWERS_A_STAGE, isResting, type PainStage, painAnswer, painOn } from './pain-state.ts';
import { dayOfPast, type Past } from './past.ts';
import { type TestResult, testResults } from './test-results.ts';

/** What some days came to. */
export interface ExposureSum {
  /** At full draw in drills, seconds. */
  heldSeconds: number;
  /** Newton-seconds, of the drills whose weight is known. */
  impulseNs: number;
  arrowCount: number;
  drillCount: number;
}

/** What is known of an archer on a day. Derived, never stored; each field with the days and drills it was read from. */
export interface ArcherToday {
  /** ISO 8601 day. */
  date: string;
  /** The longest hold with each tool of which anything is known; tools are never mixed. */
  capacity: readonly Capacity[];
  exposure: {
    /** Days since a bow or a band was last drawn; absent where none ever was. */
    daysAway?: number;
    lastDrawnOn?: string;
    /** Days in a row with something drawn, arrows counted, up to the last draw. */
    daysInRow: number;
    /** These seven days, today among them, and the four sevens before, the latest first. */
    week: ExposureSum;
    weeksBefore: readonly ExposureSum[];
    addedWeightLbf: number;
    addedWeightRaisedOn?: string;
    /** ISO 8601 days of these five weeks on which anything was done. */
    evidence: readonly string[];
  };
  pain: {
    /** `unknown`: nobody ever answered; `painful`: today; a stage of the way back; `clear`. */
    state: 'unknown' | 'clear' | 'painful' | PainStage;
    /** ISO 8601 day of the last pain. */
    on?: string;
    /** Pain-free answers in this stage, and how many it needs. */
    answers: number;
    needed: number;
    /** No drill before this day: too many hurt within two weeks. */
    restUntil?: string;
    /** Ids of painful drills; a diary day as its date. */
    evidence: readonly string[];
  };
  rhythm: {
    /** The usual length of a drill, whole minutes, and days a week with one, over the last four weeks. */
    minutes?: number;
    daysPerWeek: number;
    evidence: readonly string[];
  };
  tests: readonly TestResult[];
  response: {
    /** Where holds go over the last drills. `stuck`: again and again missed; `sliding`: holds get shorter because they are missed. */
    direction: 'unknown' | 'up' | 'level' | 'stuck' | 'sliding';
    /** Ids of the drills. */
    evidence: readonly string[];
  };
}

const WEEK = 7;
const RHYTHM_DAYS = 28;
const LEAST_DRILLS = 3;
const MISSED_SHARE = 0.2;

/**
 * What is known of an archer today, folded from everything in the journal, whatever the program. Pure; days that were folded before are not
 * folded again.
 * @param input drill records and diary in any order; the archer's local day, ISO 8601; what the archer says of themselves; programs for their
 * tests; in place of older records and entries the past that they fold into, which reports no tests
 * @returns every field with its evidence
 * @throws RangeError when the day or the archer cannot be
 * @source own: bounds and stages name their sources where they are defined
 * @example knowArcher({ records: [], today: '2026-11-25' }).pain.state // 'unknown'
 */
export function knowArcher(input: {
  records: readonly DrillRecord[];
  days?: readonly DayEntry[];
  today: string;
  archer?: Archer;
  programs?: readonly Program[];
  past?: Past;
}): ArcherToday {
  const today = dayNumber(input.today);
  const archer = checkArcher(input.archer);
  const { days } = logDays(input.records, input.days, dayOfPast(input.past));
  const count = countUntil(days, today);
  const body = bodyAfter(days, count);
  const last = days[count - 1];
  const isPainful = last?.day === today && painAnswer(last) === true;
  const loads = recentLoads(days, count);
  const tools = new Set(body.capacity.map(({ tool }) => tool));
  if (archer.longestHoldSeconds !== undefined) tools.add('bow');
  return {
    date: input.today,
    capacity: [...tools].map((tool) => capacityOf(body.capacity, tool, today, archer)),
    exposure: exposureOf(body, loads, today),
    pain: painToday(body, today, isPainful),
    rhythm: rhythmOf(body, loads, today),
    tests: testResults(input.records, input.programs).filter(({ date }) => date <= input.today),
    response: responseOf(recentDrills(days, count)),
  };
}

function exposureOf(
  { firstDay, lastDay, rowDays, weight }: BodyState,
  loads: readonly DayLoad[],
  today: number,
): ArcherToday['exposure'] {
  const sums = [0, 1, 2, 3, 4].map((week) =>
    sumOf(loads.filter(({ day }) => Math.floor((today - day) / WEEK) === week)),
  );
  const [week = sumOf([]), ...weeksBefore] = sums;
  return {
    ...(lastDay === undefined || firstDay === undefined
      ? {}
      : { daysAway: today - lastDay, lastDrawnOn: dayOfNumber(lastDay) }),
    ...{ daysInRow: rowDays, week, weeksBefore, addedWeightLbf: weight.lbf },
    ...(weight.raisedDay === undefined ? {} : { addedWeightRaisedOn: dayOfNumber(weight.raisedDay) }),
    evidence: loads.filter(({ day }) => today - day < 5 * WEEK).map(({ day }) => dayOfNumber(day)),
  };
}

function sumOf(loads: readonly DayLoad[]): ExposureSum {
  const total = (key: 'heldMs' | 'impulseNs' | 'arrowCount' | 'drillCount') =>
    loads.reduce((sum, load) => sum + load[key], 0);
  return {
    ...{ heldSeconds: total('heldMs') / 1000, impulseNs: total('impulseNs') },
    ...{ arrowCount: total('arrowCount'), drillCount: total('drillCount') },
  };
}

function painToday({ pain }: BodyState, today: number, isPainful: boolean): ArcherToday['pain'] {
  const { stage, answers } = painOn(pain, today);
  const state = isPainful ? 'painful' : (stage ?? (pain.isAnswered ? 'clear' : 'unknown'));
  return {
    ...{ state, answers, needed: ANSWERS_A_STAGE, evidence: pain.evidence },
    ...(pain.painDay === undefined ? {} : { on: dayOfNumber(pain.painDay) }),
    ...(isResting(pain, today) && pain.restUntilDay !== undefined ? { restUntil: dayOfNumber(pain.restUntilDay) } : {}),
  };
}

function rhythmOf({ firstDay }: BodyState, loads: readonly DayLoad[], today: number): ArcherToday['rhythm'] {
  const drilled = loads.filter(({ day, drillCount }) => drillCount > 0 && today - day < RHYTHM_DAYS && day <= today);
  const minutes = drilled
    .filter(({ durationMs }) => durationMs > 0)
    .map(({ durationMs, drillCount }) => durationMs / drillCount / 60_000)
    .sort((a, b) => a - b);
  const middle = minutes[minutes.length >> 1];
  const weeks = firstDay === undefined ? 4 : Math.min(4, Math.max(1, (today - firstDay + 1) / WEEK));
  return {
    ...(middle === undefined ? {} : { minutes: Math.round(middle) }),
    daysPerWeek: Math.round((10 * drilled.length) / weeks) / 10,
    evidence: drilled.map(({ day }) => dayOfNumber(day)),
  };
}

/** Of the program that was drilled last: what its last drills asked, and how much of it was missed. */
function responseOf(recent: readonly RecentDrill[]): ArcherToday['response'] {
  const last = recent.at(-1);
  const own = recent
    .filter(({ program, programId }) => (programId ?? program) === (last?.programId ?? last?.program))
    .slice(-6);
  const evidence = own.map(({ id }) => id);
  if (own.length < LEAST_DRILLS) return { direction: 'unknown', evidence };
  const missed = own.filter(({ missedShare }) => missedShare >= MISSED_SHARE).length;
  const [first, final] = [own[0]!.askedMs, own.at(-1)!.askedMs];
  if (missed >= 2 && final < first) return { direction: 'sliding', evidence };
  if (missed >= LEAST_DRILLS) return { direction: 'stuck', evidence };
  return { direction: final > first ? 'up' : 'level', evidence };
}
