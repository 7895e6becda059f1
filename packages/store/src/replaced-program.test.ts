import { builtInPrograms } from '@larkhold/engine';
import { expect, it } from 'vitest';
import { readReplaced } from './replaced-program.ts';

const old = { ...builtInPrograms[0]!, id: 'mine', title: 'Mine' };
const next = { ...old, title: 'The coach’s' };
const at = '2026-11-25T06:00:00Z';
const row = (program: object) => ({ id: 'mine', program, editedAt: at });
const values = [{ table: 'opened', key: 'mine', before: row(old), after: row(next) }];
const kept = { title: 'Mine', programId: 'mine', at, taken: { values } };

it('is kept for a day, while what took its place stays as it came', () => {
  expect(readReplaced(kept, '2026-11-26T05:59:59Z', () => next)).toEqual(kept);
  expect(readReplaced(kept, '2026-11-26T06:00:00Z', () => next)).toEqual(kept);
  expect(readReplaced(kept, '2026-11-26T06:00:01Z', () => next)).toBeUndefined();
  expect(readReplaced(kept, at, () => ({ ...next, title: 'Edited' }))).toBeUndefined();
  expect(readReplaced(kept, at, () => undefined)).toBeUndefined();
});

it('is undefined where nothing of the kind was kept', () => {
  for (const odd of [
    undefined,
    null,
    7,
    {},
    { ...kept, at: 7 },
    { ...kept, at: 'noon' },
    { ...kept, taken: { values: [] } },
  ]) {
    expect(readReplaced(odd, at, () => next)).toBeUndefined();
  }
});

it('asks for the program itself, whatever else of its name came in with it', () => {
  const other = { table: 'days', key: 'mine', before: undefined, after: row(old) };
  const beside = { table: 'opened', key: 'other', before: undefined, after: row(old) };
  const both = { ...kept, taken: { values: [other, beside, ...values] } };
  expect(readReplaced(both, at, () => next)).toEqual(both);
});
