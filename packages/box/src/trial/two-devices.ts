import { canonicalText, createJournal, mergeJournals } from '@larkhold/engine';
import { createMemoryBox } from '../memory-box.ts';
import { createPairing, deriveBoxKeys } from '../pairing.ts';
import { TrialDevice } from './trial-device.ts';

/** The pairing of the devices in a test, and the keys that follow from it. */
export const pairing = createPairing();
export const keys = await deriveBoxKeys(pairing);

/** A phone and a laptop of one archer, new, and their empty box; `file` is the one that the phone put last. */
export function twoDevices() {
  const box = createMemoryBox();
  const phone = new TrialDevice('Phone', pairing, keys);
  const laptop = new TrialDevice('Laptop', pairing, keys);
  return { box, phone, laptop, file: () => phone.link.own.file ?? 'none' };
}

/** A device's journal as a text that is the same for the same content. */
export async function textOf(device: TrialDevice): Promise<string> {
  return canonicalText(mergeJournals(await device.journal(), createJournal()));
}
