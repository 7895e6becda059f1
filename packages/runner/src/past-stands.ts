import type { Stand } from './action-of-key.ts';

/** How many changes of state or step a late press can look back on. */
const KEPT = 8;

/** Where a drill was a moment ago: what a press meant is decided by that, not by where the drill is when a busy page gets to handle it. */
export class PastStands {
  #stands: readonly { fromMs: number; stand: Stand }[] = [];

  /**
   * @param fromMs since when, milliseconds on the environment's clock
   * @param stand state and step
   */
  add(fromMs: number, stand: Stand): void {
    this.#stands = [...this.#stands.slice(1 - KEPT), { fromMs, stand }];
  }

  /**
   * @param atMs a moment, milliseconds on the environment's clock
   * @returns state and step then; the oldest that is kept for earlier moments, undefined before the first
   */
  at(atMs: number): Stand | undefined {
    return (this.#stands.findLast(({ fromMs }) => fromMs <= atMs) ?? this.#stands[0])?.stand;
  }
}
