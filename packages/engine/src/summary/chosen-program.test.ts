import { expect, test } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { chosenProgram } from './chosen-program.ts';

const [first, second, third] = builtInPrograms;
const drill = (program: typeof first, startedAt: string): DrillRecord => ({
  ...{ id: startedAt, program: program!.title, programId: program!.id, date: startedAt.slice(0, 10) },
  ...{ startedAt, endedAt: startedAt, reps: [] },
});
const drills = [drill(third, '2026-11-20T07:00:00+00:00'), drill(second, '2026-11-02T07:00:00+00:00')];

test('the chosen program is shown, whatever was drilled last', () => {
  expect(chosenProgram(builtInPrograms, second!.id, drills)).toBe(second);
});

test('without one it is the program drilled last, also when the chosen one is gone', () => {
  expect(chosenProgram(builtInPrograms, undefined, drills)).toBe(third);
  expect(chosenProgram(builtInPrograms, 'gone', drills)).toBe(third);
});

test('on a first run, or after drills of a program that is gone, it is the first', () => {
  expect(chosenProgram(builtInPrograms, undefined, [])).toBe(first);
  const gone: DrillRecord = { ...drill(third, '2026-11-21T07:00:00+00:00'), program: 'Attic', programId: 'gone' };
  expect(chosenProgram(builtInPrograms, undefined, [...drills, gone])).toBe(first);
  expect(chosenProgram([], undefined, [])).toBeUndefined();
});
