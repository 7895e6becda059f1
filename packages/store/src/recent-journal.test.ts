import 'fake-indexeddb/auto';
import {
  builtInPrograms,
  createJournal,
  type DrillRecord,
  foldPast,
  idOf,
  type Journal,
  prescribe,
  visibleJournal,
} from '@larkhold/engine';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Change, Table } from './adapter.ts';
import { openIdbAdapter } from './idb-adapter.ts';
import { withNames } from './lately.ts';
import { openStore } from './open-store.ts';
import { dumpDatabase } from './raw-dump.ts';
import type { Store } from './store.ts';

// More with MODEL_RUNS=2000, other ones with MODEL_SEED.
const numRuns = Number(process.env.MODEL_RUNS ?? 80);
const seed = Number(process.env.MODEL_SEED ?? 20_261_129);

const today = '2026-11-25';
const before = '2026-10-12';
const program = builtInPrograms[1]!;

function drill(id: number, date: string, holdSeconds = 30): DrillRecord {
  const startedAt = `${date}T06:30:00Z`;
  const reps = Array.from({ length: 6 }, (_, rep) => ({
    ...{ block: 0, set: 0, rep, hand: 'usual' as const, prescribedMs: holdSeconds * 1000 },
    ...{ heldMs: holdSeconds * 1000, outcome: 'held' as const },
  }));
  const of = { program: program.title, programId: idOf(program) };
  return { id: `d${id}`, ...of, date, startedAt, endedAt: startedAt, reps, prescribedReps: 6, effort: 5 };
}

const dates = [
  '2026-08-03',
  '2026-09-14',
  '2026-10-11',
  '2026-10-12',
  '2026-10-30',
  '2026-11-20',
  '2026-11-24',
] as const;
const date = fc.constantFrom(...dates);
const id = fc.nat(7);
const drills = fc.array(fc.tuple(id, date, fc.integer({ min: 5, max: 60 })), { minLength: 1, maxLength: 4 });

/** What a tab does. */
type Deed = (store: Store) => Promise<unknown>;
const deed: fc.Arbitrary<Deed> = fc.oneof(
  {
    weight: 4,
    arbitrary: drills.map(
      (some): Deed =>
        (store) =>
          store.putDrills(some.map((one) => drill(...one))),
    ),
  },
  { weight: 2, arbitrary: fc.uniqueArray(id, { maxLength: 3 }).map(idsGone) },
  {
    weight: 2,
    arbitrary: fc.tuple(date, fc.boolean()).map(
      ([day, pain]): Deed =>
        (store) =>
          store.putDay({ date: day, pain }),
    ),
  },
  {
    weight: 1,
    arbitrary: date.map(
      (day): Deed =>
        (store) =>
          store.removeListed('days', day),
    ),
  },
  {
    weight: 1,
    arbitrary: drills.map(
      (some): Deed =>
        (store) =>
          store.mergeInto(journalOf(some)),
    ),
  },
  {
    weight: 1,
    arbitrary: drills.map(
      (some): Deed =>
        (store) =>
          store.replaceJournal(journalOf(some)),
    ),
  },
  { weight: 1, arbitrary: fc.constant<Deed>((store) => store.changeKit(() => ({ soundLevel: 0.5 }))) },
  { weight: 6, arbitrary: fc.constant<Deed>(keep) },
);

function idsGone(ids: readonly number[]): Deed {
  return (store) => store.removeDrills(ids.map((one) => `d${one}`));
}

function journalOf(some: readonly (readonly [number, string, number])[]): Journal {
  const rows = new Map(some.map((one) => [one[0], drill(...one)]));
  return { ...createJournal(), drills: [...rows.values()] };
}

async function keep(store: Store): Promise<boolean> {
  const stored = await store.journal();
  const { drills: records, days } = visibleJournal(stored);
  const past = foldPast({ records, days, before, programs: [program] });
  return past !== undefined && (await store.keepPast(past, stored));
}

/** The next start reads the last weeks, or gives up; what it reads gives the numbers that the whole journal gives. */
async function nextStart(indexedDB: IDBFactory): Promise<boolean> {
  const [early, late] = [await openStore({ name: 'x', indexedDB }), await openStore({ name: 'x', indexedDB })];
  const recent = await early.recentJournal(today);
  const { drills: records, days } = visibleJournal(await late.journal());
  if (recent) {
    const { journal, past } = recent;
    const { drills: lastRecords, days: lastDays } = visibleJournal(journal);
    expect(prescribe({ program, records: lastRecords, days: lastDays, past, today })).toEqual(
      prescribe({ program, records, days, today }),
    );
    expect(past.drillCount + lastRecords.length).toBe(records.length);
    expect(lastRecords.every((one) => one.date >= before)).toBe(true);
  }
  // Whatever was read of it first, the whole is the same afterwards.
  expect(new Set((await early.journal()).drills)).toEqual(new Set((await late.journal()).drills));
  for (const store of [early, late]) store.close();
  return recent !== undefined;
}

describe('the last weeks of a journal', () => {
  it('give what the whole journal gives, whatever two tabs have done to it since a past was kept', async () => {
    let [usedCount, goneCount] = [0, 0];
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(fc.nat(1), deed), { minLength: 2, maxLength: 14 }), async (deeds) => {
        const indexedDB = new IDBFactory();
        const tabs = [await openStore({ name: 'x', indexedDB }), await openStore({ name: 'x', indexedDB })] as const;
        let isKept = false;
        for (const [tab, work] of deeds) {
          const given = await work(tabs[tab === 0 ? 0 : 1]);
          if (given === true) isKept = true;
        }
        for (const store of tabs) store.close();
        const isUsed = await nextStart(indexedDB);
        if (isUsed) usedCount += 1;
        else if (isKept) goneCount += 1;
      }),
      { seed, numRuns },
    );
    expect(usedCount).toBeGreaterThan(numRuns / 8);
    expect(goneCount).toBeGreaterThan(numRuns / 8);
  });

  const oldAndNew = [...Array(40).keys()].map((at) => drill(at, dates[at % dates.length]!));

  async function kept(): Promise<IDBFactory> {
    const indexedDB = new IDBFactory();
    const store = await openStore({ name: 'x', indexedDB });
    await store.putDrills(oldAndNew);
    await store.putDay({ date: '2026-09-01', pain: false });
    expect(await keep(store)).toBe(true);
    store.close();
    return indexedDB;
  }
  async function readRecently(indexedDB: IDBFactory, day = today) {
    const store = await openStore({ name: 'x', indexedDB });
    const recent = await store.recentJournal(day);
    store.close();
    return recent;
  }
  async function write(indexedDB: IDBFactory, table: Table, key: string, change: (value: never) => unknown) {
    const adapter = await openIdbAdapter({ name: 'x', indexedDB });
    const value = (await adapter.read([table])).get(table)?.get(key);
    await adapter.write([{ table, do: 'put', key, value: change(value as never) }]);
    adapter.close();
  }

  it('are read alone: of older drills not one, and once the whole is read it is not read again', async () => {
    const indexedDB = await kept();
    const recent = await readRecently(indexedDB);
    expect(recent?.journal.drills.map((one) => one.date).sort()[0]).toBe(before);
    expect(recent?.journal.days).toEqual([]);
    const store = await openStore({ name: 'x', indexedDB });
    await store.journal();
    expect(await store.recentJournal(today)).toBeUndefined();
    store.close();
  });

  it('stay so with a new drill, and with one of the last weeks changed or removed', async () => {
    const indexedDB = await kept();
    const store = await openStore({ name: 'x', indexedDB });
    await store.putDrill(drill(99, today));
    const late = oldAndNew.filter((one) => one.date >= before);
    await store.putDrill({ ...late[0]!, effort: 9 });
    await store.removeDrills([late[1]!.id]);
    store.close();
    expect(await nextStart(indexedDB)).toBe(true);
  });

  it('are not used where an older drill was changed, removed, moved, or came in since', async () => {
    const old = oldAndNew[0]!;
    const deeds: Deed[] = [
      (store) => store.putDrill({ ...old, effort: 9 }),
      (store) => store.removeDrills([old.id]),
      (store) => store.putDrill({ ...old, date: today }),
      (store) => store.putDrill(drill(99, '2026-01-01')),
      (store) => store.putDay({ date: '2026-09-01', pain: true }),
      (store) => store.removeListed('days', '2026-09-01'),
      // One gone and one come leave the count as it was.
      async (store) => {
        await store.removeDrills([old.id]);
        await store.putDrill({ ...oldAndNew[1]!, date: today });
      },
    ];
    for (const work of deeds) {
      const indexedDB = await kept();
      const store = await openStore({ name: 'x', indexedDB });
      await work(store);
      store.close();
      expect(await nextStart(indexedDB)).toBe(false);
      // It is folded again then, and serves the start after.
      const again = await openStore({ name: 'x', indexedDB });
      await keep(again);
      again.close();
      expect(await nextStart(indexedDB)).toBe(true);
    }
  });

  it('are given up by very many changes at once, and by a list that is emptied: not each row is named then', () => {
    const many = [...Array(1001).keys()].map(
      (at): Change => ({ table: 'drills', do: 'put', key: `d${at}`, value: {} }),
    );
    const gone: Change[] = [
      { table: 'past', do: 'clear' },
      { table: 'lately', do: 'clear' },
      { table: 'lately', do: 'put', key: 'unnamed', value: 'stamp' },
    ];
    expect(withNames(many, 'stamp').slice(1001)).toEqual(gone);
    expect(withNames([{ table: 'days', do: 'clear' }], 'stamp').slice(1)).toEqual(gone);
    expect(withNames(many.slice(1), 'stamp')).toHaveLength(2000);
    expect(withNames([{ table: 'weeks', do: 'clear' }], 'stamp')).toHaveLength(1);
  });

  it('are read whole where the past is damaged, of other rules, missing or of a day to come, or a row is damaged', async () => {
    type Row = { text: string; version: number };
    const odd: [Table, string, (value: never) => unknown][] = [
      ['past', 'past', (row: Row) => ({ ...row, text: row.text.replace('"rowDays":', '"rowDays":1') })],
      ['past', 'past', (row: Row) => ({ ...row, version: row.version + 1 })],
      ['past', 'past', () => 'nonsense'],
      ['lately', 'unnamed', () => 'x'],
      ['lately', `drills/${oldAndNew[0]!.id}`, () => 'x'],
      ['drills', oldAndNew[5]!.id, () => ({ date: today, nonsense: true })],
      ['drills', 'from outside', () => drill(3, '2026-01-01')],
    ];
    for (const [table, key, change] of odd) {
      const indexedDB = await kept();
      await write(indexedDB, table, key, change);
      expect(await readRecently(indexedDB)).toBeUndefined();
    }
    const indexedDB = await kept();
    expect(await readRecently(indexedDB, '2026-10-20')).toBeUndefined();
    expect(await readRecently(indexedDB, '2020-01-01')).toBeUndefined();
    expect(await readRecently(new IDBFactory())).toBeUndefined();
  });

  it('are of no past that is not of the whole journal as it is', async () => {
    const indexedDB = await kept();
    const [store, other] = [await openStore({ name: 'x', indexedDB }), await openStore({ name: 'x', indexedDB })];
    const stored = await store.journal();
    const { drills: records, days } = visibleJournal(stored);
    const past = foldPast({ records: records.slice(1), days, before, programs: [program] })!;
    expect(await store.keepPast(past, stored)).toBe(false);
    await other.putDrill(drill(77, '2026-02-02'));
    expect(await store.keepPast(foldPast({ records, days, before: '2026-10-01', programs: [program] })!, stored)).toBe(
      false,
    );
    for (const one of [store, other]) one.close();
    expect(Object.keys((await dumpDatabase('x', indexedDB)).past!)).toEqual(['past']);
  });
});
