import { expect, test } from 'vitest';
import { reportWords } from './report-words.ts';

// Plain sentences of our own; no source.
test('a store in order is described in two sentences', () => {
  expect(
    reportWords({ where: 'disk', counts: { drills: 2, days: 1, single: 3 }, setAside: [], unwrittenCount: 0 }),
  ).toEqual(['Everything that was read is in order.', 'Read on this device: 2\u00a0drills, 1\u00a0day.']);
});

test('problems come first, and nothing is called lost', () => {
  const setAside = [{ table: 'drills', key: 'a', message: 'reps: expected array', value: 1 }];
  const trouble = { kind: 'full' as const, message: 'No room.' };
  expect(reportWords({ where: 'memory', trouble, counts: {}, setAside, unwrittenCount: 3 })).toEqual([
    'No room.',
    '3\u00a0changes have not reached the disk yet.',
    '1\u00a0value could not be read. Nothing was thrown away: what was found is kept aside and is in the file of all that is on the disk.',
    'Nothing is in memory yet.',
  ]);
});
