import type { DrillRecord } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { heldMonths } from './held-months.ts';

const drill = (
  date: string,
  heldMs: number,
  outcome: 'held' | 'short' = 'held',
  tool: 'bow' | 'band' = 'bow',
): DrillRecord => ({
  ...{ id: `${date}-${heldMs}`, program: 'Attic mornings', date, tool },
  ...{ startedAt: `${date}T06:00:00+00:00`, endedAt: `${date}T06:10:00+00:00` },
  reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 30_000, heldMs, outcome }],
});

test('each four weeks give their longest whole hold, oldest first', () => {
  const drills = [
    drill('2026-11-20', 30_000),
    drill('2026-11-10', 32_000),
    drill('2026-09-20', 20_000),
    drill('2026-11-21', 40_000, 'short'),
  ];
  // 2026-09-20 is 66 days before the 25 November: two whole four weeks back, counted by hand.
  expect(heldMonths(drills, 'bow', '2026-11-25')).toEqual([
    { day: '2026-09-30', longestMs: 20_000 },
    { day: '2026-11-25', longestMs: 32_000 },
  ]);
});

test('another tool and what lies ahead or more than half a year back say nothing', () => {
  const drills = [
    drill('2026-11-20', 30_000, 'held', 'band'),
    drill('2026-11-26', 30_000),
    drill('2025-11-26', 30_000),
  ];
  expect(heldMonths(drills, 'bow', '2026-11-25')).toEqual([]);
});
