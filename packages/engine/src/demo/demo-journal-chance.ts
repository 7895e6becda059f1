/** Numbers that look like chance and are the same for the same seed. */
export interface DemoChance {
  /** @returns 0 up to, not including, 1. */
  next(): number;
  /** @returns a number from `least` to `most`. */
  between(least: number, most: number): number;
  /** @returns true in this many of a hundred cases. */
  percent(share: number): boolean;
  /** @returns one of the choices. */
  one<T>(choices: readonly [T, ...T[]]): T;
}

/**
 * A generator of invented numbers.
 * @param seed any whole number
 * @returns a generator that gives the same numbers for the same seed
 * @source own: a Weyl sequence whose 32 bits are mixed by two multiplications; good enough to invent a diary, for nothing else
 */
export function createDemoChance(seed: number): DemoChance {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x9e37_79b9) >>> 0;
    let bits = Math.imul(state ^ (state >>> 16), 0x21f0_aaad);
    bits = Math.imul(bits ^ (bits >>> 15), 0x735a_2d97);
    return ((bits ^ (bits >>> 15)) >>> 0) / 2 ** 32;
  };
  return {
    next,
    between: (least, most) => least + (most - least) * next(),
    percent: (share) => next() * 100 < share,
    one: (choices) => choices[Math.floor(next() * choices.length)] ?? choices[0],
  };
}
