import type { Reason } from './prescription.ts';

/** One cause to do less today: the share of the reps that is kept. */
export interface Ease {
  rule: string;
  keep: number;
  facts: Reason['facts'];
  because: string;
}
