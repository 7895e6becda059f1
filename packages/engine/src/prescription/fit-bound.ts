import type { Choice } from './fit-choice.ts';
import type { PrescribedBlock } from './prescription.ts';

/** The most worth that a way of this time and worth can reach when the earlier blocks are added. */
export type Bound = (timeMs: number, worth: number) => number;

/** One stretch on the upper hull of a block's choices: how much more worth for how much more time. */
interface Stretch {
  timeMs: number;
  worth: number;
}

/** Which choices are worth trying. */
export interface ChoiceFilter {
  /** The few choices of each block that promise most. */
  promising: (count: number) => Choice[][];
  /** The choices that can be part of a way worth more than a known one. */
  canBeat: (knownWorth: number) => Choice[][];
}

/**
 * Prices time, so that a choice's worth less its price says how far it lies from the best mix.
 * @param blocks today's blocks
 * @param choices each block's choices in rising time and worth
 * @param budgetMs the time there is, milliseconds
 * @returns the filter
 * @source own: Lagrangian bound of the multiple-choice knapsack, priced at the steepness where the best mix fills the time
 */
export function filterChoices(
  blocks: readonly PrescribedBlock[],
  choices: readonly (readonly Choice[])[],
  budgetMs: number,
): ChoiceFilter {
  const setRests = blocks.map(({ setRestMs }) => setRestMs);
  const price = priceOfTime(choices, setRests, budgetMs);
  const netOf = ({ timeMs, worth }: Choice, at: number) => worth - price * (timeMs + setRests[at]!);
  const best = choices.map((own, at) => Math.max(0, ...own.map((choice) => netOf(choice, at))));
  // Nothing follows the last block that is done, so one set rest is not paid.
  const most = price * (budgetMs + Math.max(...setRests)) + best.reduce((sum, net) => sum + net, 0);
  const lossOf = (choice: Choice, at: number) => best[at]! - netOf(choice, at);
  return {
    promising: (count) =>
      choices.map((own, at) => {
        const least = own.map((choice) => lossOf(choice, at)).sort((a, b) => a - b)[count] ?? Number.POSITIVE_INFINITY;
        return own.filter((choice) => lossOf(choice, at) < least);
      }),
    canBeat: (knownWorth) => choices.map((own, at) => own.filter((choice) => most - lossOf(choice, at) > knownWorth)),
  };
}

function priceOfTime(choices: readonly (readonly Choice[])[], setRests: readonly number[], budgetMs: number): number {
  const stretches = choices.flatMap((own, at) => hullOf(own, setRests[at]!)).sort(bySteepness);
  let leftMs = budgetMs;
  for (const { timeMs, worth } of stretches) {
    leftMs -= timeMs;
    if (leftMs < 0) return worth / timeMs;
  }
  return 0;
}

/**
 * What can still be reached when minutes are short. Choices may be mixed in the bound, which never gives less than whole choices can.
 * @param blocks today's blocks
 * @param choices each block's choices in rising time and worth
 * @param budgetMs the time there is, milliseconds
 * @returns for a block, the bound of ways to do that block and those after it
 * @source own: the linear relaxation of the multiple-choice knapsack; its hull as in Sinha & Zoltners 1979, Oper Res 27:503 (from memory)
 */
export function fittingBound(
  blocks: readonly PrescribedBlock[],
  choices: readonly (readonly Choice[])[],
  budgetMs: number,
): (block: number) => Bound {
  const hulls = choices.map((own, at) => hullOf(own, blocks[at]!.setRestMs));
  return (block) => {
    const stretches = hulls.slice(0, block).flat();
    stretches.sort(bySteepness);
    // Times and worths summed along the stretches, so that a bound is one search.
    const timesMs = [0];
    const worths = [0];
    for (const { timeMs, worth } of stretches) {
      timesMs.push(timesMs.at(-1)! + timeMs);
      worths.push(worths.at(-1)! + worth);
    }
    return (timeMs, worth) => {
      const leftMs = budgetMs - timeMs;
      let [low, high] = [0, timesMs.length - 1];
      while (low < high) {
        const middle = (low + high + 1) >> 1;
        if (timesMs[middle]! <= leftMs) low = middle;
        else high = middle - 1;
      }
      const next = stretches[low];
      const part = next ? ((leftMs - timesMs[low]!) / next.timeMs) * next.worth : 0;
      return worth + worths[low]! + part;
    };
  };
}

function hullOf(choices: readonly Choice[], setRestMs: number): Stretch[] {
  const points: Stretch[] = [{ timeMs: 0, worth: 0 }];
  for (const choice of choices) {
    const point = { timeMs: choice.timeMs + setRestMs, worth: choice.worth };
    while (points.length > 1 && !turnsDown(points.at(-2)!, points.at(-1)!, point)) points.pop();
    points.push(point);
  }
  return points.slice(1).map((point, at) => ({
    timeMs: point.timeMs - points[at]!.timeMs,
    worth: point.worth - points[at]!.worth,
  }));
}

function bySteepness(a: Stretch, b: Stretch): number {
  return b.worth * a.timeMs - a.worth * b.timeMs;
}

function turnsDown(a: Stretch, b: Stretch, c: Stretch): boolean {
  return (b.worth - a.worth) * (c.timeMs - b.timeMs) > (c.worth - b.worth) * (b.timeMs - a.timeMs);
}
