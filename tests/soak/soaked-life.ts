import type { Dice } from './dice.ts';
import type { KnownRep } from './known-reps.ts';
import type { SoakedBrowser } from './soaked-browser.ts';

/** What the model knows, and what it counts. */
export interface Life {
  readonly browser: SoakedBrowser;
  readonly dice: Dice;
  /** The reps of each drill that is in the journal, the oldest first. */
  readonly known: KnownRep[][];
  /** The notes of the diary, by day. */
  readonly days: Map<string, string>;
  count(what: string): void;
}
