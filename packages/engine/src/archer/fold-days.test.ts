import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldDays } from './fold-days.ts';
import type { LoggedDay } from './logged-day.ts';

/** What was done to a history before it is asked about again, at a place in it. */
const anyChange = fc.record({
  do: fc.constantFrom('add', 'add', 'add', 'add many', 'replace', 'remove', 'insert', 'cut', 'copy'),
  at: fc.nat(200),
  askAt: fc.nat(200),
});

function changed(days: readonly LoggedDay[], kind: string, at: number, day: () => LoggedDay): LoggedDay[] {
  const place = days.length === 0 ? 0 : at % days.length;
  if (kind === 'add') return [...days, day()];
  if (kind === 'add many') return [...days, ...Array.from({ length: 40 }, day)];
  if (kind === 'replace') return days.map((one, index) => (index === place ? day() : one));
  if (kind === 'remove') return days.filter((_, index) => index !== place);
  if (kind === 'insert') return [...days.slice(0, place), day(), ...days.slice(place)];
  return kind === 'cut' ? days.slice(0, place) : [...days];
}

describe('a fold over days', () => {
  it('gives what a fold from nothing gives, whatever was asked before and however the history was changed', () => {
    fc.assert(
      fc.property(fc.array(anyChange, { minLength: 1, maxLength: 40 }), (changes) => {
        let made = 0;
        const day = (): LoggedDay => ({ day: made++, drills: [] });
        // The order counts, and every day of it.
        const step = (state: number, one: LoggedDay): number => (state * 31 + one.day + 7) % 1_000_003;
        const fold = foldDays(1, step, (state) => -state);
        let days: LoggedDay[] = [];
        const earlier: LoggedDay[][] = [];
        for (const { do: kind, at, askAt } of changes) {
          days = changed(days, kind, at, day);
          earlier.push(days);
          if (askAt % 3 === 0) fold.ahead(days, at);
          for (const asked of [days, earlier[askAt % earlier.length]!]) {
            for (const count of [asked.length, askAt % (asked.length + 1), 0]) {
              expect(fold.after(asked, count)).toBe(asked.slice(0, count).reduce(step, 1));
            }
            expect(fold.notes(asked)).toEqual(asked.map((_, index) => -asked.slice(0, index + 1).reduce(step, 1)));
          }
        }
      }),
      { seed: 318, numRuns: 150 },
    );
  });

  it('can be folded ahead in parts, and then has nothing left to do', () => {
    let steps = 0;
    const fold = foldDays(0, (state) => {
      steps += 1;
      return state + 1;
    });
    const days = Array.from({ length: 100 }, (_, day): LoggedDay => ({ day, drills: [] }));
    for (const count of [10, 64, 64, 100, 200]) {
      fold.ahead(days, count);
      expect(steps).toBe(Math.min(100, count));
    }
    expect(fold.after(days, 100)).toBe(100);
    expect(steps).toBe(100);
  });

  it('takes one step for one more day, and some for a day that was changed late', () => {
    let steps = 0;
    const fold = foldDays(0, (state) => {
      steps += 1;
      return state + 1;
    });
    const days = Array.from({ length: 1000 }, (_, day): LoggedDay => ({ day, drills: [] }));
    fold.after(days, 1000);
    steps = 0;
    fold.after([...days, { day: 1000, drills: [] }], 1001);
    expect(steps).toBe(1);
    steps = 0;
    fold.after([...days.slice(0, -5), { day: 995, drills: [] }, ...days.slice(-4)], 1000);
    expect(steps).toBeLessThanOrEqual(32 + 5);
  });
});
