import { builtInPrograms, createJournal } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import { expect, test } from 'vitest';
import { daysPerWeekOf, planFor } from './plan-settings.ts';

const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const view = { journal: createJournal(), kit: createKit(), today: '2026-11-25' };

test('days a week: as chosen, else as the last week’s page plans, else three', () => {
  expect(daysPerWeekOf(view)).toBe(3);
  const weeks = [
    { week: '2026-W47', plannedDays: [1, 2, 3, 4, 5] },
    { week: '2026-W40', plannedDays: [1] },
    { week: '2026-W48', goal: 'Calm' },
  ];
  const journal = { ...createJournal(), weeks };
  expect(daysPerWeekOf({ ...view, journal })).toBe(5);
  expect(daysPerWeekOf({ journal, kit: { ...view.kit, plan: { daysPerWeek: 2 } } })).toBe(2);
});

test('weeks in order, with deload as the file says, and the two weeks before a competition lighter', () => {
  const plain = planFor(view, holding, 8);
  expect(plain.map(({ week }) => week).slice(0, 3)).toEqual(['2026-W48', '2026-W49', '2026-W50']);
  // The file's ladder: every fourth training week is lighter.
  expect(plain.filter(({ kind }) => kind === 'deload').map(({ week }) => week)).toEqual(['2026-W51', '2027-W02']);
  const kit = { ...view.kit, plan: { competitionDay: '2027-01-10' } };
  const tapered = planFor({ ...view, kit }, holding, 8);
  expect(tapered.filter(({ kind }) => kind === 'taper').map(({ week }) => week)).toEqual(['2026-W53', '2027-W01']);
  const lastDays = tapered
    .flatMap(({ rows }) => rows)
    .filter(({ date }) => date >= '2027-01-09' && date <= '2027-01-10');
  expect(lastDays.map(({ kind }) => kind)).toEqual(['competition']);
});

test('age limits the plan as it limits today', () => {
  const kit = { ...view.kit, ageBand: 'under 12' as const };
  const rows = planFor({ ...view, kit }, holding, 12).flatMap((week) => week.rows);
  expect(rows.flatMap(({ drills }) => drills).every(({ addedWeightLbf }) => addedWeightLbf === 0)).toBe(true);
});
