import { describe, expect, it } from 'vitest';
import { boxFileName, readBoxFileName } from './box-file-name.ts';
import { createPairing, deriveBoxKeys } from './pairing.ts';
import { createAgeCipher, sealText } from './sealed-text.ts';
import { TrialDevice, trialDrill } from './trial/trial-device.ts';
import { keys, pairing, textOf, twoDevices } from './trial/two-devices.ts';

describe('a bad file in the box', () => {
  const spoil = async (change: (content: Uint8Array) => Uint8Array | Promise<Uint8Array>) => {
    const { box, phone, laptop, file } = twoDevices();
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
  /** Puts another content under a name that fits it, as whoever can write into the folder may do. */
  const replaced = async (text: string | ((owner: string, turn: number) => string), recipient = keys.recipient) => {
    const { box, phone, laptop, file } = twoDevices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await phone.meet(box);
    const named = readBoxFileName(file())!;
    const whole = typeof text === 'string' ? text : text(named.owner, named.turn);
    const content = await sealText(whole, createAgeCipher({ recipient }));
    box.files.clear();
    box.files.set(await boxFileName(named.owner, named.turn, content), { content, mark: 'other' });
    const round = await laptop.meet(box);
    expect(round.isPushed).toBe(true);
    expect((await laptop.meet(box)).troubles).toEqual([]); // told once
    await phone.meet(box);
    await laptop.meet(box);
    expect(await textOf(laptop)).toBe(await textOf(phone));
    expect((await laptop.journal()).drills).toHaveLength(1);
    return round.troubles.map(({ kind }) => kind);
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
    expect(await replaced('{}', other.recipient)).toEqual(['foreign']);
    const state = { format: 'larkhold/box-file', version: 1, box: other.path, device: 'x', title: '', turn: 1 };
    expect(await replaced(JSON.stringify({ ...state, madeAt: '', journal: '{}' }))).toEqual(['foreign']);
  });

  it('that holds no journal, a newer one, or gigabytes of nothing has a message of its own', async () => {
    expect(await replaced('[]')).toEqual(['damaged']);
    expect(await replaced('{"format":"larkhold/box-file","version":2}')).toEqual(['newer']);
    const head = { format: 'larkhold/box-file', version: 1, box: keys.path, title: 'Phone', madeAt: '' };
    const journal = '{"format":"larkhold/journal","version":99}';
    expect(await replaced((owner, turn) => JSON.stringify({ ...head, device: owner, turn, journal }))).toEqual([
      'newer',
    ]);
    expect(await replaced(' '.repeat(64 * 1024 * 1024 + 1))).toEqual(['enormous']);
  });

  it('that says it has nine megabytes is not even fetched', async () => {
    const { box, phone, laptop, file } = twoDevices();
    await phone.meet(box);
    const list = box.list;
    let isFetched = false;
    const round = await laptop.meet({
      ...box,
      list: async () => {
        const listed = await list();
        return listed.ok
          ? { ok: true, value: listed.value.map((one) => ({ ...one, bytes: 9 * 1024 * 1024 })) }
          : listed;
      },
      get: async (name) => {
        isFetched ||= name === file();
        return box.get(name);
      },
    });
    expect(round.troubles).toMatchObject([{ kind: 'enormous' }]);
    expect(isFetched).toBe(false);
  });

  it('that was swapped with another device’s is reported: under its own digest, and under one that was made to fit', async () => {
    const { box, phone, laptop, file } = twoDevices();
    const tablet = new TrialDevice('Tablet', pairing, keys);
    await phone.meet(box);
    await tablet.meet(box);
    const [one, other] = [file(), tablet.link.own.file!];
    const [a, b] = [box.files.get(one)!, box.files.get(other)!];
    box.files.clear();
    box.files.set(one, b).set(other, a);
    expect((await laptop.meet(box)).troubles.map(({ kind }) => kind)).toEqual(['damaged', 'damaged']);
    box.files.clear();
    const forged = await boxFileName(phone.link.device, 9, new Uint8Array(b.content));
    box.files.set(forged, b);
    expect((await laptop.meet(box)).troubles).toMatchObject([{ kind: 'swapped' }]);
  });

  it('that is played back brings nothing back from the dead', async () => {
    const { box, phone, laptop, file } = twoDevices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await phone.meet(box);
    const old = [file(), { ...box.files.get(file())!, mark: 'played back' }] as const;
    await laptop.meet(box);
    for (let turn = 0; turn < 2; turn += 1) {
      await phone.store.removeDrills(['d1']);
      await phone.store.putDay({ date: '2026-11-25', note: `Windy ${turn}`, editedAt: await phone.instant() });
      await phone.meet(box);
      await laptop.meet(box);
    }
    for (const name of [...box.files.keys()]) if (name.startsWith(phone.link.device)) box.files.delete(name);
    box.files.set(...old);
    expect((await laptop.meet(box)).troubles).toMatchObject([{ kind: 'replayed', title: 'Phone' }]);
    expect((await phone.meet(box)).troubles).toMatchObject([{ kind: 'replayed' }]);
    expect(box.files.has(old[0])).toBe(false);
    await laptop.meet(box);
    for (const device of [phone, laptop]) expect((await device.journal()).drills).toEqual([]);
    expect(await textOf(laptop)).toBe(await textOf(phone));
  });
});
