import { expect, inject, it } from 'vitest';
import { cards, liveDays } from '../soak/year.ts';

// `npm run soak` lives a whole year; here it is the first days of one: each fault once.
const days = Number(process.env.LARKHOLD_SOAK_DAYS ?? cards.length);
const seed = Number(process.env.LARKHOLD_SOAK_SEED ?? 20261125);

it(
  `${days} days of drills, kills, sleeps, full disks, second tabs, imports and corrections lose no rep`,
  async () => {
    const startedMs = performance.now();
    const report = await liveDays(inject('address'), days, seed, (day) => {
      if (day % 30 === 29) console.log(`${day + 1} days in ${Math.round((performance.now() - startedMs) / 1000)} s`);
    });
    console.log(JSON.stringify(report, null, 2));
    expect(report.differences).toEqual([]);
    expect(report.repsLost).toBe(0);
    expect(report.faults).toEqual([]);
    // Each kind, but for the day on which nothing goes wrong.
    if (days >= cards.length) expect(Object.keys(report.survived).length).toBeGreaterThanOrEqual(cards.length - 1);
    // Bounded: what is kept in the page grows with the journal alone, some kilobytes a drill. A page that was left may stay until the next one is; none
    // more does: the page at the line is as large after a month as after a day.
    expect(report.late.listeners).toBeLessThan(report.early.listeners + 60);
    expect(report.late.nodes).toBeLessThan(report.early.nodes + 3000);
    expect(report.late.heapMb).toBeLessThan(report.early.heapMb + 10 + report.drills * 0.05);
  },
  120_000 + days * 20_000,
);
