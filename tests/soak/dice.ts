/** Random choices that can be repeated. */
export interface Dice {
  /** @returns 0 up to 1 */
  next(): number;
  chance(ratio: number): boolean;
  /** @returns a whole number, both ends included */
  between(least: number, most: number): number;
  pick<T>(from: readonly [T, ...T[]]): T;
  /** @returns the same things in another order */
  shuffle<T>(things: readonly T[]): T[];
}

/**
 * The same throws for the same seed.
 * @param seed any whole number
 * @source own: a multiply-with-shift mix of a counter; good enough for a script, not for anything secret
 */
export function createDice(seed: number): Dice {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const between = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return {
    next,
    between,
    chance: (ratio) => next() < ratio,
    pick: (from) => from[Math.floor(next() * from.length)] ?? from[0],
    shuffle(things) {
      const left = [...things];
      return things.flatMap(() => left.splice(between(0, left.length - 1), 1));
    },
  };
}
