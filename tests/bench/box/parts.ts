import {
  type BoxAdapter,
  boxFileName,
  createBoxLink,
  createHttpBox,
  createPairing,
  deriveBoxKeys,
  meetBox,
  sealState,
} from '@larkhold/box';
import { formatJournal, type Journal } from '@larkhold/engine';
import { createLocalStore, createMemoryAdapter } from '@larkhold/store';
import { createYears } from '../journal/years.ts';

/** One device over a box on a real host, with its store in memory. */
export async function createDevice(address: string, title: string, pairing = createPairing()) {
  const keys = await deriveBoxKeys(pairing);
  const now = (): string => new Date().toISOString();
  const store = createLocalStore({ adapter: createMemoryAdapter(), now });
  let link = createBoxLink(pairing, title);
  let isChanged = true;
  store.subscribe(() => {
    isChanged = true;
  });
  const box = createHttpBox({ address: `${address}/${keys.path}/` });
  return {
    pairing,
    store,
    async meet() {
      const round = await meetBox({
        ...{ box, keys, link, now },
        readJournal: () => {
          isChanged = false;
          return store.journal();
        },
        isUnchanged: () => !isChanged,
        mergeIn: (journal) => store.mergeInto(journal),
      });
      if (round.troubles.length > 0) throw new Error(JSON.stringify(round.troubles));
      link = round.link;
      return round;
    },
  };
}

/** What a device with some years of journal puts into a box: its journal's text and the sealed file, bytes. */
export async function sizesOf(journal: Journal): Promise<{ text: number; sealed: number }> {
  const keys = await deriveBoxKeys(createPairing());
  const sealed = await sealState({ device: 'phone', title: 'Phone', turn: 1, madeAt: '', journal }, keys);
  return { text: formatJournal(journal).length, sealed: sealed.length };
}

/** Years of a drill of 30 reps a day, with a diary. */
export function yearsOf(years: number): Journal {
  return createYears({ lastDay: new Date().toISOString().slice(0, 10), dayCount: years * 365, device: 'phone' });
}

/** A box whose requests are timed. */
function timed(address: string, tookMs: number[]): BoxAdapter {
  return createHttpBox({
    address,
    fetch: async (input, init) => {
      const startMs = performance.now();
      const response = await fetch(input, init);
      // The body is read by the adapter; nginx has sent all of it by then or sends it from memory.
      tookMs.push(performance.now() - startMs);
      return response;
    },
  });
}

/**
 * One morning of one archer with three devices: the phone drills and puts its file, laptop and tablet are opened, read it and put theirs, and each
 * device looks once more in the day. The files are sealed before: sealing is the devices' work and not the host's.
 */
export async function liveMorning(address: string, path: string, bytes: number, tookMs: number[]): Promise<void> {
  const box = timed(`${address}/${path}/`, tookMs);
  const put = async (device: string): Promise<string> => {
    const content = crypto.getRandomValues(new Uint8Array(Math.min(bytes, 65_536)));
    const name = await boxFileName(device, 1, content);
    const answer = await box.put(name, content);
    if (!answer.ok) throw new Error(answer.trouble.kind);
    return name;
  };
  await box.list();
  const phone = await put('phone');
  for (const device of ['laptop', 'tablet']) {
    await box.list();
    const read = await box.get(phone);
    if (!read.ok) throw new Error(read.trouble.kind);
    await put(device);
    await box.remove(`${device}-0-${'a'.repeat(26)}.age`);
  }
  for (let look = 0; look < 3; look += 1) await box.list();
}
