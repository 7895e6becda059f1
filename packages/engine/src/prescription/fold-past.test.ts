import { createHash } from 'node:crypto';
import { type Past, prescribe, todaysProgram } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyDay, anyLifePlan, type LifePlan, live } from '../../../../tests/fixtures/prescription/any-life.ts';
import { knowArcher } from '../archer/know-archer.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import { createJournal } from '../journal/merge-journals.ts';
import type { Program } from '../program/program.ts';
import { knowForSeason } from '../season/know-for-season.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { FOLD_VERSION, foldPast, pastHolds } from './fold-past.ts';
import { missedTwo, trialProgram, trialRecord } from './trial-history.ts';

/** A journal, and a day that parts it in two. */
interface Parted {
  plan: LifePlan;
  /** Where it is parted, as a share of its days. */
  share: number;
  /** Days from the last to the one that is asked about. */
  laterDays: number;
  order: readonly number[];
}
const anyParted: fc.Arbitrary<Parted> = fc.record({
  plan: fc
    .tuple(anyLifePlan(), fc.array(anyDay, { maxLength: 25 }))
    .map(([plan, more]) => ({ ...plan, events: [...plan.events, ...more] })),
  share: fc.integer({ min: 5, max: 100 }).map((percent) => percent / 100),
  laterDays: fc.oneof(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 500 })),
  order: fc.array(fc.nat(1000), { minLength: 20, maxLength: 20 }),
});

/** As an import leaves them: in no order. */
function shuffled<T>(rows: readonly T[], order: readonly number[]): T[] {
  return rows
    .map((row, at) => [row, order[at % order.length]! * 31 + (at % 7)] as const)
    .sort(([, one], [, other]) => one - other)
    .map(([row]) => row);
}

function partedAt({ plan, share, laterDays, order }: Parted) {
  const { days: lived, programs, archer } = live(plan);
  const last = lived.at(-1)!;
  const records = shuffled(last.record ? [...last.records, last.record] : last.records, order);
  const days = shuffled(last.entries, order);
  const first = lived[0]!.day;
  const today = dayOfNumber(last.day + laterDays);
  const before = dayOfNumber(Math.min(Math.round(first + share * (last.day - first + 1)), last.day + laterDays - 1));
  return { records, days, today, before, programs, archer };
}

const since = <T extends { date: string }>(rows: readonly T[], before: string): T[] =>
  rows.filter(({ date }) => date >= before);
/** As a disk gives it back. */
const throughJson = (past: Past | undefined): Past | undefined => past && JSON.parse(JSON.stringify(past));

describe('a folded past', { timeout: 300_000 }, () => {
  it('and the rest of a journal give what the whole journal gives', () => {
    let foldedCount = 0;
    const rules = new Set<string>();
    fc.assert(
      fc.property(anyParted, (parted) => {
        const { records, days, today, before, programs, archer } = partedAt(parted);
        const { ageYears } = archer;
        const past = throughJson(foldPast({ records, days, before, programs, ageYears }));
        if (!past) return;
        foldedCount += 1;
        const [lastRecords, lastDays] = [since(records, before), since(days, before)];
        expect(past.drillCount + lastRecords.length).toBe(records.length);
        expect(past.dayCount + lastDays.length).toBe(days.length);
        const rest = { records: lastRecords, days: lastDays, past };
        for (const program of programs) {
          expect(pastHolds(past, program, ageYears)).toBe(true);
          const whole = prescribe({ program, records, days, today, archer });
          for (const { rule } of whole.reasons) rules.add(rule);
          expect(prescribe({ program, ...rest, today, archer })).toEqual(whole);
        }
        const about = { programs, today, archer };
        const journal = { ...createJournal(), drills: records, days };
        expect(todaysProgram({ ...about, journal: { ...journal, drills: lastRecords, days: lastDays }, past })).toEqual(
          todaysProgram({ ...about, journal }),
        );
        const { tests: _, ...known } = knowArcher({ ...about, ...rest });
        const { tests: __, ...knownOfAll } = knowArcher({ ...about, records, days });
        expect(known).toEqual(knownOfAll);
        const { tests: ___, ...ofSeason } = knowForSeason({ ...rest, today, archer });
        const { tests: ____, ...ofSeasonAndAll } = knowForSeason({ records, days, today, archer });
        expect(ofSeason).toEqual(ofSeasonAndAll);
      }),
      { seed: 2041, numRuns: 600 },
    );
    expect(foldedCount).toBeGreaterThan(400);
    expect(rules.size).toBeGreaterThan(25); // else most of the rules were never asked
  });

  const program = trialProgram();
  const records = ['2026-09-01', '2026-09-02', '2026-09-04', '2026-10-20'].map((date) => trialRecord(date, 30));
  const foldedBy = (more: { records?: DrillRecord[]; days?: DayEntry[]; programs?: Program[]; before?: string } = {}) =>
    foldPast({ records, before: '2026-10-01', programs: [program], ...more });

  it('is not made where there is nothing before the day, or where a date does not exist', () => {
    expect(foldedBy({ before: '2026-09-01' })).toBeUndefined();
    expect(foldedBy({ records: [...records, trialRecord('2026-02-30', 30)] })).toBeUndefined();
  });

  it('refuses records of its own time, days of its own time, and programs that it does not hold', () => {
    const past = foldedBy()!;
    const today = '2026-10-21';
    const given = { program, past, today, records: records.slice(3) };
    expect(prescribe(given)).toEqual(prescribe({ program, today, records }));
    expect(() => prescribe({ ...given, records })).toThrow(RangeError);
    expect(() => prescribe({ ...given, days: [{ date: '2026-09-30', pain: true }] })).toThrow(RangeError);
    expect(() => prescribe({ ...given, records: [], today: '2026-10-01' })).toThrow(RangeError);
    const other = trialProgram({ reps: 6 });
    expect(pastHolds(past, other)).toBe(false);
    expect(() => prescribe({ ...given, program: other })).toThrow('"Weekday"');
    // Over 45 what is not used is lost faster: a fold for somebody younger does not serve them.
    expect(pastHolds(past, program, 60)).toBe(false);
    expect(() => prescribe({ ...given, archer: { ageYears: 60 } })).toThrow(RangeError);
  });

  it('counts removed things as gone', () => {
    const removed = records.map((one, at) => (at === 1 ? { ...one, removed: true as const } : one));
    expect(foldedBy({ records: removed })).toMatchObject({ drillCount: 2, dayCount: 0 });
  });

  // Turned red? What a fold gives has changed: raise FOLD_VERSION and write the new fingerprint here, so that no device goes on from an old one.
  it('is of this version of the rules', () => {
    const from = dayNumber('2025-01-06');
    const long = Array.from({ length: 120 }, (_, at) => {
      const date = dayOfNumber(from + at * 2 + (at > 60 ? 25 : 0) + (at > 90 ? 200 : 0));
      const missed = at % 17 === 5 || at % 17 === 6 ? missedTwo : {};
      const more = { effort: (at * 7) % 11, ...(at === 40 ? { pain: true } : at > 40 ? { pain: false } : {}) };
      return trialRecord(date, 30 + (at % 4) * 5, missed, { ...more, onFingersLbf: 30, durationMs: 600_000 });
    });
    const days = [{ date: '2025-03-01', arrows: [{ kind: 'practice' as const, count: 90 }] }];
    const past = foldPast({ records: long, days, before: '2026-12-01', programs: [program] });
    const fingerprint = createHash('sha256').update(JSON.stringify(past)).digest('hex').slice(0, 16);
    expect([FOLD_VERSION, fingerprint]).toEqual([6, '255ca9be5a666684']);
  });
});
