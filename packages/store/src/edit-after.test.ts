import 'fake-indexeddb/auto';
import { createJournal, type DayEntry } from '@larkhold/engine';
import { expect, it } from 'vitest';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import { record } from './trial/trial-record.ts';

const open = () => createLocalStore({ adapter: createMemoryAdapter(), now: () => '2026-05-01T08:00:00.000Z' });

// The clock was three hours ahead at the first edit and had been put right before the second.
const first = '2026-05-01T13:00:00.000Z';
const second = '2026-05-01T10:00:00.000Z';

it('a drill that is put right after the clock was set back stays so through a merge with an older copy', async () => {
  const store = open();
  await store.putDrill({ ...record, note: 'zeal', editedAt: first });
  const copy = await store.journal();
  await store.putDrill({ ...record, note: 'as it was', editedAt: second });
  await store.mergeInto(copy);
  expect((await store.journal()).drills).toEqual([
    { ...record, note: 'as it was', editedAt: '2026-05-01T13:00:00.001Z' },
  ]);
});

it('so do a day, a week page, a note, a milestone and the major goal', async () => {
  const store = open();
  const day: DayEntry = { date: '2026-05-01', feel: 3, editedAt: first };
  const week = { week: '2026-W18', focus: 'Zeal', editedAt: first };
  const note = { id: 'n', text: 'zeal', madeAt: first, editedAt: first };
  const milestone = { id: 'm', setDay: '2026-05-01', text: 'zeal', editedAt: first };
  await store.putDay(day);
  await store.putWeek(week);
  await store.putNote(note);
  await store.putMilestone(milestone);
  await store.putMajorGoal({ text: 'zeal', editedAt: first });
  const copy = await store.journal();
  await store.putDay({ ...day, feel: 2, editedAt: second });
  await store.putWeek({ ...week, focus: 'Calm', editedAt: second });
  await store.putNote({ ...note, text: 'calm', editedAt: second });
  await store.putMilestone({ ...milestone, text: 'calm', editedAt: second });
  await store.putMajorGoal({ text: 'calm', editedAt: second });
  await store.mergeInto(copy);
  const kept = await store.journal();
  expect(kept.days[0]?.feel).toBe(2);
  expect(kept.weeks[0]?.focus).toBe('Calm');
  expect(kept.notes?.[0]).toMatchObject({ text: 'calm' });
  expect(kept.milestones?.[0]).toMatchObject({ text: 'calm' });
  expect(kept.majorGoal?.text).toBe('calm');
});

it('what is put again unchanged, or with a later clock, keeps its instant', async () => {
  const store = open();
  await store.putDrill({ ...record, editedAt: second });
  await store.putDrill({ ...record, editedAt: second });
  expect((await store.journal()).drills[0]?.editedAt).toBe(second);
  await store.putDrill({ ...record, note: 'later', editedAt: first });
  expect((await store.journal()).drills[0]?.editedAt).toBe(first);
  await store.replaceJournal({ ...createJournal(), drills: [{ ...record, editedAt: second }] });
  expect((await store.journal()).drills[0]?.editedAt).toBe(second);
});
