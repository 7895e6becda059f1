import { builtInPrograms, type DrillRecord, dayNumber, dayOfNumber, planWeeks, prescribe } from '@larkhold/engine';
import { bench, describe } from 'vitest';
import { bestMs, quietMs } from './quiet-ms.ts';

/** Prescriptions from years of records, and into few minutes. Run with `npm run bench:engine`; it prints each best time and its ratio to the bar. */

const FIRST_DAY = dayNumber('2016-11-25');
const holding = builtInPrograms.find(({ title }) => title === 'Laddered holding')!;

/** A drill a day, 30 reps each, now and then one let down early. */
function createRecords(dayCount: number): DrillRecord[] {
  return Array.from({ length: dayCount }, (_, day) => {
    const date = dayOfNumber(FIRST_DAY + day);
    const startedAt = `${date}T06:30:00+01:00`; // with the archer's offset, as the app writes it
    const reps = Array.from({ length: 30 }, (_, at) => {
      const isShort = (day * 31 + at * 7) % 97 === 0;
      const place = { block: 0, set: Math.floor(at / 10), rep: at % 10, hand: 'usual' as const };
      return {
        ...place,
        prescribedMs: 30_000,
        heldMs: isShort ? 21_000 : 30_000,
        outcome: isShort ? 'short' : 'held',
      } as const;
    });
    return {
      ...{ id: `day-${day}`, program: holding.title, programId: holding.id, date, startedAt, endedAt: startedAt },
      ...{ reps: [...reps], effort: 5, prescribedReps: 30 },
    };
  });
}

const tenYears = structuredClone(createRecords(3650)); // as they come out of a store
const shuffled = tenYears.map((_, index) => tenYears[(index * 1009) % tenYears.length]!);
const todayAfter = (records: readonly DrillRecord[]) => dayOfNumber(FIRST_DAY + records.length);
const prescribeFrom = (records: readonly DrillRecord[]) =>
  prescribe({ program: holding, records, today: todayAfter(records) });

const twentyBlocks = {
  ...holding,
  blocks: Array.from({ length: 20 }, (_, index) => ({
    ...holding.blocks[0]!,
    ...{ title: `Block ${index + 1}`, sets: 5, reps: 12, hold: 4 + ((index * 7) % 13), setRest: 20 + index },
    ...{ rest: { seconds: index % 7 }, ladder: undefined },
  })),
};

function print(name: string, tookMs: number, barMs: number): void {
  console.log(`${name}: ${tookMs.toFixed(2)} ms, ${(tookMs / barMs).toFixed(2)} of the ${barMs} ms promised`);
}

/** Records as they come out of a store: no summary or fold of them is kept. */
function coldMs(): number {
  const records = structuredClone(tenYears);
  return quietMs(() => prescribeFrom(records));
}

/** Reads of every rep what a summary reads, and does no more: what the machine takes to fetch ten years from memory. */
function lookAt(records: readonly DrillRecord[]): number {
  let sum = 0;
  for (const { reps } of records)
    for (const { block, prescribedMs, heldMs, outcome, seen } of reps)
      sum += block + prescribedMs + heldMs + outcome.length + (seen === undefined ? 0 : 1);
  return sum;
}

function lookMs(): number {
  const records = structuredClone(tenYears);
  return quietMs(() => lookAt(records));
}

/** A day on from a known history: the median of a hundred. */
function oneMoreMs(hasDiary: boolean): number {
  let records = tenYears.slice(0, 3500);
  let days: { date: string; pain: boolean }[] = [];
  const took = tenYears.slice(3500, 3600).map((record) => {
    records = [...records, record];
    if (hasDiary) days = [...days, { date: record.date, pain: false }];
    const today = todayAfter(records);
    return quietMs(() => prescribe({ program: holding, records, days, today }));
  });
  return took.sort((a, b) => a - b)[50]!;
}

const sizes = [912, 1825, 3650];
const times = sizes.map((size) => {
  const records = tenYears.slice(0, size);
  return bestMs(() => prescribeFrom(records));
});
const ratios = times.slice(1).map((timeMs, at) => timeMs / times[at]!);
console.log(`prescribe over ${sizes.join(', ')} records: ${times.map((timeMs) => timeMs.toFixed(2)).join(', ')} ms`);
console.log(
  `twice the records take ${ratios.map((ratio) => ratio.toFixed(2)).join(' and ')} times as long; linear is 2`,
);
print('prescribe over 3,650 x 30', times.at(-1)!, 20);
print(
  'the same, out of order',
  bestMs(() => prescribeFrom(shuffled)),
  20,
);
const cold = Math.min(...Array.from({ length: 15 }, () => coldMs()));
const look = Math.min(...Array.from({ length: 15 }, () => lookMs()));
print('ten years that were never seen before, cold', cold, 15);
console.log(
  `that is ${(cold / look).toFixed(1)} times one plain look at every rep, ${look.toFixed(2)} ms in the same run`,
);
print('one more drill after ten years', oneMoreMs(false), 0.2);
print('the same, with a line in the diary', oneMoreMs(true), 0.2);
for (const minutes of [2, 12, 45, 120]) {
  const fit = () => prescribe({ program: twentyBlocks, records: [], today: '2026-11-25', minutes });
  const plain = bestMs(() => prescribe({ program: twentyBlocks, records: [], today: '2026-11-25' }));
  print(`twenty blocks of 5 x 12 into ${minutes} minutes`, bestMs(fit) - plain, 5);
}

describe('ten years, 3,650 drills of 30 reps', () => {
  bench('prescribe', () => void prescribeFrom(tenYears));
  bench('prescribe, out of order', () => void prescribeFrom(shuffled));
});

describe('a quarter ahead', () => {
  bench('plan 13 weeks of 3 days', () => {
    planWeeks({ program: holding, records: [], today: '2026-11-25', weeks: 13, daysPerWeek: 3 });
  });
});
