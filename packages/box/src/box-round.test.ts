import { canonicalText, createJournal, mergeJournals } from '@larkhold/engine';
import { Encrypter } from 'age-encryption';
import { deflateSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { createMemoryBox } from './memory-box.ts';
import { type BoxKeys, createPairing, deriveBoxKeys, type Pairing } from './pairing.ts';
import { TrialDevice, trialDrill } from './trial/trial-device.ts';

let pairing: Pairing;
let keys: BoxKeys;
beforeAll(async () => {
  pairing = createPairing();
  keys = await deriveBoxKeys(pairing);
});

const textOf = async (device: TrialDevice): Promise<string> =>
  canonicalText(mergeJournals(await device.journal(), createJournal()));
function devices() {
  const box = createMemoryBox();
  const phone = new TrialDevice('Phone', pairing, keys);
  const laptop = new TrialDevice('Laptop', pairing, keys);
  return { box, phone, laptop, file: () => `${phone.link.device}.age` };
}

describe('a round', () => {
  it('brings a drill from the phone to the laptop, and the laptop’s day to the phone; then nothing is left to do', async () => {
    const { box, phone, laptop } = devices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await laptop.store.putDay({ date: '2026-11-25', note: 'Windy', editedAt: await laptop.instant() });
    expect(await phone.meet(box)).toMatchObject({ isPushed: true, merged: [], troubles: [] });
    expect(await laptop.meet(box)).toMatchObject({ isPushed: true, merged: ['Phone'], troubles: [] });
    expect(await phone.meet(box)).toMatchObject({ merged: ['Laptop'], troubles: [] });
    expect(await textOf(phone)).toBe(await textOf(laptop));
    await laptop.meet(box);
    for (const device of [phone, laptop]) {
      expect(await device.meet(box)).toMatchObject({ isPushed: false, merged: [], troubles: [] });
    }
  });

  it('restores a new device: programs, season, kit and journal are there', async () => {
    const { box, phone } = devices();
    await phone.store.putKit({ ...(await phone.store.kit()), bow: 'barebow', drawWeightLbf: 34, soundLevel: 0.1 });
    await phone.store.putSeason({ format: 'larkhold/season', version: 1 });
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await phone.meet(box);
    const fresh = new TrialDevice('New phone', pairing, keys);
    expect((await fresh.meet(box)).merged).toEqual(['Phone']);
    expect(await fresh.store.kit()).toMatchObject({ bow: 'barebow', drawWeightLbf: 34, soundLevel: 0.7 });
    expect(await fresh.store.season()).toMatchObject({ format: 'larkhold/season' });
    expect((await fresh.journal()).drills).toHaveLength(1);
  });

  it('leaves nothing in the box that a host could read', async () => {
    const { box, phone } = devices();
    await phone.store.putDay({ date: '2026-11-25', note: 'the hall at the mill', editedAt: await phone.instant() });
    await phone.meet(box);
    for (const [name, { content }] of box.files) {
      const text = Buffer.from(content).toString('latin1');
      for (const word of ['mill', 'note', '2026-11-25', 'Phone', 'larkhold', pairing.secret]) {
        expect(text).not.toContain(word);
        expect(name).not.toContain(word.toLowerCase());
      }
      expect(text).toMatch(/^age-encryption\.org\/v1/);
    }
  });
});

describe('a bad file in the box', () => {
  const spoil = async (change: (content: Uint8Array) => Uint8Array | Promise<Uint8Array>) => {
    const { box, phone, laptop, file } = devices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await phone.meet(box);
    const good = box.files.get(file())!;
    box.files.set(file(), { content: await change(good.content), mark: 'other' });
    await laptop.store.putDay({ date: '2026-11-25', note: 'Windy', editedAt: await laptop.instant() });
    const round = await laptop.meet(box);
    expect(round.isPushed).toBe(true); // the app goes on
    expect((await laptop.journal()).days).toHaveLength(1);
    // The device that wrote it mends it, and all is there.
    const mended = await phone.meet(box);
    await laptop.meet(box);
    expect(await textOf(laptop)).toBe(await textOf(phone));
    return { kinds: round.troubles.map(({ kind }) => kind), mended: mended.isPushed };
  };
  const seal = async (text: string, recipient = keys.recipient): Promise<Uint8Array> => {
    const packed = deflateSync(new TextEncoder().encode(text));
    const framed = new Uint8Array(4 + packed.length);
    new DataView(framed.buffer).setUint32(0, packed.length);
    framed.set(packed, 4);
    const encrypter = new Encrypter();
    encrypter.addRecipient(recipient);
    return encrypter.encrypt(framed);
  };

  it.each([0, 1, 100, 200, 300])(
    'that is cut off after %i bytes is left alone, told of, and mended',
    async (length) => {
      const { kinds, mended } = await spoil((content) => content.slice(0, length));
      expect(kinds).toEqual(['damaged']);
      expect(mended).toBe(true);
    },
  );

  it('in which one bit is turned is left alone', async () => {
    const { kinds } = await spoil(
      (content) => content.with(content.length - 5, content[content.length - 5]! ^ 1) as Uint8Array,
    );
    expect(kinds).toEqual(['damaged']);
  });

  it('that is sealed with another secret, or is of another box, is foreign', async () => {
    const other = await deriveBoxKeys(createPairing());
    expect((await spoil(() => seal('{}', other.recipient))).kinds).toEqual(['foreign']);
    const state = { format: 'larkhold/box-file', version: 1, box: other.path, device: 'x', title: '', turn: 1 };
    expect((await spoil(() => seal(JSON.stringify({ ...state, madeAt: '', journal: '{}' })))).kinds).toEqual([
      'foreign',
    ]);
  });

  it('that holds no journal, a newer one, or gigabytes of nothing is told apart', async () => {
    expect((await spoil(() => seal('[]'))).kinds).toEqual(['damaged']);
    expect((await spoil(() => seal('{"format":"larkhold/box-file","version":2}'))).kinds).toEqual(['newer']);
    expect((await spoil(() => seal(' '.repeat(64 * 1024 * 1024 + 1)))).kinds).toEqual(['enormous']);
  });

  it('that was swapped with another device’s is told of', async () => {
    const { box, phone, laptop, file } = devices();
    const tablet = new TrialDevice('Tablet', pairing, keys);
    await phone.meet(box);
    await tablet.meet(box);
    const [a, b] = [box.files.get(file())!, box.files.get(`${tablet.link.device}.age`)!];
    box.files.set(file(), b).set(`${tablet.link.device}.age`, a);
    expect((await laptop.meet(box)).troubles.map(({ kind }) => kind)).toEqual(['swapped', 'swapped']);
  });

  it('that is played back brings nothing back from the dead', async () => {
    const { box, phone, laptop, file } = devices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await phone.meet(box);
    const old = { ...box.files.get(file())!, mark: 'played back' };
    await laptop.meet(box);
    await phone.store.removeDrills(['d1']);
    await phone.meet(box);
    await laptop.meet(box);
    box.files.set(file(), old);
    expect((await laptop.meet(box)).troubles).toMatchObject([{ kind: 'replayed' }]);
    expect((await phone.meet(box)).troubles).toMatchObject([{ kind: 'replayed' }]);
    for (const device of [phone, laptop]) expect((await device.journal()).drills).toEqual([]);
  });
});

describe('two devices of one name', () => {
  it('find out, and go on under two names with nothing lost', async () => {
    const { box, phone } = devices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await phone.meet(box);
    const copy = new TrialDevice('Phone', pairing, keys);
    copy.link = structuredClone(phone.link);
    await copy.store.mergeInto(await phone.journal());
    await copy.store.putDrill({ ...trialDrill('d2', 3), editedAt: await copy.instant() });
    await phone.store.putDrill({ ...trialDrill('d3', 4), editedAt: await phone.instant() });
    await copy.meet(box);
    expect((await phone.meet(box)).troubles).toMatchObject([{ kind: 'changed' }]);
    await copy.meet(box);
    await phone.meet(box);
    expect(phone.link.device).not.toBe(copy.link.device);
    expect((await phone.journal()).drills.map(({ id }) => id).sort()).toEqual(['d1', 'd2', 'd3']);
    expect(mergeJournals(await copy.journal(), await phone.journal())).toEqual(
      mergeJournals(await phone.journal(), await phone.journal()),
    );
  });

  it('a device that was put back from an old backup does not undo what it did since', async () => {
    const { box, phone, laptop } = devices();
    await phone.store.putDay({ date: '2026-11-25', note: 'first', editedAt: await phone.instant() });
    const backup = { journal: await phone.journal(), link: structuredClone(phone.link) };
    phone.pass(60_000);
    await phone.store.putDay({ date: '2026-11-25', note: 'second', editedAt: await phone.instant() });
    await phone.meet(box);
    await laptop.meet(box);
    await phone.store.replaceJournal(backup.journal);
    phone.link = backup.link;
    await phone.meet(box);
    await laptop.meet(box);
    await phone.meet(box);
    for (const device of [phone, laptop]) expect((await device.journal()).days[0]?.note).toBe('second');
  });
});
