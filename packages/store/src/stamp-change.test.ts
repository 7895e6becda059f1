import 'fake-indexeddb/auto';
import { createJournal, type DayEntry } from '@larkhold/engine';
import { expect, it } from 'vitest';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import { record } from './trial/trial-record.ts';

const open = () => createLocalStore({ adapter: createMemoryAdapter(), now: () => '2026-05-01T08:00:00.000Z' });

// The clock was three hours ahead at the first edit and had been corrected before the second.
const first = '2026-05-01T13:00:00.000Z';
const second = '2026-05-01T10:00:00.000Z';

it('a drill that is corrected after the clock was set back stays so through a merge with an older copy', async () => {
  const store = open();
  await store.putDrill({ ...record, note: 'zeal', editedAt: first });
  const copy = await store.journal();
  await store.putDrill({ ...record, note: 'as it was', editedAt: second });
  await store.mergeInto(copy);
  expect((await store.journal()).drills).toEqual([
    { ...record, note: 'as it was', editedAt: '2026-05-01T13:00:00.001Z', edits: { session: first } },
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

it('each group of fields keeps its own instant; a field that is emptied stays so through a merge', async () => {
  const store = open();
  const day: DayEntry = { date: '2026-05-01', note: 'Windy', feel: 3, editedAt: second };
  await store.putDay(day);
  const copy = await store.journal();
  const { note: _gone, ...rest } = day;
  await store.putDay({ ...rest, editedAt: first });
  expect((await store.journal()).days).toEqual([{ ...rest, editedAt: first, edits: { feel: second, note: first } }]);
  await store.mergeInto(copy);
  expect((await store.journal()).days[0]).not.toHaveProperty('note');
});

it('an edit here keeps what only a newer app has written of the row', async () => {
  const store = open();
  await store.mergeInto({
    ...createJournal(),
    days: [{ date: '2026-05-01', mood: 'even', editedAt: second } as DayEntry],
  });
  await store.putDay({ date: '2026-05-01', feel: 3, editedAt: first });
  expect((await store.journal()).days[0]).toMatchObject({ mood: 'even', feel: 3 });
});

it('a removal after the clock went back stays so through a merge with a copy from before, and after a return', async () => {
  let now = '2027-05-01T08:00:00.000Z'; // a year ahead
  const store = createLocalStore({ adapter: createMemoryAdapter(), now: () => now });
  await store.putDrill({ ...record, note: 'zeal', editedAt: now });
  await store.putDay({ date: '2026-05-01', note: 'zeal', editedAt: now });
  const before = await store.journal();
  now = '2026-05-01T09:00:00.000Z';
  await store.removeDrills([record.id]);
  await store.putDay({ date: '2026-05-01', removed: true, editedAt: now });
  await store.mergeInto(before);
  const { drills, days, removed } = await store.journal();
  expect([drills, days]).toEqual([[], []]);
  expect(removed?.map(({ of }) => of).sort()).toEqual(['days', 'drills']);
  expect(JSON.stringify(removed)).not.toContain('zeal');

  // Put back: it is there again on all devices; removed once more by a clock that went back further, it is gone on all.
  await store.putDrill({ ...record, editedAt: now });
  await store.mergeInto(before);
  const returned = await store.journal();
  expect(returned.drills).toHaveLength(1);
  now = '2020-01-01T00:00:00.000Z';
  await store.removeDrills([record.id]);
  await store.mergeInto(returned);
  expect((await store.journal()).drills).toEqual([]);
});

it('a tablet whose clock is a year behind does not lose the edits it makes after it has met the others', async () => {
  const store = createLocalStore({ adapter: createMemoryAdapter(), now: () => '2025-05-01T08:00:00.000Z' });
  const theirs: DayEntry = { date: '2026-05-01', note: 'theirs', editedAt: '2026-05-01T08:00:00.000Z' };
  await store.mergeInto({ ...createJournal(), days: [theirs] });
  await store.journal();
  expect(store.instant()).toBe('2026-05-01T08:00:00.001Z');
  // Another device wrote the same evening, before this edit.
  await store.putDay({ date: '2026-05-02', note: 'mine', editedAt: store.instant() });
  const older: DayEntry = { date: '2026-05-02', note: 'older', editedAt: '2026-05-01T07:59:00.000Z' };
  await store.mergeInto({ ...createJournal(), days: [older] });
  expect((await store.journal()).days.find(({ date }) => date === '2026-05-02')?.note).toBe('mine');
  // A clock that is off by centuries is not followed.
  await store.mergeInto({ ...createJournal(), days: [{ date: '2026-05-03', editedAt: '2999-01-01T00:00:00Z' }] });
  await store.journal();
  expect(store.instant() < '2027').toBe(true);
});

it('the archer’s values of the kit are in the journal, the device’s are not, and defaults are nobody’s choice', async () => {
  const store = open();
  const kit = await store.kit();
  await store.putKit({ ...kit, soundLevel: 0.2 });
  expect((await store.journal()).ownKit).toBeUndefined();
  await store.putKit({ ...kit, soundLevel: 0.2, drawWeightLbf: 34, bow: 'barebow' });
  expect((await store.journal()).ownKit).toMatchObject({ drawWeightLbf: 34, bow: 'barebow' });
  expect(JSON.stringify(await store.journal())).not.toContain('soundLevel');
  // Another device shoots a heavier bow since; this one keeps its own sound.
  const ownKit = { drawWeightLbf: 36, editedAt: '2026-06-01T08:00:00.000Z' };
  await store.mergeInto({ ...createJournal(), ownKit });
  expect(await store.kit()).toMatchObject({ drawWeightLbf: 36, bow: 'barebow', soundLevel: 0.2 });
  await store.mergeInto({
    ...createJournal(),
    ownKit: { editedAt: '2026-07-01T08:00:00.000Z', edits: { drawWeightLbf: '2026-07-01T08:00:00.000Z' } },
  });
  expect((await store.kit()).drawWeightLbf).toBeUndefined();
});

it('the season is kept whole, and merged', async () => {
  const store = open();
  const document = { format: 'larkhold/season' as const, version: 1, weeks: [{ week: '2026-W18' }] };
  await store.putSeason(document);
  expect(await store.season()).toEqual(document);
  const later = { document: { ...document, weeks: [] }, editedAt: '2026-06-01T08:00:00.000Z' };
  await store.mergeInto({ ...createJournal(), season: later });
  expect(await store.season()).toEqual(later.document);
  await expect(store.putSeason({ ...document, format: 'other' as never })).rejects.toThrow(TypeError);
});

it('a device that has a name stamps with it', async () => {
  const store = open();
  store.nameDevice('phone1');
  await store.putDay({ date: '2026-05-01', feel: 3, editedAt: first });
  expect((await store.journal()).days[0]?.editedAt).toBe(`${first}~phone1`);
});
