import type { Program } from '../program/program.ts';
import type { Caution } from './cautions.ts';
import type { Reason } from './reason.ts';

/** Today's numbers for one block. Times are whole milliseconds, weights pounds-force. */
export interface PrescribedBlock {
  /** The block's place in the program file, 0-based. */
  block: number;
  title: string;
  drill: Program['blocks'][number]['drill'];
  sets: number;
  reps: number;
  drawMs: number;
  holdMs: number;
  letDownMs: number;
  restMs: number;
  /** After the last rep of a set, or of the block when another follows. */
  setRestMs: number;
  /** A hold that a camera sees counts from its anchor. Absent: from the call, unless the archer chose otherwise. */
  countFrom?: 'anchor';
  letDownTo: 'rest' | 'set-up';
  hand: 'usual' | 'opposite' | 'both';
  addedWeightLbf: number;
  calls?: readonly string[] | 'shot-process';
}

export type { AskedNumber } from './asked-number.ts';

/** Today's numbers for a program, and why. */
export interface Prescription {
  programTitle: string;
  /** The archer's local day, ISO 8601. */
  date: string;
  tool?: Program['tool'];
  /** A test: done as it is written. */
  kind?: 'test';
  /**
   * Today is better without a drill, and why. With pain today, and where nothing of the program is offered, `blocks` is empty; else it says the
   * most that somebody who drills all the same should do, less than a full day.
   */
  rest?: Reason;
  warmUp?: readonly string[];
  coolDown?: readonly string[];
  blocks: PrescribedBlock[];
  reasons: Reason[];
  /** Short sentences, the gravest first. */
  cautions: string[];
  /** The rules behind the cautions, in the same order; another language is made from them. */
  cautionFacts?: readonly Caution[];
  /** Length of the timeline that `layOut` makes of it. */
  durationMs: number;
}
