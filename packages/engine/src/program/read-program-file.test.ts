import { expect, test } from 'vitest';
import { builtInPrograms } from './built-in-programs.ts';
import { formatProgram } from './format-program.ts';
import type { Program } from './program.ts';
import { asAnother, inPlaceOf, readProgramFile } from './read-program-file.ts';

const newId = () => '00000000-0000-4000-8000-000000000001';
const [first] = builtInPrograms as readonly [Program];
const stranger: Program = { ...first, id: undefined, title: 'Attic mornings' };

test('a file without an id is given one', () => {
  const read = readProgramFile('a.drill.json', formatProgram(stranger), builtInPrograms, newId);
  expect(read).toMatchObject({ kind: 'new', program: { id: newId(), title: 'Attic mornings' } });
});

test('the same id or the same title is found in the rack', () => {
  const renamed = formatProgram({ ...first, title: 'Renamed' });
  expect(readProgramFile('a', renamed, builtInPrograms, newId)).toMatchObject({ kind: 'same', there: first });
  const sameTitle = formatProgram({ ...first, id: undefined });
  expect(readProgramFile('a', sameTitle, builtInPrograms, newId)).toMatchObject({ kind: 'same', there: first });
});

test('a broken file gives every problem with its place', () => {
  const text = formatProgram(stranger)
    .replace('"hold": 5', '"hold": -5')
    .replace('"tool": "light-bow"', '"tool": "hand"');
  const read = readProgramFile('a', text, builtInPrograms, newId);
  expect(read.kind).toBe('broken');
  if (read.kind !== 'broken') return;
  expect(read.problems.map(({ pointer }) => pointer)).toEqual(['/tool', '/blocks/0/hold']);
  // Lines of the canonical text, counted by hand.
  expect(read.problems.every(({ line, column }) => line > 1 && column > 1)).toBe(true);
});

test('keeping both gives the newcomer its own id and title; replacing keeps the old identity', () => {
  const another = asAnother(first, builtInPrograms, newId);
  expect(another).toMatchObject({ id: newId(), title: `${first.title} (2)` });
  expect(inPlaceOf({ ...stranger, id: newId() }, first)).toMatchObject({ id: first.id, title: 'Attic mornings' });
});
