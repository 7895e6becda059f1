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
/** In how many seconds endurance comes back by half (Sahlin & Ren 1989, J Appl Physiol 67:648): 1.2 minutes. */
export const HALF_TIME_SECONDS = 72;

/**
 * Sums a drill up, in one walk over its reps.
 * @param record one drill
 * @returns counts and times, by block and over all
 */
export function summarise({ reps, prescribedReps }: DrillRecord): DrillSummary {
  // Most drills have one block: made with it, the list has room for no more.
  const blocks: BlockSummary[] = reps.length > 0 ? [nothingOf(reps[0]!.block)] : [];
  const all: DrillSummary = {
    blocks,
    notBegunCount: Math.max(0, (prescribedReps ?? 0) - reps.length),
    longestAskedMs: 0,
    askedMs: 0,
    heldMs: 0,
    longestHeldMs: 0,
    longestWholeMs: undefined,
    addedLbf: undefined,
    failure: undefined,
  };
  for (let at = 0; at < reps.length; ) {
    const { block } = reps[at]!;
    const known = blockIn(all, block);
    const of = known ?? nothingOf(block);
    if (known === undefined) blocks.push(of);
    at = addRun(of, all, reps, at);
  }
  for (const one of blocks) {
    if (one.missedCount > 0) one.mostHeldMs = mostHeldMs(reps, one);
    all.longestAskedMs = Math.max(all.longestAskedMs, one.longestAskedMs);
    all.askedMs += one.askedMs;
    all.heldMs += one.heldMs;
  }
  return all;
}

/**
 * What a block comes to in a drill.
 * @param summary the drill's
 * @param block its index in the program
 * @returns undefined where the drill left it out
 */
export function blockIn({ blocks }: DrillSummary, block: number): BlockSummary | undefined {
  // In most drills every block has its own place.
  const own = blocks[block];
  if (own !== undefined && own.block === block) return own;
  for (const one of blocks) if (one.block === block) return one;
  return undefined;
}

/**
 * Adds the reps of one block that follow each other. Each key is read once and summed in plain numbers: over ten years of reps that takes the time.
 * @returns where the next block's begin
 */
function addRun(of: BlockSummary, all: DrillSummary, reps: readonly RepRecord[], from: number): number {
  let { heldCount, missedCount, formCount, doubtfulCount, longestAskedMs, askedMs, heldMs: sumMs, mostHeldMs } = of;
  let { longestHeldMs } = all;
  let at = from;
  for (; at < reps.length; at++) {
    const rep = reps[at]!;
    const { block, prescribedMs, seen, addedWeightLbf } = rep;
    if (block !== of.block) break;
    const heldMs = seen === undefined ? rep.heldMs : trueHeldMs(rep);
    const outcome = seen === undefined ? rep.outcome : trueOutcome(rep);
    askedMs += prescribedMs;
    sumMs += heldMs;
    if (seen !== undefined) addSeen(of, all, rep, heldMs);
    if (prescribedMs > longestAskedMs) longestAskedMs = prescribedMs;
    if (addedWeightLbf !== undefined) all.addedLbf = Math.max(all.addedLbf ?? 0, addedWeightLbf);
    if (outcome === 'held') {
      heldCount += 1;
      if (heldMs > longestHeldMs) longestHeldMs = heldMs;
      if (heldMs < mostHeldMs) mostHeldMs = heldMs;
    } else if (outcome === 'unsure' || rep.why === 'interrupted') doubtfulCount += 1;
    else if (outcome === 'short' && rep.why === 'form') {
      formCount += 1;
      if (heldMs > longestHeldMs) longestHeldMs = heldMs;
    } else {
      missedCount += 1;
      if (outcome === 'short' && rep.why === 'tired') all.failure ??= failureAt(reps, at);
    }
  }
  all.longestHeldMs = longestHeldMs;
  of.repCount += at - from;
  of.heldCount = heldCount;
  of.missedCount = missedCount;
  of.formCount = formCount;
  of.doubtfulCount = doubtfulCount;
  of.longestAskedMs = longestAskedMs;
  of.askedMs = askedMs;
  of.heldMs = sumMs;
  of.mostHeldMs = mostHeldMs;
  return at;
}

function addSeen(of: BlockSummary, all: DrillSummary, rep: RepRecord, heldMs: number): void {
  if (isApart(rep)) of.apart = addApart(of.apart, rep, heldMs);
  const wholeMs = wholeHeldMs(rep);
  if (wholeMs !== undefined) all.longestWholeMs = Math.max(all.longestWholeMs ?? 0, wholeMs);
}

/** The work before a rep that failed, minus what a rest of twice the hold brings back, plus the rep's own. */
function failureAt(reps: readonly RepRecord[], failedAt: number): DrillSummary['failure'] {
  let workMs = 0;
  for (const rep of reps.slice(0, failedAt)) {
    workMs = (workMs + trueHeldMs(rep)) * 2 ** (-(2 * rep.prescribedMs) / 1000 / HALF_TIME_SECONDS);
  }
  const heldMs = trueHeldMs(reps[failedAt]!);
  return { heldMs, workMs: workMs + heldMs };
}

function isApart(rep: RepRecord): boolean {
  return Math.abs(disagreementMs(rep)) > DISAGREEMENT_MS;
}

function addApart(apart: BlockSummary['apart'], { heldMs }: RepRecord, seenMs: number): BlockSummary['apart'] {
  const { count, ...sum } = apart ?? { count: 0, clockMs: 0, seenMs: 0 };
  return { count: count + 1, clockMs: sum.clockMs + heldMs, seenMs: sum.seenMs + seenMs };
}

function nothingOf(block: number): BlockSummary {
  return {
    block,
    repCount: 0,
    heldCount: 0,
    missedCount: 0,
    formCount: 0,
    doubtfulCount: 0,
    longestAskedMs: 0,
    askedMs: 0,
    heldMs: 0,
    mostHeldMs: Number.MAX_SAFE_INTEGER,
  };
}

function mostHeldMs(reps: readonly RepRecord[], of: BlockSummary): number {
  const most = Math.max(1, Math.ceil((of.heldCount + of.missedCount) * MOST_SHARE));
  const { mostHeldMs: leastFullMs } = of;
  let asLongCount = 0;
  let longerCount = 0;
  for (const rep of reps) {
    if (!isCounted(rep, of)) continue;
    const heldMs = trueHeldMs(rep);
    if (heldMs >= leastFullMs) asLongCount += 1;
    if (heldMs > leastFullMs) longerCount += 1;
  }
  // Full holds are mostly of one length, and then nothing need be sorted.
  if (longerCount < most && most <= asLongCount) return leastFullMs;
  const held = reps.filter((rep) => isCounted(rep, of)).map(trueHeldMs);
  return held.sort((a, b) => b - a)[most - 1] ?? 0;
}

function isCounted(rep: RepRecord, { block }: BlockSummary): boolean {
  const { why } = rep;
  return rep.block === block && why !== 'interrupted' && why !== 'form' && trueOutcome(rep) !== 'unsure';
}
