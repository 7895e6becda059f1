/**
 * The middle one of some numbers; of an even count the mean of the two middle ones.
 * @param values finite numbers, any unit, any order
 * @returns the median, same unit
 * @throws RangeError where there is no value
 */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half];
  if (upper === undefined) throw new RangeError('values is empty; expected at least one number');
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? upper) + upper) / 2;
}
