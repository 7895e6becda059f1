import { builtInPrograms, formatProgram, parseProgram } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  addBlock,
  blocksOf,
  createDraft,
  createEmptyDraft,
  type Draft,
  draftText,
  duplicateBlock,
  moveBlock,
  removeBlock,
  setValue,
} from './draft.ts';
import { createHistory, edit, endEdit, redo, undo } from './edit-history.ts';

const newId = '6d1a3a0c-52b7-4b8e-8d60-7f1f6a1b2c3d';
const titles = (draft: Draft) => blocksOf(draft).map((block) => (block as { title: string }).title);
const named = (...names: string[]) =>
  names
    .slice(1)
    .reduce(
      (draft, title) => addBlock(draft, { ...(blocksOf(draft)[0] as object), title }),
      setValue(createEmptyDraft(newId), ['blocks', 0, 'title'], names[0]),
    );

test('a draft of each built-in program is that program', () => {
  for (const program of builtInPrograms) {
    const parsed = parseProgram(draftText(createDraft(program)));
    expect(parsed.ok && formatProgram(parsed.program)).toBe(formatProgram(program));
  }
});

test('a copy has its own id and title', () => {
  const parsed = parseProgram(draftText(createDraft(builtInPrograms[0]!, { id: newId, title: 'Mine' })));
  expect(parsed).toMatchObject({ ok: true, program: { id: newId, title: 'Mine' } });
});

test('a new program and every way of changing its blocks gives a valid file', () => {
  let draft = createEmptyDraft(newId);
  for (const change of [
    addBlock,
    (d: Draft) => duplicateBlock(d, 0),
    (d: Draft) => moveBlock(d, 2, 0),
    (d: Draft) => removeBlock(d, 1),
  ]) {
    draft = change(draft);
    expect(parseProgram(draftText(draft))).toMatchObject({ ok: true });
  }
  expect(blocksOf(draft)).toHaveLength(2);
});

test('blocks keep their keys when they move', () => {
  const draft = named('a', 'b', 'c');
  const down = moveBlock(draft, 0, 2);
  expect(titles(down)).toEqual(['b', 'c', 'a']);
  expect(down.blockKeys).toEqual([1, 2, 0]);
  expect(moveBlock(draft, 0, 3)).toBe(draft);
  const doubled = duplicateBlock(draft, 1);
  expect(titles(doubled)).toEqual(['a', 'b', 'b', 'c']);
  expect(doubled.blockKeys).toEqual([0, 1, 3, 2]);
});

test('the last block stays', () => {
  const draft = createEmptyDraft(newId);
  expect(removeBlock(draft, 0)).toBe(draft);
});

test('a removed value is not written, and an edit leaves the draft before as it was', () => {
  const draft = createEmptyDraft(newId);
  const text = draftText(draft);
  const changed = setValue(draft, ['blocks', 0, 'hold'], undefined);
  expect(draftText(changed)).not.toContain('"hold":');
  expect(draftText(draft)).toBe(text);
});

test('undoing everything gives back the start, redoing gives back the end', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.integer(), fc.option(fc.constantFrom('a', 'b'), { nil: undefined }))), (edits) => {
      let history = createHistory(-1);
      for (const [next, mark] of edits) history = edit(history, next, mark);
      const end = history.present;
      const steps = history.past.length;
      for (let step = 0; step < steps; step++) history = undo(history);
      expect(history.present).toBe(-1);
      expect(undo(history)).toBe(history);
      for (let step = 0; step < steps; step++) history = redo(history);
      expect(history.present).toBe(end);
    }),
  );
});

test('the last 200 steps can be taken back', () => {
  let history = createHistory(0);
  for (let step = 1; step <= 250; step++) history = edit(history, step);
  for (let step = 0; step < 250; step++) history = undo(history);
  expect(history.present).toBe(50);
});

test('typing in one field is one edit, until the field is left', () => {
  let history = createHistory('');
  for (const text of ['1', '12', '12.']) history = edit(history, text, 'hold');
  history = edit(endEdit(history), '12.5', 'hold');
  expect(undo(history).present).toBe('12.');
  expect(undo(undo(history)).present).toBe('');
  expect(redo(edit(undo(history), 'else')).present).toBe('else');
});
