import { parseProgram } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { addBlock, createEmptyDraft, type Draft, draftText, setValue } from './draft.ts';
import type { Json, Path } from './json-path.ts';
import { placeProblems } from './problem-places.ts';
import { readNumber } from './read-number.ts';

const fields = [
  '/title',
  '/blocks',
  '/blocks/0/hold',
  '/blocks/0/setRest',
  '/blocks/0/rest/seconds',
  '/blocks/0/ladder/rungs/0/until',
];
const start = createEmptyDraft('6d1a3a0c-52b7-4b8e-8d60-7f1f6a1b2c3d');

function placed(draft: Draft) {
  const parsed = parseProgram(draftText(draft));
  return placeProblems(parsed.ok ? [] : parsed.problems, fields);
}
const after = (path: Path, value: Json | undefined) => placed(setValue(start, path, value));

test('a valid draft has no problem', () => {
  expect(placed(start)).toEqual({ byField: new Map(), elsewhere: [] });
});

// Ranges are those of the program file page.
test('a wrong value is shown beside its field', () => {
  expect(after(['blocks', 0, 'hold'], 500).byField.get('/blocks/0/hold')).toEqual(['Expected at most 180. Found 500.']);
  expect(after(['blocks', 0, 'hold'], 'ten').byField.get('/blocks/0/hold')).toEqual([
    'Expected a number. Found “ten”.',
  ]);
  expect(after(['blocks', 0, 'rest'], { seconds: -1 }).byField.get('/blocks/0/rest/seconds')).toEqual([
    'Expected at least 0. Found -1.',
  ]);
});

test('a missing value is shown beside the field that is empty', () => {
  expect(after(['blocks', 0, 'hold'], undefined).byField.get('/blocks/0/hold')).toEqual([
    'Needed here. Expected a number.',
  ]);
  const two = setValue(addBlock(start), ['blocks', 0, 'setRest'], undefined);
  expect(placed(two).byField.get('/blocks/0/setRest')?.[0]).toMatch(/^Needed because another block follows/);
});

test('a broken rule between keys is shown where it can be fixed', () => {
  const ladder = { rungs: [{ raise: 'hold', by: 1, until: 2 }] };
  expect([...after(['blocks', 0, 'ladder'], ladder).byField.keys()]).toEqual(['/blocks/0/ladder/rungs/0/until']);
});

test('what has no field on the page goes to its top', () => {
  expect(after(['colour'], 'red').elsewhere).toHaveLength(1);
  expect(after(['blocks', 0, 'ladder'], { rungs: [] }).byField.get('/blocks')).toHaveLength(1);
});

test('numbers are read with a point or a comma, and anything else stays as it was typed', () => {
  expect(['30', ' 7,5 ', '7.5', '.5', '-0', '+3'].map(readNumber)).toEqual([30, 7.5, 7.5, 0.5, 0, 3]);
  expect(['', ' '].map(readNumber)).toEqual([undefined, undefined]);
  expect(['1e999', '0x10', '3 0', 'ten', '1.2.3', 'NaN'].map(readNumber)).toEqual([
    '1e999',
    '0x10',
    '3 0',
    'ten',
    '1.2.3',
    'NaN',
  ]);
});
