import 'fake-indexeddb/auto';
import { builtInPrograms, type DrillRecord, visibleJournal } from '@larkhold/engine';
import { nextTask, openStore, type Store, type StoreTrouble, type Witness } from '@larkhold/store';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import type { App } from './app-context.ts';
import { createAppState } from './app-state.ts';

const record: DrillRecord = {
  ...{ id: 'a', program: 'Slow mornings', date: '2026-11-25' },
  ...{ startedAt: '2026-11-25T06:00:00Z', endedAt: '2026-11-25T06:10:00Z', reps: [] },
};

let apps = 0;

/** An app over a store, read once. Its name is its own: tabs of one name tell each other of changes. */
async function opened(changes: (store: Store) => Partial<Store> = () => ({})) {
  const inner = await openStore({ name: `app-${apps++}`, indexedDB: new IDBFactory() });
  const store = new Proxy(inner, {
    get: (target, key) => Reflect.get({ ...changes(target) }, key) ?? Reflect.get(target, key),
  });
  const reported: unknown[] = [];
  const state = createAppState({
    ...{ store, today: () => '2026-11-25', instant: () => '2026-11-25T06:00:00Z', newId: () => 'new' },
    ...{ saveFile: () => {}, trySound: () => {}, askForPersistence: async () => 'unknown' as const },
    report: (error) => reported.push(error),
  });
  await state.reload();
  const app = (): App => {
    if (!state.app) throw new TypeError('not read');
    return state.app;
  };
  return { app, state, store: inner, reported };
}

describe('the kit', () => {
  it('keeps an edit that is made while a reading is under way: 30 of 30', async () => {
    const { app, state, store } = await opened();
    for (let count = 1; count <= 30; count++) {
      const reading = state.reload();
      const [first, second] = [
        app().act.changeKit({ drawWeightLbf: 20 + count }),
        app().act.changeKit(({ listens }) => ({ listens: { ...listens, headset: count % 2 === 0 } })),
      ];
      await Promise.all([reading, first, second]);
      expect(await store.kit()).toMatchObject({ drawWeightLbf: 20 + count, listens: { headset: count % 2 === 0 } });
      expect(app().view.kit).toEqual(await store.kit());
    }
  });

  it('keeps both of two edits of one part that were made before either was shown', async () => {
    const { app } = await opened();
    const { changeKit } = app().act;
    await Promise.all([
      changeKit(({ listens }) => ({ listens: { ...listens, headset: true } })),
      changeKit(({ listens }) => ({ listens: { ...listens, microphone: true } })),
    ]);
    expect(app().view.kit.listens).toEqual({ gamepad: true, headset: true, microphone: true });
  });

  it('keeps what another tab changed meanwhile', async () => {
    const indexedDB = new IDBFactory();
    const [here, there] = await Promise.all([openStore({ name: 'x', indexedDB }), openStore({ name: 'x', indexedDB })]);
    await here.kit();
    await there.kit();
    await here.changeKit(() => ({ bow: 'compound' }));
    await there.changeKit(() => ({ hand: 'left' }));
    here.close();
    there.close();
    const read = await openStore({ name: 'x', indexedDB });
    expect(await read.kit()).toMatchObject({ bow: 'compound', hand: 'left' });
    read.close();
  });
});

describe('readings', () => {
  it('are made one at a time, and those asked for during one share the next', async () => {
    let readings = 0;
    const { state } = await opened((store) => ({
      programs: () => {
        readings += 1;
        return store.programs();
      },
    }));
    readings = 0;
    await Promise.all(Array.from({ length: 20 }, () => state.reload()));
    expect(readings).toBe(2);
    const first = state.reload();
    await Promise.all([state.reload(), first]);
    expect(readings).toBe(4); // and so do those of a later time
  });

  it('that fail are told to who asked for them, not to who asked during them', async () => {
    const lost = new Error('lost');
    let failures = 0;
    const { state } = await opened((store) => ({
      kit: () => (failures-- > 0 ? Promise.reject(lost) : store.kit()),
    }));
    failures = 1;
    const [first, second] = await Promise.allSettled([state.reload(), state.reload()]);
    expect(first).toEqual({ status: 'rejected', reason: lost });
    expect(second.status).toBe('fulfilled');
  });

  it('that fail after a write are told on the page, and the write counts', async () => {
    const lost = new Error('lost');
    let isLost = false;
    const { app, state, reported } = await opened((store) => ({
      kit: async () => {
        await nextTask();
        if (isLost) throw lost;
        return store.kit();
      },
    }));
    isLost = true;
    expect(await app().act.putDrill(record)).toBe(true);
    expect(app().view.refusal).toMatchObject({ thing: 'fault', message: expect.stringContaining('lost') });
    expect(reported).toContain(lost);
    isLost = false;
    await state.reload();
    expect(app().view.journal.drills).toEqual([record]);
  });

  it('are heard by who listens, at once and until they stop', async () => {
    const { app, state } = await opened();
    const heard: unknown[] = [];
    const stop = state.subscribe((one) => heard.push(one));
    expect(heard).toEqual([app()]);
    app().act.setDrilling(true);
    expect(heard).toHaveLength(2);
    expect(app().view.isDrilling).toBe(true);
    stop();
    state.tell(new Error('an element failed'));
    expect(heard).toHaveLength(2);
    expect(app().view.refusal?.message).toContain('an element failed');
  });
});

describe('what is refused', () => {
  it('is reported in words, nothing changes, and the asker hears that it was not kept', async () => {
    const { app, store, reported } = await opened();
    const isKept = await app().act.putDay({ date: '2026-11-25', note: 'x'.repeat(5000) });
    expect(reported).toEqual([]); // the archer's to mend, no fault of Larkhold's
    expect(isKept).toBe(false);
    expect((await store.journal()).days).toEqual([]);
    expect(app().view.refusal).toEqual({
      thing: 'days',
      message:
        'This day in the diary was not kept (note). It has 5,000 characters, and at most 4,000 fit. Change it and try again.',
    });
  });

  it('is reported for a milestone in the year 26', async () => {
    const { app } = await opened();
    const { putMilestone } = app().act;
    const milestone = { id: 'm', text: 'A minute', setDay: '2026-11-25' };
    expect(await putMilestone({ ...milestone, reachedDay: '0026-11-25' })).toBe(false);
    expect(app().view.refusal?.message).toContain('Expected a day of a year from 1900 to 2999.');
    expect(await putMilestone({ ...milestone, reachedDay: '2026-11-25' })).toBe(true);
    expect(app().view.refusal).toBeUndefined();
  });

  it('stays until it is read, whatever else is kept meanwhile', async () => {
    const { app } = await opened();
    await app().act.putDay({ date: '2026-11-25', note: 'x'.repeat(5000) });
    await app().act.putDrill(record);
    expect(app().view.refusal).toBeDefined();
    app().act.dismissRefusal();
    expect(app().view.refusal).toBeUndefined();
  });

  it('lets the store’s own trouble pass: the value is kept in memory and shown', async () => {
    const indexedDB = new IDBFactory();
    const inner = await openStore({ name: 'x', indexedDB });
    inner.close();
    const state = createAppState({
      ...{ store: inner, today: () => '2026-11-25', instant: () => '', newId: () => '' },
      ...{ saveFile: () => {}, trySound: () => {}, askForPersistence: async () => 'unknown' as const },
    });
    await state.reload();
    expect(await state.app?.act.putDrill(record)).toBe(true);
    expect(visibleJournal(await inner.journal()).drills).toEqual([record]);
    expect(state.app?.view.trouble?.kind).toBe('newer');
    expect(state.app?.view.refusal).toBeUndefined();
  });

  it('tells a fault of Larkhold’s own, and hands it on', async () => {
    const fault = new Error('no such step');
    const { app, reported } = await opened(() => ({ putNote: () => Promise.reject(fault) }));
    expect(await app().act.putNote({ id: 'n', madeAt: '2026-11-25T06:00:00Z' })).toBe(false);
    expect(app().view.refusal).toMatchObject({ thing: 'fault', message: expect.stringContaining('no such step') });
    expect(reported).toEqual([fault]);
  });
});

describe('the witness', () => {
  const day = (id: string, date: string): DrillRecord => ({ ...record, id, date });
  const withWitness = async (store: Store, kept: { witness?: Witness }, trouble?: StoreTrouble) => {
    const memory = trouble ? { where: 'memory', trouble } : {};
    const state = createAppState({
      store: new Proxy(store, { get: (target, key) => Reflect.get(memory, key) ?? Reflect.get(target, key) }),
      ...{ today: () => '2026-11-26', instant: () => '2026-11-26T06:00:00Z', newId: () => 'new' },
      ...{ saveFile: () => {}, trySound: () => {}, askForPersistence: async () => 'unknown' as const },
      witness: {
        read: () => kept.witness,
        write: (next) => {
          kept.witness = next;
        },
      },
    });
    await state.reload();
    return { state, view: () => state.app?.view };
  };
  let names = 0;
  // A name of its own: tabs of one name tell each other of changes.
  const fresh = () => openStore({ name: `lost-${names++}`, indexedDB: new IDBFactory() });

  it('tells of a database that was lost, until what was lost is back; what is left is no new witness', async () => {
    const kept: { witness?: Witness } = {};
    const { state } = await withWitness(await fresh(), kept);
    await state.app?.act.putDrill(day('a', '2026-11-24'));
    await state.app?.act.putDrill(day('b', '2026-11-25'));
    expect(kept.witness).toMatchObject({ drillCount: 2, lastDay: '2026-11-25' });

    const after = await withWitness(await fresh(), kept);
    expect(after.view()?.lost).toMatchObject({ drillCount: 2, foundCount: 0, lastDay: '2026-11-25' });
    const { act } = after.state.app as App;
    await act.putDrill({ ...day('c', '2026-11-26'), startedAt: '2026-11-26T07:00:00Z' });
    expect(after.view()?.lost).toMatchObject({ drillCount: 2, foundCount: 0 });
    expect(kept.witness?.drillCount).toBe(2);
    await act.putDrill(day('a', '2026-11-24'));
    await act.putDrill(day('b', '2026-11-25'));
    expect(after.view()?.lost).toBeUndefined();
    expect(kept.witness?.drillCount).toBe(3);
  });

  it('is silent on a first day, after a removal, and once the archer goes on', async () => {
    const kept: { witness?: Witness } = {};
    const store = await fresh();
    const first = await withWitness(store, kept);
    expect(first.view()?.lost).toBeUndefined();
    await first.state.app?.act.putDrill(day('a', '2026-11-24'));
    await first.state.app?.act.removeDrills(['a']);
    expect((await withWitness(store, kept)).view()?.lost).toBeUndefined();

    await first.state.app?.act.putDrill(day('b', '2026-11-25'));
    const after = await withWitness(await fresh(), kept);
    after.state.app?.act.acceptLoss();
    expect(after.view()?.lost).toBeUndefined();
    expect((await withWitness(await fresh(), kept)).view()?.lost).toBeUndefined();
  });

  it('a disk that another tab holds is not lost; one that can’t be read is', async () => {
    const kept: { witness?: Witness } = { witness: { drillCount: 3, at: '2026-11-25T06:00:00Z' } };
    const blocked = await withWitness(await fresh(), kept, { kind: 'blocked', message: 'x' });
    expect(blocked.view()?.lost).toBeUndefined();
    const damaged = await withWitness(await fresh(), kept, { kind: 'damaged', message: 'x' });
    expect(damaged.view()?.lost?.drillCount).toBe(3);
  });
});

const MINE = '0b6c1d6e-5a43-4c1e-9a52-6f0f3c1f7a11';

describe('a program that takes the place of another', () => {
  const mine = { ...builtInPrograms[0]!, id: MINE, title: 'Mine' };
  const theirs = { ...mine, title: 'The coach’s' };

  it('keeps the old one, and brings it back with the choice of the day', async () => {
    const { app, store } = await opened();
    await app().act.putProgram(mine);
    await app().act.chooseProgram(MINE);
    expect(await app().act.takeProgram(theirs, true)).toBeDefined();
    expect(app().view.replaced).toMatchObject({ title: 'Mine', programId: MINE });
    expect(app().view.chosen.title).toBe('The coach’s');
    expect(await app().act.undoReplaced()).toBe(true);
    expect((await store.programs()).map(({ title }) => title)).toEqual(['Mine']);
    expect(app().view.replaced).toBeUndefined();
  });

  it('has nothing to bring back where nothing was replaced, or where the new one has been edited since', async () => {
    const { app } = await opened();
    await app().act.takeProgram(mine);
    expect(app().view.replaced).toBeUndefined();
    expect(await app().act.undoReplaced()).toBe(false);
    await app().act.takeProgram(theirs);
    expect(app().view.replaced).toBeDefined();
    await app().act.putProgram({ ...theirs, title: 'Edited' });
    expect(app().view.replaced).toBeUndefined();
  });
});

describe('what was removed', () => {
  /** An app over one disk, read again as after a reload. */
  async function onDisk(indexedDB: IDBFactory, day: string) {
    const store = await openStore({ name: 'undo', indexedDB });
    const state = createAppState({
      ...{ store, today: () => day, instant: () => store.instant(), newId: () => 'new' },
      ...{ saveFile: () => {}, trySound: () => {}, askForPersistence: async () => 'unknown' as const },
    });
    await state.reload();
    return { store, view: () => state.app!.view, act: state.app!.act };
  }
  const program = { ...builtInPrograms[0]!, id: '0b6c1d6e-5a43-4c1e-9a52-6f0f3c1f7a11', title: 'Own' };

  it('can be brought back until the next day, also after a reload: program, drill, note, milestone', async () => {
    const indexedDB = new IDBFactory();
    const first = await onDisk(indexedDB, '2026-11-25');
    await first.act.putProgram(program);
    await first.act.putDrill(record);
    await first.act.putNote({ id: 'n', madeAt: '2026-11-25T06:00:00Z', text: 'Elbow' });
    await first.act.putMilestone({ id: 'm', text: 'A minute', setDay: '2026-11-25' });
    await first.act.removeProgram(program.id);
    await first.act.removeDrills(['a']);
    await first.act.putNote({ ...first.view().journal.notes![0]!, removed: true, editedAt: first.store.instant() });
    await first.act.putMilestone({
      ...first.view().journal.milestones![0]!,
      ...{ removed: true, editedAt: first.store.instant() },
    });
    expect([first.view().journal.drills, first.view().journal.notes ?? []]).toEqual([[], []]);
    expect(first.view().journal.milestones ?? []).toEqual([]);
    first.store.close();

    const again = await onDisk(indexedDB, '2026-11-25');
    expect(again.view().removedToday.map(({ kind }) => kind)).toEqual(['program', 'drill', 'note', 'milestone']);
    for (const thing of again.view().removedToday) expect(await again.act.bringBack(thing)).toBe(true);
    expect(again.view().removedToday).toEqual([]);
    expect(again.view().openedIds).toEqual(new Set([program.id]));
    expect(again.view().journal).toMatchObject({
      drills: [{ id: 'a' }],
      notes: [{ id: 'n' }],
      milestones: [{ id: 'm' }],
    });

    await again.act.removeDrills(['a']);
    again.store.close();
    const nextDay = await onDisk(indexedDB, '2026-11-26');
    expect(nextDay.view().removedToday).toEqual([]);
    nextDay.store.close();
  });
});
