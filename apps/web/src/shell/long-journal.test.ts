import 'fake-indexeddb/auto';
import { builtInPrograms, createJournal, type DrillRecord } from '@larkhold/engine';
import { openStore, type Store } from '@larkhold/store';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import type { App } from './app-context.ts';
import { createAppState } from './app-state.ts';
import { todaysPrescription } from './todays-prescription.ts';

describe('a long journal', () => {
  const dayAt = (at: number) => new Date(Date.UTC(2026, 10, 24) - at * 86_400_000).toISOString().slice(0, 10);
  const program = builtInPrograms[1]!;
  const long = Array.from({ length: 620 }, (_, at): DrillRecord => {
    const startedAt = `${dayAt(at)}T06:00:00Z`;
    const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 20_000, heldMs: 20_000, outcome: 'held' } as const;
    const reps = [0, 1, 2, 3].map((place) => ({ ...rep, rep: place }));
    const of = { program: program.title, ...(program.id === undefined ? {} : { programId: program.id }) };
    return { id: `d${at}`, ...of, date: dayAt(at), startedAt, endedAt: startedAt, reps, prescribedReps: 4 };
  });

  /** What an app shows of a database, view by view, until it has read everything and kept a past for the next start. */
  async function shown(
    indexedDB: IDBFactory,
    change: (store: Store) => Promise<unknown> = async () => undefined,
    once: (app: App) => Promise<unknown> = async () => undefined,
  ) {
    const inner = await openStore({ name: 'app', indexedDB });
    await change(inner);
    let told: (isKept: boolean) => void = () => undefined;
    const isKept = new Promise<boolean>((resolve) => {
      told = resolve;
    });
    const store: Store = Object.assign(Object.create(inner) as Store, {
      keepPast: async (...given: Parameters<Store['keepPast']>) => {
        const kept = await inner.keepPast(...given);
        told(kept);
        return kept;
      },
    });
    const state = createAppState({
      ...{ store, today: () => '2026-11-25', instant: () => '2026-11-25T06:00:00Z', newId: () => 'new' },
      ...{ saveFile: () => {}, trySound: () => {}, askForPersistence: async () => 'unknown' as const },
    });
    const views: App['view'][] = [];
    state.subscribe(({ view }) => views.push(view));
    await state.reload();
    await once(state.app!);
    expect(await isKept).toBe(true);
    inner.close();
    return views;
  }

  it('is shown by its last weeks first, with the numbers of the whole, and then whole', async () => {
    const indexedDB = new IDBFactory();
    const first = await shown(indexedDB, (store) => store.putDrills(long));
    expect(first.map(({ past }) => past)).toEqual([undefined]);
    const [early, whole] = await shown(indexedDB);
    expect(early?.past?.drillCount).toBeGreaterThan(500);
    expect(early?.journal.drills.length).toBeLessThan(60);
    expect(whole?.past).toBeUndefined();
    expect(whole?.journal.drills).toHaveLength(620);
    expect(early?.chosen).toEqual(whole?.chosen);
    expect(early?.season).toEqual(whole?.season);
    expect(todaysPrescription(early!, early!.chosen)).toEqual(todaysPrescription(whole!, whole!.chosen));
    expect(todaysPrescription(early!, early!.chosen, 8)).toEqual(todaysPrescription(whole!, whole!.chosen, 8));
  });

  it('is quick already at the first start after it came in: the import leaves the folded past behind', async () => {
    const indexedDB = new IDBFactory();
    const drills = Array.from({ length: 1240 }, (_, at) => ({ ...long[at % 620]!, id: `in${at}` })); // more than are named one by one
    const imported = await shown(
      indexedDB,
      async () => undefined,
      async (app) => {
        expect(await app.act.takeIn({ journal: { ...createJournal(), drills } })).toBeDefined();
      },
    );
    expect(imported.at(-1)?.journal.drills).toHaveLength(1240);
    const [early, whole] = await shown(indexedDB);
    expect(early?.past?.drillCount).toBeGreaterThan(1000);
    expect(todaysPrescription(early!, early!.chosen)).toEqual(todaysPrescription(whole!, whole!.chosen));
  });

  it('is read whole first where an old drill came in since, and the start after is quick again', async () => {
    const indexedDB = new IDBFactory();
    await shown(indexedDB, (store) => store.putDrills(long));
    const old = { ...long[100]!, id: 'from another device', startedAt: `${dayAt(100)}T18:00:00Z` };
    const views = await shown(indexedDB, (store) => store.mergeInto({ ...createJournal(), drills: [old] }));
    expect(views.map(({ past }) => past)).toEqual([undefined]);
    expect((await shown(indexedDB)).map(({ journal }) => journal.drills.length)).toEqual([expect.any(Number), 621]);
  });

  it('is read whole first where another program became today’s', async () => {
    const indexedDB = new IDBFactory();
    await shown(indexedDB, (store) => store.putDrills(long));
    const other = { ...program, id: '0b6c1d6e-5a43-4c1e-9a52-6f0f3c1f7a77', title: 'From the coach' };
    const views = await shown(indexedDB, async (store) => {
      await store.putProgram(other);
      await store.changeKit(() => ({ programId: other.id, programDay: '2026-11-25' }));
    });
    expect(views.map(({ past, chosen }) => [past, chosen.title])).toEqual([[undefined, 'From the coach']]);
  });
});
