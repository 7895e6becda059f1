import type { PrescribedBlock, Prescription } from '../prescription/prescription.ts';
import { type CallFault, checkCall } from './check-call.ts';
import { ownCalls } from './own-calls.ts';

/** What decides which lines are said at full draw. */
export interface CallOptions {
  /** The archer's own lines, for blocks whose calls are 'shot-process'. */
  shotProcess?: readonly string[];
  /** Lines that the archer has seen in full and allowed; the exact text counts. */
  allowedCalls?: readonly string[];
}

/** Every line that a drill would say at full draw, once each, in its order, by whether it is said. */
export interface DrillCalls {
  /** Ours, or allowed: these become cues. */
  said: readonly string[];
  /** Not allowed, or not asked about yet: shown before the drill, never said. */
  unsaid: readonly string[];
  /** Never said, allowed or not. */
  refused: readonly { words: string; fault: CallFault }[];
}

/**
 * Sorts the lines that a drill would say at full draw, for the archer to see them before the drill.
 * @param prescription today's numbers
 * @param options the archer's own lines, and what was allowed
 * @returns the lines by what becomes of them
 * @example
 * drillCalls(prescription, { allowedCalls: ['Reach'] }).said; // ['Reach']
 */
export function drillCalls(prescription: Prescription, options: CallOptions = {}): DrillCalls {
  const lines = [...new Set(prescription.blocks.flatMap((block) => linesOf(block, options)))];
  const allowed = allowedOf(options);
  const refused = lines.flatMap((words) => {
    const fault = checkCall(words);
    return fault === undefined ? [] : [{ words, fault }];
  });
  const sound = lines.filter((words) => refused.every((one) => one.words !== words));
  return { said: sound.filter(allowed), unsaid: sound.filter((words) => !allowed(words)), refused };
}

/**
 * The lines that are said in every hold of a block.
 * @param block of a prescription
 * @param options the archer's own lines, and what was allowed
 * @returns lines in their order, with repeats
 */
export function sayableCalls(block: PrescribedBlock, options: CallOptions): string[] {
  const allowed = allowedOf(options);
  return linesOf(block, options).filter((words) => allowed(words) && checkCall(words) === undefined);
}

function linesOf({ calls }: PrescribedBlock, { shotProcess = [] }: CallOptions): readonly string[] {
  return calls === 'shot-process' ? shotProcess : (calls ?? []);
}

function allowedOf({ allowedCalls = [] }: CallOptions): (words: string) => boolean {
  const allowed = new Set(allowedCalls);
  return (words) => ownCalls.has(words) || allowed.has(words);
}
