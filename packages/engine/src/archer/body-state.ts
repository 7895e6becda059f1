import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import { type CapacityState, stepCapacity } from './capacity-state.ts';
import { type BlockSummary, summarise } from './drill-summary.ts';
import { foldDays } from './fold-days.ts';
import type { LoggedDay } from './logged-days.ts';
import { noPain, type PainState, stepPain } from './pain-state.ts';

/** What one day asked of the body. */
export interface DayLoad {
  /** Days from 1970-01-01. */
  day: number;
  /** At full draw in all drills, milliseconds. */
  heldMs: number;
  /** Force times time at full draw, newton-seconds, of the drills whose weight is known. */
  impulseNs: number;
  arrowCount: number;
  drillCount: number;
  /** Length of the drills, milliseconds, where it was kept. */
  durationMs: number;
}

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
  /** Days of the last five weeks on which anything was done. */
  loads: readonly DayLoad[];
  /** The last effort that was written down. */
  effort?: { day: number; effort: number; id: string };
  /** Added weight: the most that is in use, and the day on which it last rose. */
  weight: { lbf: number; raisedDay?: number };
  pain: PainState;
  capacity: CapacityState;
  /** The last drills that were no tests, the newest last. */
  recent: readonly RecentDrill[];
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
/** A hold that went well lets so much more be asked for. */
const RAISED = 1.15;
/** After how many days without a draw, weight that was added is as if it had never been. Own, careful: no source. */
const WEIGHT_FORGOTTEN_DAYS = 56;
const LBF_IN_NEWTONS = 4.4482216152605; // NIST SP 811

const nobody: BodyState = { rowDays: 0, loads: [], weight: { lbf: 0 }, pain: noPain, capacity: [], recent: [] };

/** The little of a body that is noted of every day, for the rules that replay a program. */
export type BodyDay = Pick<BodyState, 'firstDay' | 'lastDay' | 'rowDay' | 'rowDays' | 'weight' | 'pain'>;

// What a day of the past stands for.
const pastBodies = new WeakMap<LoggedDay, BodyState>();

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
 * Says what a day of the past stands for.
 * @param day the first of a log, with `isPast`
 * @param body what was known after it
 */
export function keepPastBody(day: LoggedDay, body: BodyState): void {
  pastBodies.set(day, body);
}
/** Of somebody of whom nothing is known. */
export const unknownBody = nobody;

function stepBody(body: BodyState, today: LoggedDay): BodyState {
  if (today.isPast) return pastBodies.get(today) ?? body;
  const { day, drills, entry } = today;
  const load = loadOf(today);
  const isDrilled = drills.length > 0;
  const isDrawn = load.arrowCount > 0 || drills.some(isDraw);
  const isInHand = load.arrowCount > 0 || drills.some(({ reps }) => reps.length > 0);
  const isLoad = load.heldMs > 0 || load.arrowCount > 0 || isDrilled || entry?.work !== undefined;
  // Every key each time, and in this order: states of one shape are quick to make, and ten years are thousands of them.
  return {
    firstDay: isDrawn ? (body.firstDay ?? day) : body.firstDay,
    lastDay: isDrawn ? day : body.lastDay,
    drillDay: isDrilled ? day : body.drillDay,
    drillDayBefore: isDrilled ? body.drillDay : body.drillDayBefore,
    rowDays: isInHand ? (body.rowDay === day - 1 ? body.rowDays + 1 : 1) : body.rowDays,
    rowDay: isInHand ? day : body.rowDay,
    loads: isLoad ? withLoad(body.loads, load) : body.loads,
    effort: effortAfter(body, today),
    weight: isDrilled ? weightAfter(body, drills, day) : body.weight,
    pain: stepPain(body.pain, today),
    capacity: isDrilled ? stepCapacity(body.capacity, today) : body.capacity,
    recent: isDrilled ? recentAfter(body.recent, drills, day) : body.recent,
    limit: isDrilled ? limitAfter(body, today) : body.limit,
  };
}

function withLoad(loads: readonly DayLoad[], load: DayLoad): DayLoad[] {
  let from = 0;
  while (from < loads.length && loads[from]!.day <= load.day - LOAD_DAYS) from++;
  return loads.slice(from).concat(load); // of just the right size, which a push would double
}

function effortAfter({ effort: before }: BodyState, { day, drills }: LoggedDay): BodyState['effort'] {
  const last = drills.findLast(({ effort }) => effort !== undefined);
  return last?.effort === undefined ? before : { day, effort: last.effort, id: last.id };
}

function recentAfter(before: readonly RecentDrill[], drills: readonly DrillRecord[], day: number): RecentDrill[] {
  const come = drills.filter(({ kind }) => kind !== 'test').map((record) => recentOf(record, day));
  const now = before.slice(Math.max(0, before.length + come.length - RECENT_DRILLS)).concat(come);
  return now.length > RECENT_DRILLS ? now.slice(-RECENT_DRILLS) : now;
}

function recentOf(record: DrillRecord, day: number): RecentDrill {
  const { blocks, longestAskedMs } = summarise(record);
  let [repCount, missedCount] = [0, 0];
  for (const block of blocks) {
    repCount += block.repCount;
    missedCount += block.missedCount;
  }
  const { id, program, programId } = record;
  return { day, id, program, programId, askedMs: longestAskedMs, missedShare: missedCount / Math.max(1, repCount) };
}

/** Whether a bow or a band was drawn in a drill. Of an unsure rep nobody knows: it counts, to the safe side. */
function isDraw({ reps }: DrillRecord): boolean {
  return reps.some(({ heldMs, outcome }) => heldMs > 0 || outcome !== 'skipped');
}

function loadOf({ day, drills, entry }: LoggedDay): DayLoad {
  const load: DayLoad = { day, heldMs: 0, impulseNs: 0, arrowCount: arrowsOf(entry), drillCount: 0, durationMs: 0 };
  for (const record of drills) {
    const { heldMs } = summarise(record);
    load.heldMs += heldMs;
    load.impulseNs += ((record.onFingersLbf ?? 0) * LBF_IN_NEWTONS * heldMs) / 1000;
    load.drillCount += 1;
    load.durationMs += record.durationMs ?? 0;
  }
  return load;
}

/** Arrows of a diary entry. */
export function arrowsOf(entry: DayEntry | undefined): number {
  return entry?.arrows?.reduce((sum, { count }) => sum + count, 0) ?? 0;
}

function limitAfter({ limit, recent }: BodyState, { day, drills }: LoggedDay): HoldLimit | undefined {
  let now = limit && day - limit.day < LIMIT_DAYS ? limit : undefined;
  // One hold let down, of however few, may be a mishap; after another failed drill it is none.
  let least = (recent.at(-1)?.missedShare ?? 0) >= FAILED_SHARE ? 1 : 2;
  for (const record of drills) {
    if (record.pain || record.kind === 'test') continue;
    const { blocks, longestAskedMs } = summarise(record);
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

function weightAfter({ weight, lastDay }: BodyState, drills: readonly DrillRecord[], day: number): BodyState['weight'] {
  const isForgotten = lastDay !== undefined && day - lastDay >= WEIGHT_FORGOTTEN_DAYS;
  let now = isForgotten ? { lbf: 0, raisedDay: weight.raisedDay } : weight;
  for (const record of drills) {
    const { addedLbf = 0 } = summarise(record);
    if (addedLbf > now.lbf) now = { lbf: addedLbf, raisedDay: day };
  }
  return now;
}
