import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { misfilled } from '../../../tests/fuzz/hostile-text.ts';
import type { Table } from './adapter.ts';
import type { SetAside } from './integrity-report.ts';
import { checkTable } from './stored-rows.ts';

// More with FUZZ_RUNS=100000, other ones with FUZZ_SEED, as in tests/fuzz.
const numRuns = Number(process.env.FUZZ_RUNS ?? 1000);
const seed = Number(process.env.FUZZ_SEED ?? 20_261_126);

const backups = ['v1', 'v1-notes', 'v1-milestones', 'v2'].map((name): Record<string, unknown[]> => {
  const file = new URL(`../../../tests/fixtures/backup/${name}.backup.json`, import.meta.url);
  return JSON.parse(readFileSync(file, 'utf8'));
});
const lists = ['opened', 'removed', 'drills', 'days', 'weeks', 'notes', 'milestones'] as const;
const goodRows = lists.flatMap((table) =>
  backups.flatMap((backup) => (backup[table] ?? []).map((value): [Table, string, unknown] => [table, 'key', value])),
);
const singles = backups.flatMap((backup): [Table, string, unknown][] => [
  ['single', 'kit', backup.kit],
  ['single', 'majorGoal', backup.majorGoal ?? { text: 'calm', editedAt: '2026-01-01T00:00:00Z' }],
  ['single', 'ownKit', backup.ownKit ?? {}],
]);
const hostileRow = fc
  .constantFrom(...goodRows, ...singles)
  .chain(([table, key, good]) =>
    fc
      .oneof(misfilled(good), fc.jsonValue(), fc.anything())
      .map((value): [Table, string, unknown] => [table, key, value]),
  );

it('a stored value of any kind is good, or set aside with what is wrong in words; what is good is good again', () => {
  const counts = { good: 0, aside: 0 };
  fc.assert(
    fc.property(hostileRow, ([table, key, value]) => {
      const aside: SetAside[] = [];
      const good = checkTable(table, new Map([[key, value]]), aside);
      const isKit = key === 'kit';
      expect(good.size + aside.length).toBe(isKit ? 1 + aside.length : 1);
      for (const one of aside) {
        expect(one.message.trim()).not.toBe('');
        expect(one.value).toBe(value); // as it was found
      }
      const again: SetAside[] = [];
      expect(checkTable(table, good, again)).toEqual(good);
      expect(again).toEqual([]);
      counts[aside.length > 0 ? 'aside' : 'good']++;
    }),
    { seed, numRuns },
  );
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect(Math.min(counts.good, counts.aside)).toBeGreaterThan(0);
  console.info(`stored rows: seed ${seed}, ${JSON.stringify(counts)}`);
}, 3_600_000);
