import type { DrillRecord } from '../journal/drill-record.ts';
import { trueHeldMs, trueOutcome } from '../journal/true-held-ms.ts';
import type { Program } from '../program/program.ts';
import { HALF_TIME_SECONDS, summarise } from './drill-summary.ts';
import type { LoggedDay } from './logged-days.ts';

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
   * `atLeast`: so long was held, and nobody knows how much longer; `failed`: strength gave out then; `whole`: so long nothing moved, as a camera
   * saw it.
   */
  kind: 'atLeast' | 'failed' | 'whole';
  /** One hold from fresh, milliseconds. */
  holdMs: number;
  /** The longest hold that was asked for in it, milliseconds. */
  askedMs: number;
  /** Weight on the fingers, pounds-force, where it was known. */
  lbf?: number;
  isTest: boolean;
}

/** The last evidence of each kind, the newest last. Bounded. */
export type CapacityState = readonly HoldEvidence[];

/** So much evidence is kept of each kind and tool. */
const KEPT = 8;

/**
 * What a day's drills say of the longest hold. A let-down for form and a full hold are lower bounds; strength that gave out is a value; an
 * unsure, an interrupted or an unexplained rep says nothing. Painful drills say nothing.
 * @param capacity what is known
 * @param today the day, as logged
 * @returns what is known after it
 */
export function stepCapacity(capacity: CapacityState, { day, drills }: LoggedDay): CapacityState {
  let now = capacity;
  for (const record of drills) {
    if (record.pain) continue;
    const { longestHeldMs, longestWholeMs = 0, longestAskedMs, failure } = summarise(record);
    const about = { day, id: record.id, tool: record.tool ?? 'bow', askedMs: longestAskedMs } as const;
    const known = { ...about, ...weightOf(record), isTest: record.kind === 'test' };
    if (longestHeldMs > 0) now = keep(now, { ...known, kind: 'atLeast', holdMs: longestHeldMs });
    if (longestWholeMs > 0) now = keep(now, { ...known, kind: 'whole', holdMs: longestWholeMs });
    const failedMs = failure?.workMs ?? (known.isTest ? failedInTest(record) : undefined);
    if (failedMs !== undefined && failedMs > 0) now = keep(now, { ...known, kind: 'failed', holdMs: failedMs });
  }
  return now;
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

function weightOf({ onFingersLbf }: DrillRecord): { lbf?: number } {
  return onFingersLbf === undefined || onFingersLbf <= 0 ? {} : { lbf: onFingersLbf };
}

function keep(capacity: CapacityState, evidence: HoldEvidence): CapacityState {
  const { kind, tool, day, holdMs } = evidence;
  const isAlike = (one: HoldEvidence) => one.kind === kind && one.tool === tool;
  const last = capacity.findLast(isAlike);
  // One value a day and kind: the longest that was held or stayed whole, the shortest that failed.
  if (last?.day === day) {
    const isBetter = kind === 'failed' ? holdMs < last.holdMs : holdMs > last.holdMs;
    return isBetter ? [...capacity.filter((one) => one !== last), evidence] : capacity;
  }
  const alike = capacity.filter(isAlike);
  const oldest = alike.length >= KEPT ? alike[0] : undefined;
  return [...capacity.filter((one) => one !== oldest), evidence];
}
