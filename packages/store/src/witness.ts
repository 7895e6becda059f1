import { compareInstants, type Journal, withoutDevice } from '@larkhold/engine';
import { z } from 'zod';

/** What is known of the journal outside of the database: enough to see that a database was lost. */
export const witnessSchema = z.strictObject({
  /** Drills that the database held. */
  drillCount: z.int().min(0),
  /** The day of the last one, ISO 8601. */
  lastDay: z.iso.date().optional(),
  /** When it was written down, and no earlier than any drill began, ISO 8601. */
  at: z.string().max(60),
  /** What the archer calls this device in the box, where it was in one. */
  device: z.string().max(80).optional(),
});
/** What is known of the journal outside of the database. */
export type Witness = z.output<typeof witnessSchema>;

/** Where a witness is kept. */
export interface WitnessPlace {
  read(): Witness | undefined;
  write(witness: Witness): void;
}

/** A journal that holds less than it did. */
export interface LostJournal {
  /** Drills that there were, and that there are. */
  drillCount: number;
  foundCount: number;
  lastDay?: string;
  device?: string;
}

const KEY = 'larkhold-witness';

/**
 * A witness in the browser's small storage. It lies in other files than the database, so that damage to one is seen by the other.
 * @param storage gives the storage; may throw where the browser has none
 * @returns the place; where there is no storage it keeps nothing, and nothing is missed
 */
export function storedWitness(storage: () => Storage = () => globalThis.localStorage): WitnessPlace {
  return {
    read() {
      try {
        return witnessSchema.safeParse(JSON.parse(storage().getItem(KEY) ?? 'null')).data;
      } catch {
        return undefined; // no storage, or not JSON: there is no witness, which is no reason to alarm anybody
      }
    },
    write(witness) {
      try {
        storage().setItem(KEY, JSON.stringify(witness));
      } catch {
        // No storage or no room in it: the journal itself does not depend on it.
      }
    },
  };
}

/**
 * What a witness says of a journal as it is on the disk.
 * @param journal the journal, marks of removed drills included
 * @param at now, ISO 8601
 * @param device what the archer calls this device in the box
 * @returns the witness
 */
export function witnessOf({ drills }: Pick<Journal, 'drills'>, at: string, device?: string): Witness {
  const began = drills.reduce((last, { startedAt }) => (compareInstants(startedAt, last) > 0 ? startedAt : last), at);
  let lastDay = '';
  for (const { date } of drills) if (date > lastDay) lastDay = date;
  return {
    ...{ drillCount: drills.length, at: began },
    ...(lastDay === '' ? {} : { lastDay }),
    ...(device === undefined ? {} : { device: device.slice(0, 80) }),
  };
}

/**
 * Compares a journal with what there was.
 * @param witness as it was last written; nothing is missed without one
 * @param journal as it is read now
 * @returns what is missing; undefined where nothing is, or where what is missing was removed by the archer since. Drills done since make up for nothing
 */
export function lostJournal(
  witness: Witness | undefined,
  { drills, removed = [] }: Pick<Journal, 'drills' | 'removed'>,
): LostJournal | undefined {
  if (witness === undefined) return undefined;
  const isSince = (at: string) => compareInstants(withoutDevice(at), witness.at) > 0;
  const removedSince = removed.filter(({ of, at }) => of === 'drills' && isSince(at)).length;
  const foundCount = drills.filter(({ startedAt }) => compareInstants(startedAt, witness.at) <= 0).length;
  if (foundCount + removedSince >= witness.drillCount) return undefined;
  const { drillCount, lastDay, device } = witness;
  return { drillCount, foundCount, lastDay, device };
}
