import { builtInPrograms, createJournal, type DayEntry, type Journal } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import { expect, test } from 'vitest';
import { todaysPrescription } from './todays-prescription.ts';

const today = '2026-11-25';
const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const withDay = (entry: DayEntry): Journal => ({ ...createJournal(), days: [entry] });

test('the same journal, kit and program give the same object; another age gives another', () => {
  const view = { journal: createJournal(), today, kit: createKit() };
  expect(todaysPrescription(view, holding)).toBe(todaysPrescription(view, holding));
  const older = { ...view, kit: { ...view.kit, ageBand: '12 to 15' as const } };
  expect(todaysPrescription(older, holding)).not.toBe(todaysPrescription(view, holding));
});

// usarchery.org 2020, "Developing strength and endurance with SPTs": under 11 band only, most of 12 to 15 a light bow, from 16 their own.
// 11 is in no band and takes the lighter.
test.each([
  ['under 12', 'band'],
  ['12 to 15', 'light-bow'],
  ['16 to 17', 'bow'],
  ['50 and over', 'bow'],
] as const)('%s draws a %s', (ageBand, tool) => {
  const kit = { ...createKit(), ageBand };
  expect(todaysPrescription({ journal: createJournal(), today, kit }, holding).tool).toBe(tool);
});

test('the diary is read: heavy today, and yesterday evening’s arrows, both take reps off and say so', () => {
  const plain = todaysPrescription({ journal: createJournal(), today, kit: createKit() }, holding);
  const entries: DayEntry[] = [
    { date: today, readiness: 'heavy' },
    { date: '2026-11-24', arrows: [{ kind: 'practice', count: 160 }] },
  ];
  for (const entry of entries) {
    const eased = todaysPrescription({ journal: withDay(entry), today, kit: createKit() }, holding);
    expect(eased.blocks[0]!.reps).toBeLessThan(plain.blocks[0]!.reps);
    expect(eased.reasons.map(({ rule }) => rule)).toContain(entry.readiness ? 'heavy' : 'arrows');
  }
});

test('pain in the diary or in the last session makes a rest day, names the day, and says when to see somebody', () => {
  const plain = todaysPrescription({ journal: createJournal(), today, kit: createKit() }, holding);
  const start = { date: '2026-11-24', startedAt: '2026-11-24T06:30:00Z', endedAt: '2026-11-24T06:40:00Z' };
  const drill = { ...start, id: 'd', program: holding.title, programId: holding.id, reps: [], pain: true };
  for (const journal of [withDay({ date: '2026-11-24', pain: true }), { ...createJournal(), drills: [drill] }]) {
    const eased = todaysPrescription({ journal, today, kit: createKit() }, holding);
    expect(eased.rest?.rule).toBe('painMimed');
    expect(eased.tool).toBe('band');
    expect(eased.blocks[0]!.reps).toBeLessThan(plain.blocks[0]!.reps / 2);
    expect(eased.cautions[0]).toMatch(/^There was pain on .*24/);
    expect(eased.cautions[0]).toMatch(/see a doctor or a physiotherapist if it stays/);
  }
});

test('a compound bow in the kit brings its caution', () => {
  const kit = { ...createKit(), bow: 'compound' as const };
  const { cautions } = todaysPrescription({ journal: createJournal(), today, kit }, holding);
  expect(cautions[0]).toMatch(/compound bow .* lets down often/);
});

test('a competition in the kit makes the days before it lighter', () => {
  const kit = { ...createKit(), plan: { competitionDay: '2026-11-29' } };
  const { reasons } = todaysPrescription({ journal: createJournal(), today, kit }, holding);
  expect(reasons.map(({ rule }) => rule)).toContain('taper');
});
