import { expect, test } from 'vitest';
import { milestonesShown } from './milestones-shown.ts';

test('open ones in the order they were written down, reached ones with the latest on top', () => {
  const { open, reached } = milestonesShown([
    { id: 'b', text: 'b', setDay: '2026-02-01' },
    { id: 'c', text: 'c', setDay: '2026-01-01', reachedDay: '2026-01-20' },
    { id: 'a', text: 'a', setDay: '2026-01-15' },
    { id: 'd', text: 'd', setDay: '2026-03-01', reachedDay: '2026-03-02' },
  ]);
  expect(open.map(({ id }) => id)).toEqual(['a', 'b']);
  expect(reached.map(({ id }) => id)).toEqual(['d', 'c']);
});
