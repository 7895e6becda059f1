import 'fake-indexeddb/auto';
import { createJournal, type DrillRecord } from '@larkhold/engine';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import { openStore } from './open-store.ts';
import type { Store } from './store.ts';
import { record } from './trial/trial-record.ts';

const now = () => '2026-05-03T08:00:00Z';
const fresh = (): Store => createLocalStore({ adapter: createMemoryAdapter(), now });
const drill = (id: string, note?: string): DrillRecord => ({
  ...{ ...record, id, editedAt: '2026-05-02T08:00:00Z' },
  ...(note === undefined ? {} : { note }),
});
const day = { date: '2026-05-01', note: 'Theirs', editedAt: '2026-05-02T08:00:00Z' };

it('goes back whole where nothing has changed since, and says that nothing was left', async () => {
  const store = fresh();
  await store.putDrill(drill('own'));
  await store.putDay({ date: '2026-05-01', note: 'Ours', editedAt: '2026-05-01T08:00:00Z' });
  const [journal, kit] = [await store.journal(), await store.kit()];
  const taken = await store.takeIn({
    journal: { ...createJournal(), drills: [drill('theirs')], days: [day] },
    kit: { bow: 'compound', programId: 'p' },
  });
  expect((await store.journal()).drills).toHaveLength(2);
  expect(await store.takeBack(taken)).toEqual([]);
  expect(await store.journal()).toEqual(journal);
  expect(await store.kit()).toEqual(kit);
});

it('leaves what was done in another tab, and what was written since, and says so', async () => {
  const indexedDB = new IDBFactory();
  const [here, there] = await Promise.all([openStore({ name: 'x', indexedDB }), openStore({ name: 'x', indexedDB })]);
  const taken = await here.takeIn({ journal: { ...createJournal(), drills: [drill('theirs')], days: [day] } });
  await there.putDrill(drill('later'));
  await there.putDay({ ...day, note: 'Words typed since', editedAt: '2026-05-03T08:00:00Z' });
  expect(await here.takeBack(taken)).toEqual([{ table: 'days', key: '2026-05-01' }]);
  const journal = await here.journal();
  expect(journal.drills.map(({ id }) => id)).toEqual(['later']);
  expect(journal.days[0]?.note).toBe('Words typed since');
  here.close();
  there.close();
});

it('puts back those values of the kit that nobody has changed since', async () => {
  const store = fresh();
  const taken = await store.takeIn({ kit: { bow: 'compound', hand: 'left' } });
  await store.changeKit(() => ({ bow: 'longbow', drawWeightLbf: 40 }));
  expect(await store.takeBack(taken)).toEqual([{ table: 'single', key: 'kit' }]);
  expect(await store.kit()).toMatchObject({ bow: 'longbow', hand: 'right', drawWeightLbf: 40 });
});

it('takes in nothing where one value is refused', async () => {
  const store = fresh();
  const wrong = { ...drill('b'), effort: 11 };
  await expect(store.takeIn({ journal: { ...createJournal(), drills: [drill('a'), wrong] } })).rejects.toThrow(
    TypeError,
  );
  expect(await store.journal()).toEqual(createJournal());
  expect(store.trouble).toBeUndefined();
});

it('whatever is written after an import, undoing it never changes that', async () => {
  const ids = fc.constantFrom('a', 'b', 'c', 'd');
  const some: fc.Arbitrary<string[]> = fc.uniqueArray(ids, { maxLength: 4 });
  await fc.assert(
    fc.asyncProperty(some, some, some, async (own, theirs, later) => {
      const store = fresh();
      for (const id of own) await store.putDrill(drill(id, 'own'));
      const before = await store.journal();
      const taken = await store.takeIn({
        journal: { ...createJournal(), drills: theirs.map((id) => ({ ...drill(id, 'theirs'), editedAt: now() })) },
      });
      for (const id of later) await store.putDrill({ ...drill(id, 'later'), editedAt: '2026-05-04T08:00:00Z' });
      const left = await store.takeBack(taken);
      expect(left.map(({ key }) => key).sort()).toEqual(theirs.filter((id) => later.includes(id)).sort());
      for (const { id, note } of (await store.journal()).drills) {
        const was = before.drills.find((one) => one.id === id)?.note;
        expect(note).toBe(later.includes(id) ? 'later' : was);
      }
    }),
    { seed: 11, numRuns: 200 },
  );
});
