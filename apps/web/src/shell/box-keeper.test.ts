import { createMemoryBox, createPairing, deriveBoxKeys } from '@larkhold/box';
import { createLocalStore, createMemoryAdapter } from '@larkhold/store';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createBoxKeeper } from './box-keeper.ts';
import { meetOnOccasions } from './box-occasions.ts';

beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance', 'Date'] }));
afterEach(() => void vi.useRealTimers());

/** How long an edit rests before it is sent, and the first and the longest wait for a host in trouble, milliseconds: docs/devices.md. */
const RESTS_MS = 10_000;
const FIRST_WAIT_MS = 60_000;
const LONGEST_WAIT_MS = 3_600_000;

const pairing = createPairing('/box');
await deriveBoxKeys(pairing);

async function device(box = createMemoryBox()) {
  const now = () => new Date().toISOString();
  const store = createLocalStore({ adapter: createMemoryAdapter(), now });
  const state = { isDrilling: false, listCount: 0, faults: [] as unknown[], isDown: false };
  const keeper = await createBoxKeeper({
    ...{ store, origin: 'http://club.invalid/', now, isDrilling: () => state.isDrilling },
    report: (error) => state.faults.push(error),
    openBox: async () => ({
      ...box,
      list: async () => {
        state.listCount += 1;
        return state.isDown ? { ok: false, trouble: { kind: 'fault' } } : box.list();
      },
    }),
  });
  const write = async (note: string) => {
    await store.putDay({ date: '2026-11-25', note, editedAt: store.instant() });
  };
  /** Lets time pass, and what it set off come to its end. */
  const pass = async (ms: number) => {
    await vi.advanceTimersByTimeAsync(ms);
    do await new Promise((done) => setImmediate(done));
    while (keeper.isMeeting);
  };
  return { box, store, keeper, state, write, pass };
}

describe('a round is made', () => {
  it('ten seconds after an edit has rested, once for a page that is typed', async () => {
    const { box, keeper, state, write, pass } = await device();
    await keeper.join(pairing, 'Phone');
    await pass(RESTS_MS);
    const [before, file] = [state.listCount, keeper.link?.own.file];
    for (let letter = 0; letter < 5; letter += 1) {
      await write(`Windy${'!'.repeat(letter)}`);
      await pass(RESTS_MS / 2);
    }
    expect(state.listCount).toBe(before);
    await pass(RESTS_MS);
    expect(state.listCount).toBe(before + 1);
    expect(keeper.link?.own.file).not.toBe(file);
    expect(box.files.has(keeper.link?.own.file ?? '')).toBe(true);
  });

  it('and no other by itself: what a round keeps is no edit, and an idle round does not read the journal', async () => {
    const { store, keeper, state, write, pass } = await device();
    await write('Windy');
    await keeper.join(pairing, 'Phone');
    await pass(RESTS_MS);
    await pass(RESTS_MS);
    const before = state.listCount;
    for (let turn = 0; turn < 20; turn += 1) await pass(RESTS_MS);
    expect(state.listCount).toBe(before);
    const read = vi.spyOn(store, 'journal');
    await keeper.meet();
    expect(state.listCount).toBe(before + 1);
    expect(read).not.toHaveBeenCalled();
    await write('Still');
    await pass(RESTS_MS);
    expect(read).toHaveBeenCalled();
  });

  it('on opening, on coming back to the page and to the network, and after a drill; never in one', async () => {
    const heard = new Map<string, () => void>();
    const target = (more: object) =>
      ({ addEventListener: (name: string, fn: () => void) => void heard.set(name, fn), ...more }) as never;
    const document = { visibilityState: 'visible' };
    let drilling = (_: boolean): void => undefined;
    let count = 0;
    const box = {
      meet: async () => {
        count += 1;
      },
    };
    meetOnOccasions(box, {
      document: target(document),
      window: target({}),
      onDrilling: (hear) => {
        drilling = hear;
      },
    });
    expect(count).toBe(1);
    heard.get('visibilitychange')?.();
    expect(count).toBe(2);
    heard.get('online')?.();
    expect(count).toBe(3);
    drilling(true);
    heard.get('visibilitychange')?.();
    heard.get('online')?.();
    expect(count).toBe(3);
    drilling(false);
    expect(count).toBe(4);
    drilling(false);
    expect(count).toBe(4);
  });

  it('never in a drill, also where an edit rested in it; one that had begun ends there, and nothing of it is half-done', async () => {
    const { keeper, state, write, pass } = await device();
    await keeper.join(pairing, 'Phone');
    await pass(RESTS_MS);
    const before = state.listCount;
    state.isDrilling = true;
    await write('Windy');
    await pass(RESTS_MS * 3);
    await keeper.meet('press');
    expect(state.listCount).toBe(before);
    state.isDrilling = false;
    const meeting = keeper.meet();
    state.isDrilling = true;
    await meeting;
    state.isDrilling = false;
    await keeper.meet();
    expect(state.faults).toEqual([]);
    expect(keeper.link?.log.every(({ isGood }) => isGood)).toBe(true);
  });
});

describe('a host in trouble', () => {
  it('is tried again after a minute, then twice as long each time, an hour at most; a press and a network that is back do not wait', async () => {
    const { keeper, state, pass } = await device();
    await keeper.join(pairing, 'Phone');
    await pass(RESTS_MS);
    state.isDown = true;
    await keeper.meet();
    for (let wait = FIRST_WAIT_MS; wait < 3 * LONGEST_WAIT_MS; wait *= 2) {
      const before = state.listCount;
      await pass(Math.min(wait, LONGEST_WAIT_MS) - 1000);
      await keeper.meet(); // coming back to the page does not hurry it
      expect(state.listCount).toBe(before);
      await pass(1000);
      expect(state.listCount).toBe(before + 1);
    }
    expect(state.faults).toEqual([]);
    const before = state.listCount;
    state.isDown = false;
    await keeper.meet('online');
    expect(state.listCount).toBe(before + 1);
    await keeper.meet();
    expect(state.listCount).toBe(before + 2);
    expect(keeper.link?.log.find(({ isGood }) => !isGood)?.news).toMatchObject([
      { what: 'trouble', trouble: { kind: 'fault' } },
    ]);
  });
});

describe('a device that is paired twice at once', () => {
  it('is in the box that was asked for last, and puts its file there', async () => {
    const { box, keeper } = await device();
    const other = createPairing('/box');
    const answers = await Promise.all([keeper.join(pairing, 'Phone'), keeper.join(other, 'Phone')]);
    expect(keeper.link?.secret).toBe(other.secret);
    expect(answers.map((entry) => entry?.isGood)).toEqual([true, true]);
    expect([...box.files.keys()]).toEqual([keeper.link?.own.file]);
    await Promise.all([keeper.meet('press'), keeper.join(pairing, 'Phone')]);
    expect(keeper.link?.secret).toBe(pairing.secret);
    expect(box.files.has(keeper.link?.own.file ?? 'none')).toBe(true);
  });
});

describe('controls', () => {
  const soundAndKeys = async ({ store }: Awaited<ReturnType<typeof device>>) => {
    const { soundLevel, keys, callAnswers, bow } = await store.kit();
    return { soundLevel, begin: keys.begin, answers: callAnswers.length, bow };
  };
  async function paired(takesControls: boolean) {
    const phone = await device();
    await phone.store.changeKit(({ keys }) => ({
      soundLevel: 0.2,
      keys: { ...keys, begin: ['F13'] },
      bow: 'barebow',
      callAnswers: [{ programId: 'mine', allowed: ['Strong back'], silenced: [] }],
    }));
    await phone.keeper.join(pairing, 'Phone');
    const tablet = await device(phone.box);
    await tablet.keeper.join(pairing, 'Tablet', { takesControls });
    return { phone, tablet };
  }

  it('are copied to a new device where the archer asks for it, except for what was allowed at full draw; each goes its own way afterwards', async () => {
    const { phone, tablet } = await paired(true);
    expect(tablet.keeper.controlsOf).toBe('Phone');
    expect(await soundAndKeys(tablet)).toEqual({ soundLevel: 0.2, begin: ['F13'], answers: 0, bow: 'barebow' });
    await phone.store.changeKit(() => ({ soundLevel: 1 }));
    await phone.keeper.meet('press');
    await tablet.keeper.meet('press');
    expect(await soundAndKeys(tablet)).toMatchObject({ soundLevel: 0.2 });
    expect(await tablet.keeper.takeControls(phone.keeper.link?.device ?? '')).toBe(true);
    expect(await soundAndKeys(tablet)).toMatchObject({ soundLevel: 1 });
    await tablet.keeper.leaveControls();
    expect(await soundAndKeys(tablet)).toMatchObject({ soundLevel: 0.2, bow: 'barebow' });
  });

  it('stay the device’s own where nobody asks for others, where no device has any, and where the round is undone', async () => {
    const { tablet } = await paired(false);
    expect(tablet.keeper.controlsOf).toBeUndefined();
    expect(await soundAndKeys(tablet)).toMatchObject({ soundLevel: 0.7, bow: 'barebow' });
    expect(await tablet.keeper.takeControls('nobody')).toBe(false);
    const alone = await device();
    await alone.keeper.join(pairing, 'Alone', { takesControls: true });
    expect(alone.keeper.controlsOf).toBeUndefined();
    const undone = (await paired(true)).tablet;
    await undone.keeper.undo();
    expect(undone.keeper.controlsOf).toBeUndefined();
    expect(await soundAndKeys(undone)).toMatchObject({ soundLevel: 0.7, bow: 'recurve' });
  });

  it('are those of the device that wrote last, where there are several', async () => {
    const { phone, tablet } = await paired(true);
    await tablet.pass(RESTS_MS);
    await tablet.store.changeKit(() => ({ soundLevel: 0.9 }));
    await tablet.pass(RESTS_MS);
    const laptop = await device(phone.box);
    await laptop.keeper.join(pairing, 'Laptop', { takesControls: true });
    expect(laptop.keeper.controlsOf).toBe('Tablet');
    expect(await soundAndKeys(laptop)).toMatchObject({ soundLevel: 0.9, begin: ['F13'] });
  });
});

describe('what a round brought', () => {
  it('can be taken back, keeps what was written since, and comes again once the device may meet', async () => {
    const phone = await device();
    const other = await device(phone.box);
    await phone.write('Windy');
    await phone.keeper.join(pairing, 'Phone');
    await other.keeper.join(pairing, 'Laptop');
    expect((await other.store.journal()).days).toHaveLength(1);
    expect(other.keeper.canUndo).toBe(true);
    await other.store.putDay({ date: '2026-11-24', note: 'Mine', editedAt: other.store.instant() });
    await other.keeper.undo();
    expect((await other.store.journal()).days.map(({ note }) => note)).toEqual(['Mine']);
    await other.keeper.meet('press');
    expect((await other.store.journal()).days).toHaveLength(1);
    await other.keeper.resume();
    expect((await other.store.journal()).days).toHaveLength(2);
  });

  it('stays where the device leaves the box, whose files are then those of the others', async () => {
    const phone = await device();
    const laptop = await device(phone.box);
    await phone.write('Windy');
    await phone.keeper.join(pairing, 'Phone');
    await laptop.keeper.join(pairing, 'Laptop');
    const name = laptop.keeper.link?.device ?? 'none';
    await laptop.keeper.leave();
    expect((await laptop.store.journal()).days).toHaveLength(1);
    expect([...phone.box.files.keys()].some((file) => file.startsWith(name))).toBe(false);
    expect(phone.box.files.size).toBeGreaterThan(0);
  });

  it('stays out of the box where the device leaves it in the middle of a round', async () => {
    const { box, keeper, write } = await device();
    await keeper.join(pairing, 'Phone');
    await write('Windy');
    const meeting = keeper.meet('press');
    await keeper.leave();
    await meeting;
    expect(keeper.link).toBeUndefined();
    expect(box.files.size).toBe(0);
  });

  it('a lost device is removed from the box, and what it wrote is kept', async () => {
    const phone = await device();
    const lost = await device(phone.box);
    await lost.write('Windy');
    await lost.keeper.join(pairing, 'Tablet');
    await phone.keeper.join(pairing, 'Phone');
    const name = lost.keeper.link?.device ?? 'none';
    expect(phone.keeper.link?.met[name]?.title).toBe('Tablet');
    await phone.keeper.forget(name);
    expect(phone.keeper.link?.met[name]).toBeUndefined();
    expect([...phone.box.files.keys()].some((file) => file.startsWith(name))).toBe(false);
    expect((await phone.store.journal()).days).toHaveLength(1);
  });
});
