import { dayEntrySchema } from '@larkhold/engine';
import { createKit, kitSchema } from '@larkhold/store';
import { expect, test } from 'vitest';
import { builtInRoutines } from './built-in-routines.ts';
import { readRoutine, withWork } from './routine.ts';

const typed = {
  id: 'r1',
  kind: 'mobility',
  title: ' Hips ',
  lines: 'Circles, 10\r\n\n Squats, 8 ',
  minutes: '12',
} as const;

test('a routine is read as it is typed, and the kit takes it', () => {
  const read = readRoutine(typed);
  expect(read).toEqual({
    ok: true,
    routine: { id: 'r1', kind: 'mobility', title: 'Hips', lines: ['Circles, 10', 'Squats, 8'], minutes: 12 },
  });
  if (read.ok) expect(kitSchema.parse({ ...createKit(), routines: [read.routine] }).routines).toEqual([read.routine]);
});

test.each([
  [{ title: ' ' }, 'Not kept: expected a title of 1 to 120 characters.'],
  [{ title: 'x'.repeat(121) }, 'Not kept: expected a title of 1 to 120 characters.'],
  [{ lines: ' \n ' }, 'Not kept: expected 1 to 30 lines.'],
  [{ lines: 'x\n'.repeat(31) }, 'Not kept: expected 1 to 30 lines.'],
  [{ lines: 'x'.repeat(201) }, 'Not kept: expected lines of at most 200 characters.'],
  ...['', '0', '1.5', '241', 'ten', '1e999'].map(
    (minutes) => [{ minutes }, 'Not kept: expected 1 to 240 whole minutes.'] as const,
  ),
] as const)('what the kit does not take is reported: %j', (change, message) => {
  expect(readRoutine({ ...typed, ...change })).toEqual({ ok: false, message });
});

test('the built-in routines are such as the kit takes', () => {
  expect(kitSchema.shape.routines.parse(builtInRoutines())).toEqual(builtInRoutines());
});

test('a routine done is minutes of work in the diary, beside what is there', () => {
  const day = { date: '2026-11-25', note: 'Wet', work: [{ kind: 'fitness', minutes: 30 } as const] };
  const done = withWork(day, { kind: 'strength', minutes: 20, effort: 4 });
  expect(dayEntrySchema.parse(done)).toEqual({
    ...day,
    work: [
      { kind: 'fitness', minutes: 30 },
      { kind: 'strength', minutes: 20, effort: 4 },
    ],
  });
  expect(withWork({ date: '2026-11-25' }, { kind: 'mobility', minutes: 8 }).work).toEqual([
    { kind: 'mobility', minutes: 8 },
  ]);
  const full = {
    date: '2026-11-25',
    work: Array.from({ length: 50 }, () => ({ kind: 'fitness', minutes: 1 }) as const),
  };
  expect(withWork(full, { kind: 'mobility', minutes: 8 })).toBe(full);
});
