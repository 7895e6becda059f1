import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anyLifePlan,
  askedBy,
  drillOf,
  inputOf,
  isOf,
  live,
} from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayNumber, dayOfNumber } from '../../units/calendar-day.ts';

// Law: pain, effort, days away, arrows, weight and rest days are read over all programs; another program is no layoff.

const starter = builtInPrograms.find(({ title }) => title === 'Club starter')!;
const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;

describe('one body', { timeout: 300_000 }, () => {
  it('counts days away from the last draw, whatever was drawn', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        for (const { given, day, records, entries } of live(plan).days) {
          const away = given.reasons.find(({ rule }) => rule === 'away');
          if (!away) continue;
          const drawn = [
            ...records.filter(({ reps }) => reps.some(({ heldMs, outcome }) => heldMs > 0 || outcome !== 'skipped')),
            ...entries.filter(({ arrows }) => arrows?.some(({ count }) => count > 0)),
          ].map(({ date }) => dayNumber(date));
          expect(away.facts).toMatchObject({ days: day - Math.max(...drawn.filter((one) => one <= day)) });
        }
      }),
      { seed: 201, numRuns: 2000 },
    );
  });

  it('asks for no more after a hard drill of another program than after an easy one', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan);
        for (const lived of life.days) {
          const last = lived.records.at(-1);
          if (!last || isOf(lived.program, last) || last.kind === 'test' || lived.program.kind === 'test') continue;
          const withEffort = (effort: number) => {
            const records = [...lived.records.slice(0, -1), { ...last, effort }];
            return askedBy(prescribe({ ...inputOf(life, lived), records }));
          };
          const [easy, hard] = [withEffort(3), withEffort(10)];
          expect(hard.totalMs).toBeLessThanOrEqual(easy.totalMs);
          expect(hard.holdMs).toBeLessThanOrEqual(easy.holdMs);
        }
      }),
      { seed: 202, numRuns: 2000 },
    );
  });

  it('a month of another program is no month away, and its hard day is felt', () => {
    // Given a clean month of the holding program, a month of the club starter,
    let records: ReturnType<typeof drillOf>[] = [];
    for (let at = 0; at < 28; at++) {
      const program = at < 14 ? holding : starter;
      const given = prescribe({ program, records, today: dayOfNumber(20_000 + 2 * at) });
      const manner = at === 27 ? 'hard' : 'clean';
      records = [...records, drillOf(program, given, { manner, saysWhy: false }, at)];
    }
    // when the holding program comes back two days later, then nothing says days away, and the hard day does.
    const { reasons } = prescribe({ program: holding, records, today: dayOfNumber(20_056) });
    expect(reasons.some(({ rule }) => rule === 'away')).toBe(false);
    expect(reasons.some(({ rule }) => rule === 'effort')).toBe(true);
  });
});
