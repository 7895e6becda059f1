import { expect, it } from 'vitest';
import type { FormReading } from './judge-form.ts';
import { nameLiveMoves } from './name-live-moves.ts';

const reading = (part: FormReading['part'], cm = 3, isClear = true): FormReading => ({
  part,
  cm,
  fromMs: 9_000,
  isClear,
});

/** What is reported at each look. */
function told(...looks: FormReading[][]): string[][] {
  const moves = nameLiveMoves();
  return looks.map((look) => moves.look(look).map(({ part }) => part));
}

it('tells what two looks in a row see, and tells it once', () => {
  const shoulder = [reading('bowShoulder')];
  expect(told(shoulder, shoulder, shoulder, shoulder)).toEqual([[], ['bowShoulder'], [], []]);
  expect(told(shoulder, [], shoulder, [])).toEqual([[], [], [], []]);
});

it('says of the draw arm that it creeps only where it clearly goes one way, else that the elbow drops', () => {
  expect(told([reading('creep')], [reading('creep')])).toEqual([[], ['creep']]);
  expect(told([reading('creep', 3, false)], [reading('creep', 3, false)])).toEqual([[], ['elbow']]);
  // One look that is clear and one that is not are no two of the same.
  expect(told([reading('creep', 3, false)], [reading('creep')])).toEqual([[], []]);
});

it('has one word for the draw arm, and another one for the bow shoulder', () => {
  const elbow = [reading('elbow')];
  const all = [reading('elbow'), reading('creep'), reading('bowShoulder')];
  expect(told(elbow, elbow, all, all)).toEqual([[], ['elbow'], [], ['bowShoulder']]);
});

it('says nothing of 2 cm: a word for nothing disturbs', () => {
  expect(told([reading('elbow', 2)], [reading('elbow', 2)])).toEqual([[], []]);
});
