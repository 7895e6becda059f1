import { expect, it } from 'vitest';
import { createFrozenWatch } from './frozen-watch.ts';

it('calls a picture frozen that has not changed for two seconds, until it changes', () => {
  const watch = createFrozenWatch();
  const frozen = [0, 1_000, 2_000, 2_100, 2_200].map((atMs) => watch.push(atMs === 2_200 ? 81 : 80, atMs));
  expect(frozen).toEqual([false, false, false, true, false]);
});

it('leaves a camera alone whose noise is never still', () => {
  const watch = createFrozenWatch();
  for (let index = 0; index < 100; index++) expect(watch.push(80 + (index % 3) * 0.01, index * 200)).toBe(false);
});
