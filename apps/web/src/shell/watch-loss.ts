import type { Journal } from '@larkhold/engine';
import { type LostJournal, lostJournal, type Store, witnessOf } from '@larkhold/store';
import type { Surroundings } from './surroundings.ts';

/** Compares the journal with what was known of it outside of its database. */
export interface LossWatch {
  /** What is missing; undefined where nothing is. */
  readonly lost: LostJournal | undefined;
  /** Compares once, and writes down every change of the journal from then on; never what is left of a lost one. */
  see(stored: Journal): void;
  /** The archer knows of the loss: what is left is the journal from now on. */
  accept(): void;
}

/**
 * Watches for a lost journal.
 * @param around the witness, the store, the clock and the box; without a witness nothing is missed
 * @returns the watch
 */
export function watchLoss({ witness, store, instant, box }: Surroundings): LossWatch {
  let lost: LostJournal | undefined;
  let isCompared = false;
  let last: Journal | undefined;
  const write = (stored: Journal): void => witness?.write(witnessOf(stored, instant(), box?.link?.title));
  // A disk that can't be opened now may be whole: only damage is a loss.
  const isNoWitness = ({ where, trouble }: Store): boolean => where === 'memory' && trouble?.kind !== 'damaged';
  return {
    get lost() {
      return lost;
    },
    see(stored) {
      const isSame = last === stored;
      last = stored;
      if (!witness || isNoWitness(store)) return;
      if (!isCompared || lost) lost = lostJournal(witness.read(), stored);
      isCompared = true;
      if (!lost && !store.trouble && !isSame) write(stored);
    },
    accept() {
      lost = undefined;
      if (last) write(last);
    },
  };
}
