import { createJournal, mergeJournals } from '@larkhold/engine';
import { createWords } from '@larkhold/words';
import { describe, expect, it } from 'vitest';
import { boxFileName } from './box-file-name.ts';
import { readBoxLink } from './box-link.ts';
import { boxTroubleKinds, troubled, troubleWords } from './box-trouble.ts';
import { sealState } from './sealed-state.ts';
import type { Cipher } from './sealed-text.ts';
import { TrialDevice, trialDrill } from './trial/trial-device.ts';
import { keys, pairing, textOf, twoDevices } from './trial/two-devices.ts';

const plainCipher: Cipher = { seal: async (plain) => plain, open: async (sealed) => sealed };

describe('a round', () => {
  it('brings a drill from the phone to the laptop, and the laptop’s day to the phone; then nothing is left to do', async () => {
    const { box, phone, laptop } = twoDevices();
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
    const { box, phone } = twoDevices();
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

  it('carries each device’s own controls for another one to take over, and changes nobody’s by itself', async () => {
    const { box, phone, laptop } = twoDevices();
    phone.kit = { soundLevel: 0.2, keys: { begin: ['F13'] } };
    await phone.meet(box);
    expect((await laptop.meet(box)).link.met[phone.link.device]?.kit).toEqual(phone.kit);
    expect((await laptop.store.kit()).soundLevel).toBe(0.7);
    // A kit that has changed is news; the laptop wrote none, as an older app does.
    await phone.meet(box);
    expect(await phone.meet(box)).toMatchObject({ isPushed: false });
    phone.kit = { ...phone.kit, soundLevel: 0.4 };
    expect(await phone.meet(box)).toMatchObject({ isPushed: true });
    const kept = readBoxLink(JSON.parse(JSON.stringify((await laptop.meet(box)).link)));
    expect(kept?.met[phone.link.device]?.kit).toMatchObject({ soundLevel: 0.4 });
    expect(phone.link.met[laptop.link.device]).not.toHaveProperty('kit');
  });

  it('reads the journal of a device whose controls are no controls', async () => {
    const { box, phone, laptop } = twoDevices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    phone.kit = ['not', 'a', 'kit'] as never;
    await phone.meet(box);
    expect(await laptop.meet(box)).toMatchObject({ merged: ['Phone'], troubles: [] });
    expect((await laptop.journal()).drills).toHaveLength(1);
  });

  it('leaves nothing in the box that a host could read', async () => {
    const { box, phone } = twoDevices();
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

describe('two devices of one name', () => {
  it('find out, and go on under two names with nothing lost', async () => {
    const { box, phone } = twoDevices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await phone.meet(box);
    const copy = new TrialDevice('Phone', pairing, keys);
    copy.link = structuredClone(phone.link);
    await copy.store.mergeInto(await phone.journal());
    await copy.store.putDrill({ ...trialDrill('d2', 3), editedAt: await copy.instant() });
    await phone.store.putDrill({ ...trialDrill('d3', 4), editedAt: await phone.instant() });
    await copy.meet(box);
    expect((await phone.meet(box)).troubles).toMatchObject([{ kind: 'nameTaken' }]);
    await copy.meet(box);
    await phone.meet(box);
    expect(phone.link.device).not.toBe(copy.link.device);
    expect((await phone.journal()).drills.map(({ id }) => id).sort()).toEqual(['d1', 'd2', 'd3']);
    expect(mergeJournals(await copy.journal(), await phone.journal())).toEqual(
      mergeJournals(await phone.journal(), await phone.journal()),
    );
  });

  it('a device that was put back from an old backup does not undo what it did since', async () => {
    const { box, phone, laptop } = twoDevices();
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

  it('that put at one moment lose nothing: both files are there, and both are read', async () => {
    const { box, phone, laptop } = twoDevices();
    await phone.meet(box);
    const copy = new TrialDevice('Phone', pairing, keys);
    copy.link = structuredClone(phone.link);
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await copy.store.putDrill({ ...trialDrill('d2', 3), editedAt: await copy.instant() });
    await Promise.all([phone.meet(box), copy.meet(box)]);
    await laptop.meet(box);
    expect((await laptop.journal()).drills.map(({ id }) => id).sort()).toEqual(['d1', 'd2']);
    for (const device of [phone, copy, phone, laptop]) await device.meet(box);
    expect(phone.link.device).not.toBe(copy.link.device);
    expect(await textOf(phone)).toBe(await textOf(copy));
  });

  it('a device that was closed between putting its file and knowing it goes on under its own name', async () => {
    const { box, phone, laptop } = twoDevices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    let isPut = false;
    const put = phone.meet({
      ...box,
      put: async (name, content) => {
        await box.put(name, content);
        isPut = true;
        throw new Error('the app is closed');
      },
    });
    await expect(put).rejects.toThrow('closed');
    expect(isPut).toBe(true);
    const name = phone.link.device;
    expect((await phone.meet(box)).troubles).toEqual([]);
    await laptop.meet(box);
    expect(phone.link.device).toBe(name);
    expect(Object.keys(laptop.link.met)).toEqual([name]);
  });

  it('a clock a year off, on either device, loses no edit that was made after a round', async () => {
    const { box, phone, laptop } = twoDevices();
    phone.pass(366 * 86_400_000);
    await phone.store.putDay({ date: '2026-11-25', note: 'a year ahead', editedAt: await phone.instant() });
    await phone.meet(box);
    await laptop.meet(box);
    laptop.pass(-366 * 86_400_000);
    const known = (await laptop.journal()).days[0]!;
    await laptop.store.putDay({ ...known, note: 'two years behind', editedAt: await laptop.instant() });
    await laptop.meet(box);
    await phone.meet(box);
    for (const device of [phone, laptop]) expect((await device.journal()).days[0]?.note).toBe('two years behind');
  });

  it('an old app beside a new one: what only the new one knows goes through the old one and comes back whole', async () => {
    const { box, phone, laptop } = twoDevices();
    const newer = { date: '2026-11-25', note: 'Windy', windMps: 4, editedAt: await phone.instant() };
    await phone.store.putDay(newer);
    await phone.meet(box);
    await laptop.meet(box);
    laptop.pass(60_000);
    const known = (await laptop.journal()).days[0]!;
    await laptop.store.putDay({ date: known.date, note: 'Still', editedAt: await laptop.instant() });
    await laptop.meet(box);
    await phone.meet(box);
    expect((await phone.journal()).days[0]).toMatchObject({ note: 'Still', windMps: 4 });
  });
});

describe('an odd box', () => {
  it('with the files of 500 devices is read once, each of them, and then only listed', async () => {
    const { box, phone } = twoDevices();
    for (let index = 0; index < 500; index += 1) {
      const journal = { ...createJournal(), drills: [trialDrill(`d${index}`, 1)] };
      const state = {
        device: `device${index}`,
        title: `Device ${index}`,
        turn: 1,
        madeAt: '2026-11-25T06:00:00Z',
        journal,
      };
      const content = await sealState(state, keys, plainCipher);
      await box.put(await boxFileName(state.device, 1, content), content);
    }
    phone.cipher = plainCipher;
    const round = await phone.meet(box);
    expect(round).toMatchObject({ isPushed: true, troubles: [] });
    expect(round.merged).toHaveLength(500);
    expect((await phone.journal()).drills).toHaveLength(500);
    expect(readBoxLink(JSON.parse(JSON.stringify(phone.link)))?.met).toHaveProperty('device499');
    const refused = async () => troubled('fault');
    expect(await phone.meet({ ...box, get: refused, put: refused })).toMatchObject({ isPushed: false, troubles: [] });
  });

  it('in which names are paths, or no names of a box’s files, is read as if they were not there', async () => {
    const { box, phone, laptop, file } = twoDevices();
    await phone.meet(box);
    const good = box.files.get(file())!;
    const names = [
      '../../etc/passwd',
      `../${file()}`,
      `a/${file()}`,
      `${file()}/..`,
      `..%2f${file()}`,
      'C:\\x.age',
      '.age',
      '',
    ];
    for (const name of [...names, `${file().toUpperCase()}`, `${file()}\n`, `__proto__-1-${'a'.repeat(26)}.age`]) {
      box.files.set(name, good);
    }
    const asked: string[] = [];
    const get = async (name: string) => {
      asked.push(name);
      return box.get(name);
    };
    expect(await laptop.meet({ ...box, get })).toMatchObject({ merged: ['Phone'], troubles: [] });
    expect(asked).toEqual([file()]);
  });

  it('that two new devices join at one moment ends with all of it on each', async () => {
    const { box, phone, laptop } = twoDevices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    await phone.meet(box);
    const tablet = new TrialDevice('Tablet', pairing, keys);
    await tablet.store.putDrill({ ...trialDrill('d2', 3), editedAt: await tablet.instant() });
    await Promise.all([laptop.meet(box), tablet.meet(box)]);
    for (const one of [phone, laptop, tablet, laptop]) expect((await one.meet(box)).troubles).toEqual([]);
    for (const one of [laptop, tablet]) expect(await textOf(one)).toBe(await textOf(phone));
    expect((await phone.journal()).drills).toHaveLength(2);
  });

  it('into which half a file was written when the power was cut: it is put again, whole, by its device', async () => {
    const { box, phone, laptop, file } = twoDevices();
    await phone.meet(box);
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    const before = file();
    const cut = phone.meet({
      ...box,
      put: async (name, content) => {
        await box.put(name, content.slice(0, 90));
        throw new Error('the power is cut');
      },
    });
    await expect(cut).rejects.toThrow('power');
    // The file before is whole: a device that meets the box now loses nothing and hears of it.
    expect((await laptop.meet(box)).troubles.map(({ kind }) => kind)).toEqual(['damaged']);
    expect(laptop.link.met[phone.link.device]?.files).toEqual([before]);
    expect((await phone.meet(box)).isPushed).toBe(true);
    await laptop.meet(box);
    expect((await laptop.journal()).drills).toHaveLength(1);
    expect([...box.files.values()].every(({ content }) => content.length > 90)).toBe(true);
  });

  it('between whose putting and reading a clock jumps: the edit that is made afterwards wins on both devices', async () => {
    const { box, phone, laptop } = twoDevices();
    await phone.store.putDay({ date: '2026-11-25', note: 'on the phone', editedAt: await phone.instant() });
    await phone.meet(box);
    const jump = async (name: string) => {
      laptop.pass(-366 * 86_400_000);
      return box.get(name);
    };
    await laptop.meet({ ...box, get: jump });
    const known = (await laptop.journal()).days[0]!;
    await laptop.store.putDay({ ...known, note: 'on the laptop, later', editedAt: await laptop.instant() });
    phone.pass(-3 * 366 * 86_400_000);
    await laptop.meet(box);
    await phone.meet(box);
    for (const device of [phone, laptop]) expect((await device.journal()).days[0]?.note).toBe('on the laptop, later');
  });
});

it.each(['full', 'slow', 'gone', 'refused', 'fault', 'noBox'] as const)(
  'a host that is %s: nothing is lost, and all goes there once it can',
  async (kind) => {
    const { box, phone, laptop } = twoDevices();
    await phone.store.putDrill({ ...trialDrill('d1', 5), editedAt: await phone.instant() });
    const bad = async () => troubled(kind);
    // At the first call, and at each one after it: half-way through a round as well.
    for (const verbs of [{ list: bad }, { put: bad }, { get: bad, put: bad }]) {
      const round = await phone.meet({ ...box, ...verbs });
      expect(round.troubles).toMatchObject([{ kind }]);
      expect(round.link.lastRoundAt).toBeUndefined();
      expect((await phone.journal()).drills).toHaveLength(1);
    }
    await phone.meet(box);
    await laptop.meet(box);
    expect(await textOf(laptop)).toBe(await textOf(phone));
  },
);

it('says every trouble in whole sentences, in English and in German, with the device’s name where a file is one’s', () => {
  for (const kind of boxTroubleKinds) {
    for (const language of ['en', 'de']) {
      const said = troubleWords({ kind, title: 'Laptop' }, createWords(language));
      expect(said).toMatch(/^[A-ZÄÖÜ„“].{30,}[.]$/);
      expect(said).not.toMatch(/undefined|boxTrouble/);
    }
    if (kind === 'damaged') expect(troubleWords({ kind }, createWords('en'))).toContain('another device');
  }
});
