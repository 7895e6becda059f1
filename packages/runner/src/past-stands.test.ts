import { expect, test } from 'vitest';
import { PastStands } from './past-stands.ts';

test('a moment finds the stand that began last by then; of the last eight, and the oldest of them before', () => {
  const stands = new PastStands();
  expect(stands.at(0)).toBeUndefined();
  const stand = (index: number) => ({ state: 'running', step: { startMs: index } }) as never;
  for (let index = 1; index <= 8; index++) stands.add(index * 100, stand(index));
  expect([0, 100, 199, 200, 900].map((atMs) => stands.at(atMs))).toEqual([1, 1, 1, 2, 8].map(stand));
  stands.add(900, stand(9));
  expect([0, 199, 899, 900].map((atMs) => stands.at(atMs))).toEqual([2, 2, 8, 9].map(stand));
});
