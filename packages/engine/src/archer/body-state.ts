import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import { readDay } from '../units/read-day.ts';
import { type CapacityState, stepCapacity } from './capacity-state.ts';
import { summarise } from './drill-summary.ts';
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

/** So many of the last drills say where it goes. */
const RECENT_DRILLS = 12;
/** Days of loads that are kept: the week that runs, and four before it. */
export const LOAD_DAYS = 35;
/** A hold that failed is remembered for so many days. Own: no source. */
const LIMIT_DAYS = 28;
const FAILED_SHARE = 0.2;
/** A hold that went well lets so much more be asked for. */
const RAISED = 1.15;
/** After so many days without a draw, weight that was added is as if it had never been. Own, careful: no source. */
const WEIGHT_FORGOTTEN_DAYS = 56;
const LBF_IN_NEWTONS = 4.4482216152605; // NIST SP 811

const nobody: BodyState = { rowDays: 0, loads: [], weight: { lbf: 0 }, pain: noPain, capacity: [], recent: [] };

/**
 * The body after every day of a journal. Days that were folded before are not folded again.
 * @param days the journal by days
 * @returns one state a day, in the same order
 */
export const bodyStates = foldDays(nobody, stepBody);
/** Of somebody of whom nothing is known. */
export const unknownBody = nobody;

function stepBody(body: BodyState, today: LoggedDay): BodyState {
  const { day, drills, entry } = today;
  const pain = stepPain(body.pain, today);
  const load = loadOf(today);
  const isDrawn = load.arrowCount > 0 || drills.some(isDraw);
  const next: BodyState = { ...body, pain };
  if (load.heldMs > 0 || load.arrowCount > 0 || drills.length > 0 || entry?.work) {
    next.loads = [...body.loads.filter((one) => one.day > day - LOAD_DAYS), load];
  }
  if (drills.length > 0) {
    next.drillDayBefore = body.drillDay;
    next.drillDay = day;
    next.capacity = stepCapacity(body.capacity, today);
    next.weight = weightAfter(body, drills, day);
    next.recent = [...body.recent, ...drills.filter(({ kind }) => kind !== 'test').map(recentOf)].slice(-RECENT_DRILLS);
    next.limit = limitAfter(body, today);
    for (const { effort, id } of drills) if (effort !== undefined) next.effort = { day, effort, id };
  }
  if (load.arrowCount > 0 || drills.some(({ reps }) => reps.length > 0)) {
    next.rowDays = body.rowDay === day - 1 ? body.rowDays + 1 : 1;
    next.rowDay = day;
  }
  if (!isDrawn) return next;
  next.firstDay = body.firstDay ?? day;
  next.lastDay = day;
  return next;
}

function recentOf(record: DrillRecord): RecentDrill {
  const { blocks, longestAskedMs } = summarise(record);
  const total = (key: 'repCount' | 'missedCount') => blocks.reduce((sum, one) => sum + one[key], 0);
  const { id, program, programId } = record;
  return {
    ...{ day: readDay(record.date) ?? 0, id, program, ...(programId === undefined ? {} : { programId }) },
    ...{ askedMs: longestAskedMs, missedShare: total('missedCount') / Math.max(1, total('repCount')) },
  };
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
  return (entry?.arrows ?? []).reduce((sum, { count }) => sum + count, 0);
}

function limitAfter({ limit, recent }: BodyState, { day, drills }: LoggedDay): HoldLimit | undefined {
  let now = limit && day - limit.day < LIMIT_DAYS ? limit : undefined;
  // One hold let down, of however few, may be a mishap; after another failed drill it is none.
  let least = (recent.at(-1)?.missedShare ?? 0) >= FAILED_SHARE ? 1 : 2;
  for (const record of drills) {
    if (record.pain || record.kind === 'test') continue;
    const { blocks, longestAskedMs, id } = { ...summarise(record), id: record.id };
    const failed = blocks.filter(
      ({ missedCount, repCount }) => missedCount >= Math.max(least, FAILED_SHARE * repCount),
    );
    least = blocks.some(({ missedCount, repCount }) => missedCount > FAILED_SHARE * repCount) ? 1 : 2;
    if (failed.length > 0) {
      const worst = failed.reduce((a, b) => (b.longestAskedMs > a.longestAskedMs ? b : a));
      const days = now ? now.days + (now.day === day ? 0 : 1) : 1;
      now = { day, id, holdMs: worst.mostHeldMs, askedMs: worst.longestAskedMs, days };
    } else if (now && blocks.every(({ missedCount }) => missedCount === 0) && longestAskedMs >= now.holdMs) {
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
