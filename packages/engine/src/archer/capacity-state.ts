import type { DrillRecord } from '../journal/drill-record.ts';
import { trueHeldMs, trueOutcome } from '../journal/true-held-ms.ts';
import type { Program } from '../program/program.ts';
import { summariesOf } from './day-sum.ts';
import { HALF_TIME_SECONDS } from './drill-summary.ts';
import type { LoggedDay } from './logged-day.ts';

/** What is drawn. */
export type Tool = Program['tool'];

/** What one drill says of the longest hold. */
export interface HoldEvidence {
  /** Days from 1970-01-01. */
  day: number;
  /** The drill record's. */
  id: string;
  tool: Tool;
  /**
   * `atLeast`: this was held, and nobody knows how much longer; `failed`: strength gave out then; `whole`: nothing moved for this time, as a camera
   * saw it.
   */
  kind: 'atLeast' | 'failed' | 'whole';
  /** One hold from fresh, milliseconds. */
  holdMs: number;
  /** Of one that failed late in a drill: what it would be if all of the work before it counted, milliseconds. */
  mostMs?: number;
  /** The longest hold that was asked for in it, milliseconds. */
  askedMs: number;
  /** Weight on the fingers, pounds-force, where it was known. */
  lbf?: number;
  isTest: boolean;
}

/** The last evidence of each kind, the newest last. Bounded. */
export type CapacityState = readonly HoldEvidence[];

/**
 * The share of the work before a hold that failed which is counted as strength. Recovery is quicker at first than its half-time says, and rests may have
 * been longer than twice the hold. Own, careful: of archers of 18, 30 and 38 s, invented after Stull & Kearney 1978 (Med Sci Sports 10:109), none is
 * read as more than they have; all of the work would read them up to 1.6 times as strong.
 */
const COUNTED_WORK = 0.5;
/** How many pieces of evidence are kept of each kind and tool. */
const KEPT = 8;

/**
 * What a day's drills say of the longest hold. A let-down for form and a full hold are lower bounds; strength that gave out is a value; an
 * unsure, an interrupted or an unexplained rep says nothing. Painful drills say nothing.
 * @param capacity what is known
 * @param today the day, as logged
 * @returns what is known after it
 */
export function stepCapacity(capacity: CapacityState, today: LoggedDay): CapacityState {
  const { day, drills } = today;
  const summaries = summariesOf(today);
  let now = capacity;
  for (let at = 0; at < drills.length; at++) {
    const record = drills[at]!;
    if (record.pain) continue;
    const { longestHeldMs, longestWholeMs = 0, longestAskedMs: askedMs, failure } = summaries[at]!;
    if (longestHeldMs > 0) now = keep(now, evidenceOf(record, day, askedMs, 'atLeast', longestHeldMs));
    if (longestWholeMs > 0) now = keep(now, evidenceOf(record, day, askedMs, 'whole', longestWholeMs));
    const isTest = record.kind === 'test';
    if (failure && !isTest) {
      const { heldMs, workMs } = failure;
      const holdMs = heldMs + COUNTED_WORK * (workMs - heldMs);
      if (workMs > 0) now = keep(now, { ...evidenceOf(record, day, askedMs, 'failed', holdMs), mostMs: workMs });
    } else {
      const failedMs = failure?.workMs ?? (isTest ? failedInTest(record) : undefined);
      if (failedMs !== undefined && failedMs > 0) now = keep(now, evidenceOf(record, day, askedMs, 'failed', failedMs));
    }
  }
  return now;
}

function evidenceOf(
  record: DrillRecord,
  day: number,
  askedMs: number,
  kind: HoldEvidence['kind'],
  holdMs: number,
): HoldEvidence {
  const { id, tool = 'bow' } = record;
  return { day, id, tool, kind, holdMs, askedMs, lbf: weightOf(record), isTest: record.kind === 'test' };
}

/** A test goes on until it fails: its first hold that ended early failed, for want of form or of strength, unless it was interrupted. */
function failedInTest({ reps }: DrillRecord): number | undefined {
  let workMs = 0;
  for (const rep of reps) {
    const { why, prescribedMs } = rep;
    const outcome = trueOutcome(rep);
    const heldMs = trueHeldMs(rep);
    if (outcome === 'unsure' || outcome === 'skipped' || why === 'interrupted') return undefined;
    if (outcome === 'short') return workMs + heldMs;
    workMs = (workMs + heldMs) * 2 ** (-(2 * prescribedMs) / 1000 / HALF_TIME_SECONDS);
  }
  return undefined;
}

function weightOf({ onFingersLbf }: DrillRecord): number | undefined {
  return onFingersLbf === undefined || onFingersLbf <= 0 ? undefined : onFingersLbf;
}

function keep(capacity: CapacityState, evidence: HoldEvidence): CapacityState {
  const { kind, tool, day, holdMs } = evidence;
  let [first, last, alikeCount] = [-1, -1, 0];
  for (let at = 0; at < capacity.length; at++) {
    const one = capacity[at]!;
    if (one.kind !== kind || one.tool !== tool) continue;
    if (alikeCount++ === 0) first = at;
    last = at;
  }
  const before = capacity[last];
  // One value a day and kind: the longest that was held or stayed whole, the shortest that failed.
  if (before?.day === day) {
    const isBetter = kind === 'failed' ? holdMs < before.holdMs : holdMs > before.holdMs;
    return isBetter ? replaced(capacity, last, evidence) : capacity;
  }
  return replaced(capacity, alikeCount >= KEPT ? first : -1, evidence);
}

/** The same list without the one at a place, if any, and with another at its end. */
function replaced(capacity: CapacityState, leftOut: number, evidence: HoldEvidence): CapacityState {
  const now = capacity.slice();
  if (leftOut < 0) now.push(evidence);
  else {
    for (let at = leftOut + 1; at < now.length; at++) now[at - 1] = now[at]!;
    now[now.length - 1] = evidence;
  }
  return now;
}
