import type { Program } from '../program/program.ts';

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
  letDownTo: 'rest' | 'set-up';
  hand: 'usual' | 'opposite' | 'both';
  addedWeightLbf: number;
  calls?: readonly string[] | 'shot-process';
}

/** The numbers of a prescription that can be asked about. */
export type AskedNumber =
  | 'sets'
  | 'reps'
  | 'draw'
  | 'hold'
  | 'letDown'
  | 'rest'
  | 'setRest'
  | 'addedWeight'
  | 'duration';

/** One rule that acted on a prescription. */
export interface Reason {
  rule: string;
  /** The block it acted on, 0-based; absent when it acted on all. */
  block?: number;
  facts: Record<string, number | string>;
  /** What it changed: one plain sentence. */
  change: string;
  /** The numbers it decided or changed. */
  acts?: readonly AskedNumber[];
}

/** Today's numbers for a program, and why. */
export interface Prescription {
  programTitle: string;
  /** The archer's local day, ISO 8601. */
  date: string;
  tool?: Program['tool'];
  warmUp?: readonly string[];
  coolDown?: readonly string[];
  blocks: PrescribedBlock[];
  reasons: Reason[];
  cautions: string[];
  /** Length of the timeline that `layOut` makes of it. */
  durationMs: number;
}
