/**
 * Refuses what is no plain number in range.
 * @param name of the parameter, for the message
 * @param value what was given
 * @param least smallest allowed
 * @param most largest allowed
 * @returns the value
 * @throws RangeError naming parameter, value and range
 */
export function checkNumber(name: string, value: number, least: number, most: number): number {
  if (!(value >= least && value <= most))
    throw new RangeError(`${name} is ${value}; expected a number from ${least} to ${most}`);
  return value;
}
