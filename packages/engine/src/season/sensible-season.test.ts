import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dayNumber, dayOfNumber, mondayNumber } from '../units/calendar-day.ts';
import { dueToday } from './due-today.ts';
import { formatSeason } from './format-season.ts';
import { parseSeason } from './parse-season.ts';
import { seasonNotices } from './season-notices.ts';
import { type SensibleSeasonInput, sensibleSeason } from './sensible-season.ts';

const today = '2026-11-25';
const titleFor = (input: Omit<SensibleSeasonInput, 'today'>) =>
  sensibleSeason({ today, ...input }).blocks[0]!.days.wednesday![0]!.title;

const anyInput = fc.record({
  today: fc.integer({ min: 0, max: 40_000 }).map(dayOfNumber),
  ...{ ageYears: fc.constantFrom(undefined, 9, 13, 40), usualMinutes: fc.constantFrom(undefined, 5, 20, 45) },
  ...{ usualDays: fc.constantFrom(undefined, 1, 2, 3, 6), longestHoldSeconds: fc.constantFrom(undefined, 18, 38, 90) },
  tools: fc.constantFrom(undefined, ['band' as const], ['bow' as const]),
});

it('is a valid file without notices: two or three mornings a week, never on two days running', () => {
  fc.assert(
    fc.property(anyInput, (input) => {
      const season = sensibleSeason(input);
      expect(parseSeason(formatSeason(season))).toEqual({ ok: true, season });
      expect(seasonNotices(season)).toEqual([]);
      const monday = mondayNumber(dayNumber(input.today));
      const week = Array.from(
        { length: 8 },
        (_, at) => dueToday(season, { rowDays: 0 }, dayOfNumber(monday + at))[0]!.kind,
      );
      const count = week.slice(0, 7).filter((kind) => kind === 'program').length;
      expect(count >= 2 && count <= 3).toBe(true);
      if (input.ageYears !== undefined && input.ageYears < 16) expect(count).toBe(2);
      for (const [at, kind] of week.entries()) if (kind === 'program') expect(week[at + 1] ?? 'rest').toBe('rest');
    }),
    { numRuns: 300, seed: 20_261_135 },
  );
});

it('is the same on every day of its six weeks', () => {
  const from = sensibleSeason({ today: '2026-11-23' });
  for (let at = 0; at < 42; at++) {
    const day = dayOfNumber(dayNumber('2026-11-23') + at);
    expect(sensibleSeason({ today: day, firstDay: '2026-11-23' })).toEqual(from);
  }
  expect(sensibleSeason({ today: '2027-01-04', firstDay: '2026-11-23' }).blocks[0]!.from).toBe('2027-01-04');
});

it('begins with what the archer can hold and has time for', () => {
  expect(titleFor({})).toBe('Club starter');
  expect(titleFor({ longestHoldSeconds: 90 })).toBe('One set of ten');
  expect(titleFor({ longestHoldSeconds: 90, usualMinutes: 45 })).toBe('Holding');
  expect(titleFor({ longestHoldSeconds: 38, usualMinutes: 20 })).toBe('Twenty holds');
  expect(titleFor({ longestHoldSeconds: 18, usualMinutes: 45 })).toBe('Club starter');
  expect(titleFor({ longestHoldSeconds: 90, usualMinutes: 45, ageYears: 11 })).toBe('Club starter');
  expect(titleFor({ longestHoldSeconds: 90, tools: ['band'] })).toBe('Travel band');
});

const kindOn = (today: string, drilledDays: readonly string[], usualDays = 2) =>
  dueToday(sensibleSeason({ today, drilledDays, usualDays, firstDay: '2026-11-02' }), { rowDays: 0 }, today)[0]!.kind;

it('is due on the first day there is, and a missed morning stays due until it is done', () => {
  for (let at = 0; at < 7; at++) expect(kindOn(dayOfNumber(dayNumber(today) + at), [])).toBe('program');
  const after = (days: number) => kindOn(dayOfNumber(dayNumber(today) + days), [today]);
  expect([0, 1, 2, 3, 4, 5, 6, 7].map(after)).toEqual(['program', 'rest', 'rest', ...Array(5).fill('program')]);
});

it('keeps three mornings in any seven days, and never two running', () => {
  fc.assert(
    fc.property(fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }), (comes) => {
      const done: string[] = [];
      for (const [at, isThere] of comes.entries()) {
        const day = dayOfNumber(dayNumber('2026-11-02') + at);
        if (!isThere || kindOn(day, done, 3) === 'rest') continue;
        done.push(day);
        const lately = done.filter((one) => dayNumber(day) - dayNumber(one) < 7);
        expect(lately.length).toBeLessThanOrEqual(3);
        expect(dayNumber(day) - dayNumber(done.at(-2) ?? '1970-01-01')).toBeGreaterThan(1);
      }
    }),
    { numRuns: 200, seed: 20_261_136, examples: [[Array(40).fill(true)]] },
  );
});

it('stays with the program that the archer is on, and with the days that the archer planned', () => {
  const season = sensibleSeason({ today, program: { title: 'Evening band' }, plannedDays: [2, 4, 6, 7] });
  expect(Object.keys(season.blocks[0]!.days)).toEqual(['tuesday', 'thursday', 'saturday', 'sunday']);
  expect(season.blocks[0]!.days.tuesday).toEqual([{ title: 'Evening band' }]);
});
