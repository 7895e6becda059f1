import type { Prescription } from './prescription.ts';

/**
 * Time at full draw that a prescription asks.
 * @param prescription today's numbers
 * @returns milliseconds
 */
export function timeUnderTensionMs({ blocks }: Pick<Prescription, 'blocks'>): number {
  return blocks.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0);
}
