import type * as z from 'zod';
import type { programSchema } from '../program.ts';

/** A built-in program as a file would say it, without the keys that are the same in all. */
export type BuiltIn = Omit<z.input<typeof programSchema>, 'format' | 'version'> & { id: string; source: string };

/** Before a drill on a bow. Common practice, no source. */
export const warmUpBow = [
  'Shoulder circles, 10 each way',
  'Band pulls, 2 x 10',
  'Two slow half draws, let down each time',
];

/** Before a drill on a band. Common practice, no source. */
export const warmUpBand = ['Shoulder circles, 10 each way', 'Easy band pulls, 10'];

/** After every drill. Common practice, no source. */
export const coolDown = ['Arms overhead, slow breaths, one minute', 'Chest stretch in a doorway, 30 s each side'];

/** Two weeks away are a transition (Caterisano et al. 2019, Strength Cond J 41(3):1); the steps are ours. */
export const layoff = [
  { days: 14, stepsDown: 1 },
  { days: 28, stepsDown: 3 },
];

/** Every fourth week is lighter, by reps (Bell et al. 2023, Sports Med Open 9; every 4 to 6 weeks: from memory). */
export const deload = { everyWeeks: 4, keep: 0.6 };
