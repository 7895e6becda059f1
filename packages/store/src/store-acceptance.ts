import type { DayEntry, DrillRecord, Journal, Prescription, Program, WeekPage } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { createKit } from './kit.ts';
import type { RunningDrill } from './running-drill.ts';
import type { Store } from './store.ts';

const program: Program = {
  format: 'larkhold/program',
  version: 2,
  id: '0b0e3c1e-95b5-4c5e-9b1c-3f8f0f6f2a11',
  title: 'Slow mornings',
  tool: 'bow',
  blocks: [
    {
      title: 'Holds',
      drill: 'holding',
      sets: 1,
      reps: 2,
      draw: 3,
      hold: 20,
      letDown: 3,
      rest: { timesHold: 2 },
      letDownTo: 'rest',
      hand: 'usual',
      addedWeight: 0,
    },
  ],
};
const record: DrillRecord = {
  id: 'drill-1',
  program: 'Slow mornings',
  date: '2026-03-29',
  startedAt: '2026-03-29T06:30:00+01:00',
  endedAt: '2026-03-29T06:40:00+02:00',
  reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 20_000, heldMs: 20_000, outcome: 'held' }],
  editedAt: '2026-03-29T04:40:00Z',
};
const day: DayEntry = {
  date: '2026-03-29',
  arrows: [{ kind: 'blank bale', count: 60 }],
  editedAt: '2026-03-29T20:00:00Z',
};
const week: WeekPage = { week: '2026-W13', focus: 'Low front shoulder', editedAt: '2026-03-29T20:00:00Z' };
const prescription: Prescription = {
  programTitle: 'Slow mornings',
  date: '2026-03-29',
  blocks: [],
  reasons: [],
  cautions: [],
  durationMs: 0,
};
const running: RunningDrill = {
  recordId: 'drill-1',
  program: 'Slow mornings',
  prescription,
  snapshot: { offsetMs: 26_000 },
  startedAt: '2026-03-29T06:30:00+01:00',
};
const journal: Journal = {
  drills: [record],
  days: [day],
  weeks: [week],
  majorGoal: { text: 'Hold steady in wind', editedAt: '2026-01-01T00:00:00Z' },
};

/**
 * What every store must do, wherever it keeps things. Run on each adapter.
 * @param name the adapter's name, for the report.
 * @param open opens a fresh, empty store.
 * @param reopen opens what an earlier store wrote, where the adapter outlives a store.
 */
export function describeStore(name: string, open: () => Promise<Store>, reopen?: () => Promise<Store>): void {
  describe(`a store on ${name}`, () => {
    it('starts empty, with a kit that needs no set-up', async () => {
      const store = await open();
      expect(await store.programs()).toEqual([]);
      expect(await store.journal()).toEqual({ drills: [], days: [], weeks: [] });
      expect(await store.running()).toBeUndefined();
      expect(await store.kit()).toEqual(createKit());
      expect((await store.kit()).soundLevel).toBe(0.7);
    });

    it('gives back what was put', async () => {
      const store = await open();
      await store.replaceJournal(journal);
      await store.putProgram(program);
      await store.putKit({ ...createKit(), drawWeightLbf: 38, hand: 'left' });
      await store.putRunning(running);
      const read = reopen === undefined ? store : await reopen();
      expect(await read.programs()).toEqual([program]);
      expect(await read.journal()).toMatchObject(journal);
      expect(await read.kit()).toMatchObject({ drawWeightLbf: 38, hand: 'left', bow: 'recurve' });
      expect(await read.running()).toEqual(running);
      await read.removeProgram(program.id ?? '');
      await read.putRunning(undefined);
      expect(await read.programs()).toEqual([]);
      expect((await read.journal()).removed).toMatchObject([{ of: 'opened', key: program.id }]);
      expect(await read.running()).toBeUndefined();
    });

    it('writes a rep and the running drill together', async () => {
      const store = await open();
      await store.writeRep(record, running);
      const read = reopen === undefined ? store : await reopen();
      expect((await read.journal()).drills).toEqual([record]);
      expect(await read.running()).toEqual(running);
    });

    it('replaces a record of the same id, and keeps one drill of each', async () => {
      const store = await open();
      await store.putDrills([record, { ...record, id: 'drill-2' }]);
      await store.putDrill({ ...record, effort: 6 });
      const { drills } = await store.journal();
      expect(drills).toHaveLength(2);
      expect(drills.find((one) => one.id === 'drill-1')?.effort).toBe(6);
    });

    it('leaves a mark where a record was removed, and a merge does not bring it back', async () => {
      const store = await open();
      await store.putDrill(record);
      await store.removeDrills(['drill-1', 'nobody']);
      await store.mergeInto(journal);
      const { drills, removed } = await store.journal();
      expect(drills).toEqual([]);
      expect(removed).toMatchObject([{ of: 'drills', key: 'drill-1' }]);
      expect(JSON.stringify(removed)).not.toContain('Slow mornings');
    });

    it('merges another journal, and merging it again changes nothing', async () => {
      const store = await open();
      await store.putDay({ date: '2026-03-29', note: 'older words', editedAt: '2026-03-29T08:00:00Z' });
      await store.putWeek({ week: '2026-W12', goal: 'Ours' });
      await store.putMajorGoal({ text: 'Older goal', editedAt: '2025-12-31T23:59:59Z' });
      await store.mergeInto(journal);
      const once = await store.journal();
      expect(once.days).toEqual([{ ...day, note: 'older words', edits: { note: '2026-03-29T08:00:00Z' } }]);
      expect(once.weeks.map((page) => page.week)).toEqual(['2026-W12', '2026-W13']);
      expect(once.majorGoal?.text).toBe('Hold steady in wind');
      await store.mergeInto(journal);
      expect(await store.journal()).toEqual(once);
    });

    it('replaces the whole journal, which undoes a merge', async () => {
      const store = await open();
      await store.putDrill(record);
      const before = await store.journal();
      await store.mergeInto({ ...journal, drills: [{ ...record, id: 'theirs' }] });
      await store.replaceJournal(before);
      expect(await store.journal()).toEqual(before);
    });

    it('keeps its own copy of what it was given', async () => {
      const store = await open();
      const mine = structuredClone(record);
      await store.putDrill(mine);
      mine.note = 'changed afterwards';
      expect((await store.journal()).drills[0]?.note).toBeUndefined();
    });

    it('gives the same journal until something changes, and tells of changes', async () => {
      const store = await open();
      let heard = 0;
      const stop = store.subscribe(() => {
        heard += 1;
      });
      const first = await store.journal();
      expect(await store.journal()).toBe(first);
      await store.putDay(day);
      expect(heard).toBe(1);
      expect(await store.journal()).not.toBe(first);
      stop();
      await store.putDay({ ...day, note: 'x' });
      expect(heard).toBe(1);
    });

    it('refuses what is not a record, as the caller’s mistake', async () => {
      const store = await open();
      await expect(store.putDrill({ ...record, effort: 11 })).rejects.toThrow(TypeError);
      await expect(store.putProgram({ ...program, id: undefined })).rejects.toThrow(TypeError);
      expect(await store.journal()).toEqual({ drills: [], days: [], weeks: [] });
    });

    it('does calls in the order they were made', async () => {
      const store = await open();
      await Promise.all([1, 2, 3, 4, 5].map((feel) => store.putDay({ ...day, feel })));
      expect((await store.journal()).days[0]?.feel).toBe(5);
    });

    it('reports on itself', async () => {
      const store = await open();
      await store.replaceJournal(journal);
      const report = await store.integrityReport();
      expect(report.counts).toMatchObject({ opened: 0, drills: 1, days: 1, weeks: 1 });
      expect(report.setAside).toEqual([]);
      expect(report.unwrittenCount).toBe(0);
    });
  });
}
