import { enduranceTime } from '../fatigue/endurance-time.ts';
import type { Archer } from './archer.ts';
import type { CapacityState, HoldEvidence, Tool } from './capacity-state.ts';

/** Evidence older than this no longer counts, days: a test should be repeated every 4 to 8 weeks. */
export const CAPACITY_DAYS = 56;
/**
 * How far one person's result may lie above another of their own before it is news, as a share.
 * @source J Exerc Sci Fitness 2012 (n = 21): smallest real difference of the shoulder rotators' strength 17-28 %; the wider end
 */
export const OWN_NOISE_SHARE = 0.28;

/** The longest hold from fresh, with one tool. Seconds. */
export interface Capacity {
  tool: Tool;
  /** Pounds-force on the fingers that it is for; absent where no weight is known. */
  atLbf?: number;
  /** How long was held. */
  atLeastSeconds?: number;
  /** How long a hold stayed whole, nothing having moved since the anchor; absent where no camera could judge it. */
  wholeSeconds?: number;
  /** The middle of what failed, of tests first; where nothing failed, the archer's own answer. */
  likelySeconds?: number;
  /** More than this would be news. It is one person's noise, not the spread between people. */
  atMostSeconds?: number;
  /** Where `likelySeconds` comes from. */
  likelyFrom?: 'test' | 'failures' | 'answer';
  /** Ids of the drill records. */
  evidence: readonly string[];
}

/**
 * Whether a day still tells of the longest hold.
 * @param day days from 1970-01-01
 * @param today the same
 * @returns true for today and the 55 days before it
 */
export function isRecent(day: number, today: number): boolean {
  return day <= today && day > today - CAPACITY_DAYS;
}

/**
 * What is known of the longest hold with one tool.
 * @param state evidence, oldest first
 * @param tool what is drawn; tools are never mixed
 * @param today days from 1970-01-01
 * @param archer their own answer, and the weight it is for
 * @returns bounds, as far as anything is known
 */
export function capacityOf(state: CapacityState, tool: Tool, today: number, archer: Archer = {}): Capacity {
  const recent = state.filter((one) => one.tool === tool && isRecent(one.day, today));
  const atLbf = (tool === 'bow' ? archer.onFingersLbf : undefined) ?? recent.findLast(({ lbf }) => lbf)?.lbf;
  const secondsOf = (one: HoldEvidence) => secondsAt(one, atLbf);
  const held = recent.filter(({ kind }) => kind === 'atLeast').map(secondsOf);
  const whole = recent.filter(({ kind }) => kind === 'whole').map(secondsOf);
  const failures = recent.filter(({ kind }) => kind === 'failed');
  const tests = failures.filter(({ isTest }) => isTest);
  const counted = tests.length > 0 ? tests.slice(-2) : failures;
  const values = counted.map(secondsOf);
  const capacity: Capacity = { tool, evidence: [...new Set(recent.map(({ id }) => id))] };
  if (atLbf !== undefined) capacity.atLbf = atLbf;
  if (held.length > 0) capacity.atLeastSeconds = Math.max(...held);
  if (whole.length > 0) capacity.wholeSeconds = Math.max(...whole);
  const { longestHoldSeconds } = archer;
  if (values.length > 0) {
    capacity.likelySeconds = Math.max(median(values), capacity.atLeastSeconds ?? 0);
    capacity.likelyFrom = tests.length > 0 ? 'test' : 'failures';
    const most = counted.map((one) => secondsAt({ lbf: one.lbf, holdMs: one.mostMs ?? one.holdMs }, atLbf));
    capacity.atMostSeconds = Math.max(...most, capacity.likelySeconds) * (1 + OWN_NOISE_SHARE);
  } else if (longestHoldSeconds !== undefined && tool === 'bow') {
    capacity.likelySeconds = Math.max(longestHoldSeconds, capacity.atLeastSeconds ?? 0);
    capacity.likelyFrom = 'answer';
  }
  return capacity;
}

/**
 * The same hold at another weight: endurance falls with a power of the load, and where both loads are shares of one unknown strength, the
 * strength cancels out.
 * @source Frey Law & Avin 2010, Ergonomics 53:109, table 2: the shoulder's exponent
 */
function secondsAt({ holdMs, lbf }: Pick<HoldEvidence, 'holdMs' | 'lbf'>, atLbf: number | undefined): number {
  const seconds = holdMs / 1000;
  if (lbf === undefined || atLbf === undefined || lbf === atLbf || atLbf <= 0) return seconds;
  const heavier = 2 * Math.max(lbf, atLbf);
  return (seconds * enduranceTime(atLbf / heavier)) / enduranceTime(lbf / heavier);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return ((sorted[(sorted.length - 1) >> 1] ?? 0) + (sorted[sorted.length >> 1] ?? 0)) / 2;
}
