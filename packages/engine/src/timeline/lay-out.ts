import type { PrescribedBlock, Prescription } from '../prescription/prescription.ts';
import { checkBlocks, READY_MS } from '../prescription/timeline-duration.ts';
import { leverRanges, mostBlocks } from '../program/program.ts';
import { type ComingRep, getReadyWords, nextBlockWords, nextSetWords, shortRestWords } from './cue-words.ts';
import { type CallOptions, sayableCalls } from './drill-calls.ts';
import { holdCues } from './hold-cues.ts';
import type { SpokenAmount } from './spoken-amount.ts';
import { restMarks } from './time-marks.ts';
import type { Cue, Step, StepKind, Timeline } from './timeline.ts';

/** More reps than any program file can ask for are not laid out: they would take the machine's memory. */
const MOST_REPS = mostBlocks * leverRanges.sets.most * leverRanges.reps.most;
/** How long before a draw the archer is called, milliseconds. */
export const REST_OVER_MS = 5_000;
/** Shortest rest whose end is called, milliseconds. */
export const REST_OVER_FROM_MS = 10_000;
/** Shortest rest without such a call whose beginning says which rep comes: the words take about that long, milliseconds. */
const SHORT_REST_WORDS_FROM_MS = 4_000;

/** What decides which words a timeline's cues bring. */
export interface LayOutOptions extends CallOptions {
  /** How much is said; `usual` where left out. The steps are the same in each. */
  spoken?: SpokenAmount;
}

/**
 * Lays a prescription out in time: first a ready step, then draw, hold, let-down and rest for every rep, nothing after the last let-down.
 * Rests of no length are left out. With `both` hands the reps of a set alternate, usual hand first; a change of hand always lets down to rest.
 * @param prescription today's numbers; times in whole milliseconds, parts of a millisecond are rounded
 * @param options `shotProcess`: the archer's own lines, for blocks whose calls are 'shot-process'; `allowedCalls`: the lines that the archer
 * has seen in full and allowed to be said at full draw. Of calls and shot process only our own phrases and exactly these lines become cues, and
 * of them none that `checkCall` finds at fault. `spoken`: how much is said beside them
 * @returns steps without gap or overlap, and cues in order of time; whole milliseconds
 * @throws RangeError when a block's times or counts are no plain numbers in range
 */
export function layOut(prescription: Prescription, options: LayOutOptions = {}): Timeline {
  const { spoken = 'usual' } = options;
  const { blocks } = prescription;
  checkBlocks(blocks);
  const repCount = blocks.reduce((sum, block) => sum + block.sets * block.reps, 0);
  if (repCount > MOST_REPS) throw new RangeError(`blocks hold ${repCount} reps; expected at most ${MOST_REPS}`);
  const calls = new Map(blocks.map((block) => [block, sayableCalls(block, options)]));
  const reps = blocks.flatMap((block, place) => repsOf(block, place));
  const steps: Step[] = [];
  const cues: Cue[] = [];
  let atMs = 0;
  const add = (kind: StepKind, durationMs: number, rep: PlannedRep, to?: 'set-up') => {
    const { block, set, hand } = rep;
    const step: Step = { kind, startMs: atMs, durationMs, block: block.block, set, rep: rep.rep, hand };
    if (to !== undefined) step.to = to;
    if (block.countFrom !== undefined && (kind === 'draw' || kind === 'hold')) step.countFrom = block.countFrom;
    steps.push(step);
    atMs += durationMs;
  };

  for (const [index, rep] of reps.entries()) {
    const { block } = rep;
    if (index === 0) {
      cues.push({ atMs, kind: 'ready', words: getReadyWords(handToSay(rep), comingTo(rep)) });
      add('ready', READY_MS, rep);
    }
    cues.push({ atMs, kind: 'draw', words: 'Draw' });
    add('draw', Math.round(block.drawMs), rep);
    cues.push(...holdCues(atMs, Math.round(block.holdMs), calls.get(block) ?? [], spoken));
    add('hold', Math.round(block.holdMs), rep);
    const next = reps[index + 1];
    const to = letsDownToSetUp(rep, next) ? 'set-up' : undefined;
    cues.push({ atMs, kind: 'letDown', words: to ? 'Let down to set-up' : 'Let down' });
    add('letDown', Math.round(block.letDownMs), rep, to);
    if (next !== undefined) addRest(rep, next);
  }
  if (reps.length > 0) cues.push({ atMs, kind: 'done', words: 'Done' });
  const addedWeightsLbf = Object.fromEntries(blocks.map(({ block, addedWeightLbf }) => [block, addedWeightLbf]));
  const { kind } = prescription;
  const weights = blocks.length === 0 ? {} : { addedWeightsLbf };
  return { steps, cues, durationMs: atMs, ...weights, ...(kind === undefined ? {} : { kind }) };

  function addRest(rep: PlannedRep, next: PlannedRep) {
    const isSetOver = next.place !== rep.place || next.set !== rep.set;
    const durationMs = Math.round(isSetOver ? rep.block.setRestMs : rep.block.restMs);
    if (durationMs === 0) return;
    const kind = isSetOver ? 'setRest' : 'rest';
    const isCalled = durationMs >= REST_OVER_FROM_MS;
    const isShort = kind === 'rest' && !isCalled && durationMs >= SHORT_REST_WORDS_FROM_MS;
    cues.push({ atMs, kind, words: isShort ? shortRestWords(comingTo(next)) : restWords(rep, next) });
    if (spoken !== 'least') cues.push(...restMarks(atMs, durationMs));
    add(kind, durationMs, rep);
    if (!isCalled) return;
    cues.push({
      atMs: atMs - REST_OVER_MS,
      kind: 'restOver',
      words: getReadyWords(handToSay(next, rep), comingTo(next)),
    });
  }

  /** Which rep comes, where that is said. */
  function comingTo(rep: PlannedRep): ComingRep | undefined {
    return spoken === 'least' ? undefined : { rep: rep.rep, reps: rep.block.reps, isLast: rep === reps.at(-1) };
  }
}

interface PlannedRep {
  block: PrescribedBlock;
  /** The block's place in the prescription; its `block` is its place in the program. */
  place: number;
  set: number;
  rep: number;
  hand: 'usual' | 'opposite';
}

function repsOf(block: PrescribedBlock, place: number): PlannedRep[] {
  const reps: PlannedRep[] = [];
  for (let set = 0; set < block.sets; set++) {
    for (let rep = 0; rep < block.reps; rep++) {
      const hand = block.hand === 'both' ? (rep % 2 === 0 ? 'usual' : 'opposite') : block.hand;
      reps.push({ block, place, set, rep, hand });
    }
  }
  return reps;
}

function letsDownToSetUp(rep: PlannedRep, next: PlannedRep | undefined): boolean {
  if (rep.block.letDownTo !== 'set-up' || next === undefined) return false;
  // Nobody can change hands at set-up, so a change of hand lets down to rest.
  return next.place === rep.place && next.set === rep.set && next.hand === rep.hand;
}

function restWords(rep: PlannedRep, next: PlannedRep): string {
  if (next.place !== rep.place) return nextBlockWords(next.block.title);
  return next.set === rep.set ? 'Rest' : nextSetWords(next.set, next.block.sets);
}

/** The hand is said where it could be mistaken: at a change, and all through a block of both hands. */
function handToSay(rep: PlannedRep, before?: PlannedRep): 'usual' | 'opposite' | undefined {
  const isPlain = rep.block.hand !== 'both' && rep.hand === (before?.hand ?? 'usual');
  return isPlain ? undefined : rep.hand;
}
