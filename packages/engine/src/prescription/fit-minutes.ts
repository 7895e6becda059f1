import { type Bound, filterChoices, fittingBound } from './fit-bound.ts';
import type { Choice } from './fit-choice.ts';
import type { PrescribedBlock } from './prescription.ts';
import { READY_MS } from './timeline-duration.ts';

/**
 * The best ways to do a block and those after it, in rising time and worth: no way is both longer and worth no more than another. The arrays
 * run in parallel; `choice` and `parent` point back, so that nothing is copied.
 */
interface Frontier {
  timeMs: number[];
  worth: number[];
  /** Which choice of this block; -1 where it is left out. */
  choice: number[];
  /** The way to do the blocks after it. */
  parent: number[];
}

/** What is asked: choices per block, and the time there is. */
interface Knapsack {
  blocks: readonly PrescribedBlock[];
  choices: readonly (readonly Choice[])[];
  budgetMs: number;
}

/** How many ways the first, quick search keeps after each block. */
const PROMISING_WAYS = 24;
/** How many choices of each block it tries. */
const PROMISING_CHOICES = 12;
/** More sets than any program has: worth counts held milliseconds in this unit, sets in ones. */
const SETS_LIMIT = 1000;

/**
 * The best of a prescription that is not longer than a given time. Exact: keeps the hold length and the rests, then the most time under
 * tension, then the most sets. Where not one rep fits, the hold of one rep is cut to what fits, half a second at least.
 * @param blocks today's blocks, not empty
 * @param limitMs the time there is, milliseconds
 * @returns the blocks to do, in order; whole blocks may be left out
 * @source own: a multiple-choice knapsack, joined from the last block back. Dominated ways are dropped, and those that cannot beat what a first,
 * quick search has found
 */
export function fitToLimit(blocks: readonly PrescribedBlock[], limitMs: number): readonly PrescribedBlock[] {
  const budgetMs = limitMs - READY_MS;
  const all = blocks.map((block) => choicesOf(block, budgetMs));
  const filter = filterChoices(blocks, all, budgetMs);
  const boundFor = fittingBound(blocks, all, budgetMs);
  const few: Knapsack = { blocks, budgetMs, choices: filter.promising(PROMISING_CHOICES) };
  const good = fillBlocks(few, (at, frontier) => thin(frontier, boundFor(at)));
  const knownWorth = bestWorth(good) + 0.5; // worth is whole: what is better is better by one
  const able: Knapsack = { blocks, budgetMs, choices: filter.canBeat(knownWorth) };
  const exact = fillBlocks(able, (at, frontier) => keep(frontier, boundFor(at), knownWorth));
  const fitted = bestWorth(exact) > knownWorth ? readBack(able, exact) : readBack(few, good);
  const [first] = blocks;
  if (fitted.length > 0 || !first) return fitted;
  const leftMs = Math.floor((budgetMs - first.drawMs - first.letDownMs) / 100) * 100;
  return [{ ...first, sets: 1, reps: 1, holdMs: Math.min(first.holdMs, Math.max(500, leftMs)) }];
}

function choicesOf(block: PrescribedBlock, budgetMs: number): Choice[] {
  const repMs = block.drawMs + block.holdMs + block.letDownMs;
  const choices: Choice[] = [];
  for (let sets = 1; sets <= block.sets; sets++) {
    for (let reps = 1; reps <= block.reps; reps++) {
      const timeMs = sets * (reps * repMs + (reps - 1) * block.restMs) + (sets - 1) * block.setRestMs;
      if (timeMs > budgetMs) break;
      choices.push({ sets, reps, timeMs, worth: sets * reps * block.holdMs * SETS_LIMIT + sets });
    }
  }
  choices.sort((a, b) => a.timeMs - b.timeMs || b.worth - a.worth);
  const best: Choice[] = [];
  for (const choice of choices) if (choice.worth > (best.at(-1)?.worth ?? 0)) best.push(choice);
  return best;
}

/** Joins the blocks from the last back; after each, `select` drops ways. */
function fillBlocks(
  { blocks, choices, budgetMs }: Knapsack,
  select: (at: number, frontier: Frontier) => Frontier,
): Frontier[] {
  const frontiers: Frontier[] = [];
  let suffix: Frontier = { timeMs: [0], worth: [0], choice: [-1], parent: [-1] };
  for (let at = blocks.length - 1; at >= 0; at--) {
    suffix = select(at, joinBlock(choices[at]!, blocks[at]!.setRestMs, suffix, budgetMs));
    frontiers[at] = suffix;
  }
  return frontiers;
}

/** Puts every choice of a block in front of every way to do the rest. Each list is in order, so that lists merge in one pass. */
function joinBlock(choices: readonly Choice[], setRestMs: number, suffix: Frontier, budgetMs: number): Frontier {
  const leftOut = -1;
  let merged = createFrontier();
  for (let way = 0; way < suffix.timeMs.length; way++) {
    push(merged, suffix.timeMs[way]!, suffix.worth[way]!, leftOut, way);
  }
  for (const [index, choice] of choices.entries()) {
    const shifted = createFrontier();
    for (let way = 0; way < suffix.timeMs.length; way++) {
      const timeMs = suffix.timeMs[way]! + choice.timeMs + (way === 0 ? 0 : setRestMs);
      if (timeMs > budgetMs) break;
      push(shifted, timeMs, suffix.worth[way]! + choice.worth, index, way);
    }
    if (shifted.timeMs.length > 0) merged = merge(merged, shifted);
  }
  return merged;
}

/** Keeps the ways that can still be worth more than a known one, and the empty way, which comes first. */
function keep(frontier: Frontier, bound: Bound, knownWorth: number): Frontier {
  const kept = createFrontier();
  for (const [way, timeMs] of frontier.timeMs.entries()) {
    const worth = frontier.worth[way]!;
    if (way === 0 || bound(timeMs, worth) > knownWorth) {
      push(kept, timeMs, worth, frontier.choice[way]!, frontier.parent[way]!);
    }
  }
  return kept;
}

/** Keeps the few ways that promise most. What comes of them fits, and is good, but need not be the best. */
function thin(frontier: Frontier, bound: Bound): Frontier {
  const bounds = frontier.timeMs.map((timeMs, way) => bound(timeMs, frontier.worth[way]!));
  const least = [...bounds].sort((a, b) => b - a)[PROMISING_WAYS] ?? 0;
  return keep(frontier, bound, least);
}

function bestWorth(frontiers: readonly Frontier[]): number {
  return frontiers[0]?.worth.at(-1) ?? 0;
}

function createFrontier(): Frontier {
  return { timeMs: [], worth: [], choice: [], parent: [] };
}

/** Adds a way unless a quicker one is worth as much. */
function push(to: Frontier, timeMs: number, worth: number, choice: number, parent: number): void {
  const last = to.worth.length - 1;
  if (last >= 0 && worth <= to.worth[last]!) return;
  if (last >= 0 && timeMs === to.timeMs[last]) {
    to.worth[last] = worth;
    to.choice[last] = choice;
    to.parent[last] = parent;
    return;
  }
  to.timeMs.push(timeMs);
  to.worth.push(worth);
  to.choice.push(choice);
  to.parent.push(parent);
}

function merge(a: Frontier, b: Frontier): Frontier {
  const merged = createFrontier();
  let [inA, inB] = [0, 0];
  while (inA < a.timeMs.length || inB < b.timeMs.length) {
    const takesA = inB === b.timeMs.length || (inA < a.timeMs.length && a.timeMs[inA]! <= b.timeMs[inB]!);
    const [from, at] = takesA ? [a, inA++] : [b, inB++];
    push(merged, from.timeMs[at]!, from.worth[at]!, from.choice[at]!, from.parent[at]!);
  }
  return merged;
}

function readBack({ blocks, choices }: Knapsack, frontiers: readonly Frontier[]): PrescribedBlock[] {
  const fitted: PrescribedBlock[] = [];
  let way = (frontiers[0]?.timeMs.length ?? 0) - 1;
  for (const [at, block] of blocks.entries()) {
    const frontier = frontiers[at]!;
    const choice = choices[at]![frontier.choice[way]!];
    if (choice) fitted.push({ ...block, sets: choice.sets, reps: choice.reps });
    way = frontier.parent[way]!;
  }
  return fitted;
}
