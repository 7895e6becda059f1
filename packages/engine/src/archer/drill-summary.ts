import type { DrillRecord, RepRecord } from '../journal/drill-record.ts';
import { DISAGREEMENT_MS, disagreementMs, trueHeldMs, trueOutcome, wholeHeldMs } from '../journal/true-held-ms.ts';

/** What one block of one drill comes to. Times are milliseconds, weights pounds-force. */
export interface BlockSummary {
  block: number;
  /** Reps that were written down, however they ended. */
  repCount: number;
  heldCount: number;
  /** Let down early for want of strength or for a reason that nobody gave, or skipped. */
  missedCount: number;
  /** Let down early because the form went: good sense, and nothing is concluded from it. */
  formCount: number;
  /** Unsure, or interrupted. */
  doubtfulCount: number;
  longestAskedMs: number;
  askedMs: number;
  heldMs: number;
  /** What three of five counted reps held; the shortest full hold where none was missed. */
  mostHeldMs: number;
  /** Reps on which a camera and the clock are apart, and what each of them has of these. Absent where there are none. */
  apart?: { count: number; clockMs: number; seenMs: number };
}

/** What one drill comes to. */
export interface DrillSummary {
  blocks: readonly BlockSummary[];
  /** Reps that were prescribed and not begun. */
  notBegunCount: number;
  longestAskedMs: number;
  askedMs: number;
  heldMs: number;
  /** The longest hold that was really held, to its end or until the form went. */
  longestHeldMs: number;
  /** The longest time that a hold stayed whole, where a camera could judge it. */
  longestWholeMs?: number;
  /** The most weight added; absent where the record does not say. */
  addedLbf?: number;
  /** The first hold that strength gave up, and the held time before it. */
  failure?: { heldMs: number; workMs: number };
}

/** The share of the counted reps that most means. */
const MOST_SHARE = 0.6;
/** Endurance comes back by half in so many seconds (Sahlin & Ren 1989, J Appl Physiol 67:648): 1.2 minutes. */
export const HALF_TIME_SECONDS = 72;

// Keyed by the list of reps, which a corrected record replaces.
const kept = new WeakMap<readonly RepRecord[], { record: DrillRecord; summary: DrillSummary }>();

/**
 * Sums a drill up, in one walk over its reps.
 * @param record one drill
 * @returns counts and times, by block and over all
 */
export function summarise(record: DrillRecord): DrillSummary {
  const known = kept.get(record.reps);
  if (known !== undefined && known.record.prescribedReps === record.prescribedReps) return known.summary;
  const summary = sum(record);
  kept.set(record.reps, { record, summary });
  return summary;
}

function sum({ reps, prescribedReps }: DrillRecord): DrillSummary {
  const blocks: BlockSummary[] = [];
  let of: BlockSummary | undefined;
  let longestHeldMs = 0;
  let addedLbf: number | undefined;
  let longestWholeMs: number | undefined;
  let failure: DrillSummary['failure'];
  let workMs = 0;
  for (const rep of reps) {
    const { block, prescribedMs, seen } = rep; // each key is read once: over ten years of reps that takes the time
    const heldMs = seen === undefined ? rep.heldMs : trueHeldMs(rep);
    const outcome = seen === undefined ? rep.outcome : trueOutcome(rep);
    if (of?.block !== block) of = blocks.find((one) => one.block === block) ?? begin(blocks, block);
    of.repCount += 1;
    of.askedMs += prescribedMs;
    of.heldMs += heldMs;
    if (seen !== undefined) {
      if (isApart(rep)) of.apart = addApart(of.apart, rep, heldMs);
      const wholeMs = wholeHeldMs(rep);
      if (wholeMs !== undefined) longestWholeMs = Math.max(longestWholeMs ?? 0, wholeMs);
    }
    if (prescribedMs > of.longestAskedMs) of.longestAskedMs = prescribedMs;
    if (rep.addedWeightLbf !== undefined) addedLbf = Math.max(addedLbf ?? 0, rep.addedWeightLbf);
    if (outcome === 'held') {
      of.heldCount += 1;
      if (heldMs > longestHeldMs) longestHeldMs = heldMs;
      if (heldMs < of.mostHeldMs) of.mostHeldMs = heldMs;
    } else if (outcome === 'unsure' || rep.why === 'interrupted') of.doubtfulCount += 1;
    else if (outcome === 'short' && rep.why === 'form') {
      of.formCount += 1;
      if (heldMs > longestHeldMs) longestHeldMs = heldMs;
    } else {
      of.missedCount += 1;
      if (outcome === 'short' && rep.why === 'tired') failure ??= { heldMs, workMs: workMs + heldMs };
    }
    // What is left of the tiring when the next hold begins, after a rest of twice the hold.
    workMs = (workMs + heldMs) * 2 ** (-(2 * prescribedMs) / 1000 / HALF_TIME_SECONDS);
  }
  for (const one of blocks) if (one.missedCount > 0) one.mostHeldMs = mostHeldMs(reps, one);
  const total = (key: 'askedMs' | 'heldMs') => blocks.reduce((before, one) => before + one[key], 0);
  return {
    blocks,
    notBegunCount: Math.max(0, (prescribedReps ?? 0) - reps.length),
    longestAskedMs: blocks.reduce((most, one) => Math.max(most, one.longestAskedMs), 0),
    ...{ askedMs: total('askedMs'), heldMs: total('heldMs'), longestHeldMs },
    ...(addedLbf === undefined ? {} : { addedLbf }),
    ...(longestWholeMs === undefined ? {} : { longestWholeMs }),
    ...(failure === undefined ? {} : { failure }),
  };
}

function isApart(rep: RepRecord): boolean {
  return Math.abs(disagreementMs(rep)) > DISAGREEMENT_MS;
}

function addApart(apart: BlockSummary['apart'], { heldMs }: RepRecord, seenMs: number): BlockSummary['apart'] {
  const { count, ...sum } = apart ?? { count: 0, clockMs: 0, seenMs: 0 };
  return { count: count + 1, clockMs: sum.clockMs + heldMs, seenMs: sum.seenMs + seenMs };
}

function begin(blocks: BlockSummary[], block: number): BlockSummary {
  const counts = { repCount: 0, heldCount: 0, missedCount: 0, formCount: 0, doubtfulCount: 0 };
  const one = { block, ...counts, longestAskedMs: 0, askedMs: 0, heldMs: 0, mostHeldMs: Number.MAX_SAFE_INTEGER };
  blocks.push(one);
  return one;
}

function mostHeldMs(reps: readonly RepRecord[], { block, heldCount, missedCount }: BlockSummary): number {
  const held: number[] = [];
  for (const rep of reps) {
    const { block: of, why } = rep;
    if (of === block && trueOutcome(rep) !== 'unsure' && why !== 'interrupted' && why !== 'form')
      held.push(trueHeldMs(rep));
  }
  held.sort((a, b) => b - a);
  return held[Math.max(0, Math.ceil((heldCount + missedCount) * MOST_SHARE) - 1)] ?? 0;
}
