import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, inputOf, live } from '../../../../tests/fixtures/prescription/any-life.ts';
import type { DrillRecord, RepRecord } from '../journal/drill-record.ts';
import { prescribe } from '../prescription/prescribe.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { dayOfNumber } from '../units/calendar-day.ts';
import { knowArcher } from './know-archer.ts';
import { testResults } from './test-results.ts';

const today = '2026-11-25';
const longest = builtInPrograms.find(({ measure }) => measure === 'longest-hold-seconds');
const baseline = builtInPrograms.find(({ measure }) => measure === 'rep-where-form-fails')!;

function drill(date: string, reps: Partial<RepRecord>[], more: Partial<DrillRecord> = {}): DrillRecord {
  const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' } as const;
  return {
    ...{ id: date, program: 'Holding', date, startedAt: `${date}T06:30:00Z`, endedAt: `${date}T07:00:00Z` },
    reps: reps.map((one, at) => ({ ...rep, rep: at, ...one })),
    ...more,
  };
}

describe('what is known', () => {
  it('is the same however it was come by: folded day by day, from nothing, in another order', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan); // asks for every day as it comes, so that checkpoints are kept and continued
        const last = life.days.at(-1)!;
        const input = inputOf(life, last);
        const { records, days: entries, archer } = input;
        const known = { records, days: entries, today: input.today, archer };
        const fresh = structuredClone({ ...input, records: [...records].reverse(), days: [...entries].reverse() });
        expect(prescribe(fresh)).toEqual(prescribe(input));
        expect(knowArcher({ ...fresh, programs: life.programs })).toEqual(
          knowArcher({ ...known, programs: life.programs }),
        );
        // A late edit: the first drill is removed, and put back.
        const without = { ...input, records: records.slice(1) };
        expect(prescribe(without)).toEqual(prescribe(structuredClone(without)));
        expect(prescribe(input)).toEqual(last.given);
      }),
      { seed: 201, numRuns: 500 },
    );
  }, 300_000);

  it('takes let-downs for form and full holds as lower bounds, tired ones as values, and the rest as nothing', () => {
    const short = (why: RepRecord['why'], heldMs: number) => ({ heldMs, outcome: 'short' as const, why });
    const capacityAfter = (...reps: Partial<RepRecord>[]) =>
      knowArcher({ records: [drill('2026-11-20', reps)], today }).capacity[0];
    expect(capacityAfter({}, short('form', 10_000))).toMatchObject({ atLeastSeconds: 30 });
    expect(capacityAfter({}, short('form', 10_000))).not.toHaveProperty('likelySeconds');
    expect(capacityAfter({}, short(undefined, 10_000))).not.toHaveProperty('likelySeconds');
    expect(capacityAfter(short('interrupted', 10_000))).toBeUndefined();
    expect(capacityAfter(short('tired', 18_000))).toMatchObject({ likelySeconds: 18, likelyFrom: 'failures' });
  });

  it('counts half of the work before a hold that failed late, and all of it for the most that it may be', () => {
    // Held 30 s twice and let down tired at 20 s: with 60 s between, 2 ** (-60 / 72) = 0.561 of what was used up is left each time, 26.3 s at the third.
    const late = drill('2026-11-20', [{}, {}, { heldMs: 20_000, outcome: 'short', why: 'tired' }]);
    const [bow] = knowArcher({ records: [late], today }).capacity;
    expect(bow!.likelySeconds).toBeCloseTo(20 + 26.28 / 2, 1);
    expect(bow!.atMostSeconds).toBeCloseTo(1.28 * (20 + 26.28), 0);
  });

  it('keeps the longest hold that stayed whole beside the longest hold, where a camera saw it', () => {
    const seen = (wholeMs: number) => ({ seen: { fromMs: 0, toMs: 30_000, moved: ['elbow' as const], wholeMs } });
    const records = [drill('2026-11-20', [seen(9_000), seen(14_000)]), drill('2026-11-22', [{}, seen(12_000)])];
    const [bow] = knowArcher({ records, today }).capacity;
    expect(bow).toMatchObject({ atLeastSeconds: 30, wholeSeconds: 14, evidence: ['2026-11-20', '2026-11-22'] });
    expect(knowArcher({ records: [drill('2026-11-20', [{}])], today }).capacity[0]).not.toHaveProperty('wholeSeconds');
  });

  it('reads what was seen where it was seen: a full hold of the clock that the camera saw let down does not count', () => {
    const early = drill('2026-11-20', [{ seen: { fromMs: 0, toMs: 11_000 } }]);
    expect(knowArcher({ records: [early], today }).capacity).toEqual([]);
    const late = drill('2026-11-20', [{ seen: { fromMs: 4_000, toMs: 30_100 } }]);
    expect(knowArcher({ records: [late], today }).capacity).toEqual([]);
  });

  it('counts the weight of the day: by Frey Law & Avin 2010, endurance goes with the load to the -1.83', () => {
    const heavier = drill('2026-11-20', [{ heldMs: 18_000, outcome: 'short', why: 'tired' }], {
      onFingersLbf: 44,
      tool: 'bow',
    });
    const [bow] = knowArcher({ records: [heavier], today, archer: { onFingersLbf: 40 } }).capacity;
    expect(bow?.likelySeconds).toBeCloseTo(18 * 1.1 ** 1.83, 6);
    expect(bow?.atLbf).toBe(40);
  });

  it('keeps tools apart', () => {
    const records = [
      drill('2026-11-19', [{ heldMs: 50_000, prescribedMs: 50_000 }], { tool: 'band' }),
      drill('2026-11-20', [{}], { tool: 'bow' }),
    ];
    const { capacity } = knowArcher({ records, today });
    expect(capacity.map(({ tool, atLeastSeconds }) => [tool, atLeastSeconds])).toEqual([
      ['band', 50],
      ['bow', 30],
    ]);
  });

  it('does not take an open question for "no"', () => {
    const stateAfter = (...answers: (boolean | undefined)[]) => {
      const days = answers.map((pain, at) => ({ date: dayOfNumber(20_000 + at), pain }));
      return knowArcher({ records: [], days, today: dayOfNumber(20_000 + answers.length) }).pain.state;
    };
    expect(stateAfter()).toBe('unknown');
    expect(stateAfter(false)).toBe('clear');
    expect(stateAfter(true)).toBe('mimed');
    expect(stateAfter(true, undefined, undefined, undefined)).toBe('mimed');
    expect(stateAfter(true, false, false)).toBe('band');
    expect(stateAfter(true, false, false, false, false)).toBe('light-bow');
    expect(stateAfter(true, false, false, false, false, false, false)).toBe('bow');
    expect(stateAfter(true, false, false, false, false, false, false, false, false)).toBe('clear');
    expect(stateAfter(true, false, false, false, true)).toBe('mimed');
  });
});

describe('tests', () => {
  const ofBaseline = (date: string, failsAt: number) =>
    drill(
      date,
      Array.from({ length: failsAt }, (_, at) =>
        at === failsAt - 1 ? { outcome: 'short' as const, heldMs: 9000 } : {},
      ),
      {
        ...{ program: baseline.title, programId: baseline.id, kind: 'test' },
      },
    );

  it('are scored by the rep at which form fails, and a tenth is no news', () => {
    const results = testResults([
      ofBaseline('2026-10-01', 10),
      ofBaseline('2026-11-01', 11),
      ofBaseline('2026-11-20', 15),
    ]);
    expect(results.map(({ value, isAtLeast }) => [value, isAtLeast])).toEqual([
      [10, false],
      [11, false],
      [15, false],
    ]);
    expect(results.map(({ change }) => change?.isNews)).toEqual([undefined, false, true]);
  });

  it('are scored in seconds where that is the measure', () => {
    const test = { program: longest!.title, programId: longest!.id, kind: 'test' as const };
    const [result] = testResults([
      drill('2026-11-20', [{ prescribedMs: 120_000, heldMs: 41_500, outcome: 'short' }], test),
    ]);
    expect(result).toMatchObject({ measure: 'longest-hold-seconds', value: 41.5, isAtLeast: false });
  });
});
