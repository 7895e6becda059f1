import {
  compareJournals,
  createHandOver,
  formatHandOver,
  formatJournal,
  mergeJournals,
  parseHandOver,
  parseJournal,
  totalsByDay,
  weekTotals,
} from '@larkhold/engine';
import { bench, describe } from 'vitest';
import { createYears } from './journal-data.ts';

/**
 * Ten years of a drill a day, 30 reps each, and a squad of 30 archers over two years each. A run that takes longer than promised fails.
 * Run with `npx vitest bench --run tests/bench/journal.bench.ts --project unit`.
 */

const options = { iterations: 8, time: 0, warmupIterations: 1, warmupTime: 0, throws: true };
const within = (limitMs: number, work: () => unknown) => (): void => {
  const startMs = performance.now();
  work();
  const tookMs = performance.now() - startMs;
  if (tookMs > limitMs) throw new Error(`took ${tookMs.toFixed(0)} ms, at most ${limitMs} ms promised`);
};

const phone = createYears(3650, 30, 'phone');
const tablet = createYears(3650, 30, 'tablet');
const copy = structuredClone(phone);
const text = formatJournal(phone);
const squad = Array.from({ length: 30 }, (_, archer) =>
  formatHandOver(
    createHandOver({
      journal: createYears(730, 30, `archer-${archer}`),
      archerId: `archer-${archer}`,
      archer: `Archer ${archer}`,
      from: '2016-01-01',
      to: '2017-12-30',
      madeAt: '2017-12-30T20:00:00Z',
    }),
  ),
);

describe('ten years, 3,650 drills of 30 reps', () => {
  bench(
    'merge with another device’s',
    within(1000, () => mergeJournals(phone, tablet)),
    options,
  );
  bench(
    'merge with an equal copy',
    within(1000, () => mergeJournals(phone, copy)),
    options,
  );
  bench(
    'compare with another device’s',
    within(1000, () => compareJournals(phone, tablet)),
    options,
  );
  bench(
    'totals of every day',
    within(100, () => totalsByDay(phone)),
    options,
  );
  bench(
    'totals of a week',
    within(100, () => weekTotals(phone, '2025-W48')),
    options,
  );
  bench(
    'write as a file',
    within(1000, () => formatJournal(phone)),
    options,
  );
  bench(
    'read the file and merge it',
    within(1000, () => {
      const read = parseJournal(text);
      if (!read.ok) throw new Error('the file is not read');
      return mergeJournals(tablet, read.journal);
    }),
    options,
  );
});

describe('a squad of 30, two years each', () => {
  bench(
    'read all files',
    within(2000, () => squad.map(parseHandOver)),
    options,
  );
});
