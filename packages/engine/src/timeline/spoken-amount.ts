/** How much is said in a drill, from least to most. */
export const spokenAmounts = ['least', 'usual', 'most'] as const;

/**
 * How much is said. `least`: each step, the last seconds of a hold, and the calls; `usual`: also which rep comes, half of a hold, and what is
 * left of a long rest; `most`: also what is left of a long hold, every ten seconds.
 */
export type SpokenAmount = (typeof spokenAmounts)[number];
