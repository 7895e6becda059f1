import type { DrillRecord } from '../journal/drill-record.ts';
import { type CapacityState, stepCapacity } from './capacity-state.ts';
import { arrowsOf, loadOf, summariesOf } from './day-sum.ts';
import type { BlockSummary, DrillSummary } from './drill-summary.ts';
import { foldDays } from './fold-days.ts';
import type { DayLoad, LoggedDay } from './logged-day.ts';
import { noPain, type PainState, stepPain } from './pain-state.ts';

/** What all drills and the diary come to for one body, whatever the program. Bounded, however long the history. */
export interface BodyState {
  /** First and last day on which a bow or a band was drawn. */
  firstDay?: number;
  lastDay?: number;
  /** The last day with a drill. */
  drillDay?: number;
  /** The day with a drill before that one. */
  drillDayBefore?: number;
  /** Days in a row with a bow or a band in the hand, up to `rowDay`; also a drill whose every rep was skipped. */
  rowDays: number;
  rowDay?: number;
  /** The last effort that was written down. */
  effort?: { day: number; effort: number; id: string };
  /** Added weight: the most that is in use, and the day on which it last rose. */
  weight: { lbf: number; raisedDay?: number };
  pain: PainState;
  capacity: CapacityState;
  /** Of the last drill that was no test: the share of its reps that was missed. */
  missedShare?: number;
  /** What most reps held when a drill last failed, until longer holds went well again. */
  limit?: HoldLimit;
}

/** What one of the last drills asked, and how much of it was missed. */
export interface RecentDrill {
  day: number;
  id: string;
  program: string;
  programId?: string;
  askedMs: number;
  missedShare: number;
}

/** A hold that failed lately, whatever the program. */
export interface HoldLimit {
  day: number;
  id: string;
  /** What most reps held, and what was asked for, milliseconds. */
  holdMs: number;
  askedMs: number;
  /** Failed days in a row. */
  days: number;
}

/** How many of the last drills say where it goes. */
const RECENT_DRILLS = 12;
/** Days of loads that are kept: the week that runs, and four before it. */
export const LOAD_DAYS = 35;
/** How many days a hold that failed is remembered. Own: no source. */
const LIMIT_DAYS = 28;
const FAILED_SHARE = 0.2;
/** How much more may be prescribed after a hold that went well. */
const RAISED = 1.15;
/** After how many days without a draw, weight that was added is as if it had never been. Own, careful: no source. */
const WEIGHT_FORGOTTEN_DAYS = 56;

const nobody: BodyState = { rowDays: 0, weight: { lbf: 0 }, pain: noPain, capacity: [] };

/** The little of a body that is noted of every day, for the rules that replay a program. */
export type BodyDay = Pick<BodyState, 'firstDay' | 'lastDay' | 'rowDay' | 'rowDays' | 'weight' | 'pain'>;

/** A body as it was after a past that is folded: what its last days would tell is kept with it. */
export interface PastBody extends BodyState {
  loads: readonly DayLoad[];
  recent: readonly RecentDrill[];
}

// What a day of the past represents.
const pastBodies = new WeakMap<LoggedDay, PastBody>();

const fold = foldDays(nobody, stepBody, ({ firstDay, lastDay, rowDay, rowDays, weight, pain }): BodyDay => {
  return { firstDay, lastDay, rowDay, rowDays, weight, pain };
});

/**
 * The body after the first days of a journal. Days that were folded before are not folded again.
 * @param days the journal by days
 * @param count how many of them
 * @returns what is known then
 */
export const bodyAfter = fold.after;
/**
 * The little that is noted of the body after every day.
 * @param days the journal by days
 * @returns one a day, in the same order
 */
export const bodyDays = fold.notes;
/**
 * Folds a body ahead of being asked for it; no answer depends on it.
 * @param days the journal by days
 * @param count how many of them
 */
export const foldBodyAhead = fold.ahead;
/**
 * Says what a day of the past represents.
 * @param day the first of a log, with `isPast`
 * @param body what was known after it
 */
export function keepPastBody(day: LoggedDay, body: PastBody): void {
  pastBodies.set(day, body);
}
/** Of somebody of whom nothing is known. */
export const unknownBody = nobody;

/**
 * What the days of the last five weeks asked of the body, up to the last on which anything was done.
 * @param days the journal by days
 * @param count how many of them
 * @returns one a day on which anything was done, the newest last
 */
export function recentLoads(days: readonly LoggedDay[], count: number): DayLoad[] {
  const loads: DayLoad[] = [];
  for (let at = count - 1; at >= 0; at--) {
    const today = days[at]!;
    const fromDay = (loads[0]?.day ?? Number.NEGATIVE_INFINITY) - LOAD_DAYS;
    if (today.isPast) {
      const before = pastBodies.get(today)?.loads ?? [];
      return [...before.filter(({ day }) => day > fromDay), ...loads.reverse()];
    }
    if (today.day <= fromDay) break;
    const load = loadOf(today);
    if (isLoad(load, today)) loads.push(load);
  }
  return loads.reverse();
}

/**
 * The last drills that were no tests.
 * @param days the journal by days
 * @param count how many of them
 * @returns a dozen at the most, the newest last
 */
export function recentDrills(days: readonly LoggedDay[], count: number): RecentDrill[] {
  const recent: RecentDrill[] = [];
  for (let at = count - 1; at >= 0 && recent.length < RECENT_DRILLS; at--) {
    const today = days[at]!;
    if (today.isPast) {
      const before = pastBodies.get(today)?.recent ?? [];
      return [...before, ...recent.reverse()].slice(-RECENT_DRILLS);
    }
    const { day, drills } = today;
    const summaries = summariesOf(today);
    for (let of = drills.length - 1; of >= 0 && recent.length < RECENT_DRILLS; of--) {
      const { kind, id, program, programId } = drills[of]!;
      if (kind === 'test') continue;
      const summary = summaries[of]!;
      const { longestAskedMs: askedMs } = summary;
      recent.push({ day, id, program, programId, askedMs, missedShare: missedShareOf(summary) });
    }
  }
  return recent.reverse();
}

function stepBody(body: BodyState, today: LoggedDay): BodyState {
  if (today.isPast) return pastBodies.get(today) ?? body;
  const { day, drills, entry } = today;
  const summaries = summariesOf(today);
  const isDrilled = drills.length > 0;
  const isShot = arrowsOf(entry) > 0;
  const isDrawn = isShot || drills.some(isDraw);
  const isInHand = isShot || drills.some(({ reps }) => reps.length > 0);
  // Every key each time, and in this order: states of one shape are quick to make, and ten years are thousands of them.
  return {
    firstDay: isDrawn ? (body.firstDay ?? day) : body.firstDay,
    lastDay: isDrawn ? day : body.lastDay,
    drillDay: isDrilled ? day : body.drillDay,
    drillDayBefore: isDrilled ? body.drillDay : body.drillDayBefore,
    rowDays: isInHand ? (body.rowDay === day - 1 ? body.rowDays + 1 : 1) : body.rowDays,
    rowDay: isInHand ? day : body.rowDay,
    effort: effortAfter(body, today),
    weight: isDrilled ? weightAfter(body, summaries, day) : body.weight,
    pain: stepPain(body.pain, today),
    capacity: isDrilled ? stepCapacity(body.capacity, today) : body.capacity,
    missedShare: isDrilled ? missedShareAfter(body.missedShare, drills, summaries) : body.missedShare,
    limit: isDrilled ? limitAfter(body, today, summaries) : body.limit,
  };
}

function isLoad({ heldMs, arrowCount, drillCount }: DayLoad, { entry }: LoggedDay): boolean {
  return heldMs > 0 || arrowCount > 0 || drillCount > 0 || entry?.work !== undefined;
}

function effortAfter({ effort: before }: BodyState, { day, drills }: LoggedDay): BodyState['effort'] {
  for (let at = drills.length - 1; at >= 0; at--) {
    const { effort, id } = drills[at]!;
    if (effort !== undefined) return { day, effort, id };
  }
  return before;
}

function missedShareAfter(
  before: number | undefined,
  drills: readonly DrillRecord[],
  summaries: readonly DrillSummary[],
): number | undefined {
  const last = drills.findLastIndex(({ kind }) => kind !== 'test');
  return last < 0 ? before : missedShareOf(summaries[last]!);
}

function missedShareOf({ blocks }: DrillSummary): number {
  let [repCount, missedCount] = [0, 0];
  for (const block of blocks) {
    repCount += block.repCount;
    missedCount += block.missedCount;
  }
  return missedCount / Math.max(1, repCount);
}

/** Whether a bow or a band was drawn in a drill. Of an unsure rep nobody knows: it counts, to the safe side. */
function isDraw({ reps }: DrillRecord): boolean {
  return reps.some(({ heldMs, outcome }) => heldMs > 0 || outcome !== 'skipped');
}

function limitAfter(
  { limit, missedShare = 0 }: BodyState,
  { day, drills }: LoggedDay,
  summaries: readonly DrillSummary[],
): HoldLimit | undefined {
  let now = limit && day - limit.day < LIMIT_DAYS ? limit : undefined;
  // One hold let down, of however few, may be a mishap; after another failed drill it is not.
  let least = missedShare >= FAILED_SHARE ? 1 : 2;
  for (let at = 0; at < drills.length; at++) {
    const record = drills[at]!;
    if (record.pain || record.kind === 'test') continue;
    const { blocks, longestAskedMs } = summaries[at]!;
    let worst: BlockSummary | undefined;
    let isFailed = false;
    let isClean = true;
    for (const block of blocks) {
      const { missedCount, repCount } = block;
      if (missedCount > 0) isClean = false;
      if (missedCount > FAILED_SHARE * repCount) isFailed = true;
      if (missedCount < Math.max(least, FAILED_SHARE * repCount)) continue;
      if (worst === undefined || block.longestAskedMs > worst.longestAskedMs) worst = block;
    }
    least = isFailed ? 1 : 2;
    if (worst !== undefined) {
      const days = now ? now.days + (now.day === day ? 0 : 1) : 1;
      now = { day, id: record.id, holdMs: worst.mostHeldMs, askedMs: worst.longestAskedMs, days };
    } else if (now && isClean && longestAskedMs >= now.holdMs) {
      const holdMs = longestAskedMs * RAISED;
      now = holdMs >= now.askedMs ? undefined : { ...now, holdMs, days: 1 };
    }
  }
  return now;
}

function weightAfter(
  { weight, lastDay }: BodyState,
  summaries: readonly DrillSummary[],
  day: number,
): BodyState['weight'] {
  const isForgotten = lastDay !== undefined && day - lastDay >= WEIGHT_FORGOTTEN_DAYS;
  let now = isForgotten ? { lbf: 0, raisedDay: weight.raisedDay } : weight;
  for (const { addedLbf = 0 } of summaries) {
    if (addedLbf > now.lbf) now = { lbf: addedLbf, raisedDay: day };
  }
  return now;
}
