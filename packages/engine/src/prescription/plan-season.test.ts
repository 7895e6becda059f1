import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { parseSeason } from '../season/parse-season.ts';
import type { Season } from '../season/season.ts';
import { lighterOn } from '../season/season-day.ts';
import { sensibleSeason } from '../season/sensible-season.ts';
import { dayNumber } from '../units/calendar-day.ts';
import { planWeeks } from './plan-weeks.ts';
import { prescribe } from './prescribe.ts';

const folder = new URL('../../../../tests/fixtures/season/', import.meta.url);
const parsed = parseSeason(readFileSync(new URL('v1-indoor-winter.season.json', folder), 'utf8'));
const winter = (parsed as { season: Season }).season;
const programs = builtInPrograms;
const archer = { ageYears: 30, longestHoldSeconds: 90 };
const rows = planWeeks({ season: winter, programs, records: [], today: '2026-11-02', weeks: 11, archer });
const on = (date: string) => rows.filter((row) => row.date === date).map(({ program, kind }) => [program, kind]);

describe('planWeeks with a season', () => {
  it('plans what the season has on its weekdays, and leaves out what nobody has', () => {
    expect(on('2026-11-02')).toEqual([['Holding', 'usual']]);
    expect(on('2026-11-03')).toEqual([]);
    expect(on('2026-11-04')).toEqual([['Flexibility', 'usual']]); // "Weekday holding" is in no rack
    expect(on('2026-12-15')).toEqual([['Power', 'usual']]);
  });

  it('puts the test on its day, alone, and once', () => {
    expect(on('2026-12-12')).toEqual([['Baseline test', 'test']]);
    expect(rows.filter(({ kind }) => kind === 'test')).toHaveLength(1);
  });

  it('has the competitions, and no drill on them nor the day before', () => {
    const titles = rows
      .filter(({ kind }) => kind === 'competition')
      .map(({ date, competition }) => [date, competition]);
    expect(titles).toEqual([
      ['2026-12-06', 'Club shoot'],
      ['2027-01-16', 'County indoor'],
    ]);
    for (const date of ['2026-12-05', '2027-01-15', '2027-01-17', '2026-12-24']) expect(on(date)).toEqual([]);
  });

  it('is lighter in the fourth week and before the main competition, and says why', () => {
    const fourth = rows.filter(({ date }) => date >= '2026-11-23' && date <= '2026-11-29' && date !== '2026-11-25');
    expect(fourth.map(({ kind }) => kind)).toEqual(['deload', 'deload']);
    expect(fourth[0]!.reasons.find(({ rule }) => rule === 'lighterWeek')?.facts).toMatchObject({
      ...{ week: 4, ofWeeks: 6, seasonBlock: 'Base' },
    });
    const taper = rows.filter(({ date }) => date >= '2027-01-11' && date <= '2027-01-14');
    expect(taper.map(({ kind }) => kind)).toEqual(['taper', 'taper']);
  });

  it('asks less on a lighter day than the same day would without it, and never more', () => {
    const program = programs.find(({ title }) => title === 'Holding')!;
    const input = { program, records: [], today: '2026-11-23', archer };
    const lighter = lighterOn(winter, dayNumber('2026-11-23'));
    const held = (blocks: ReturnType<typeof prescribe>['blocks']) =>
      blocks.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0);
    const [usual, less] = [prescribe(input), prescribe({ ...input, lighter })];
    expect(held(less.blocks)).toBeLessThanOrEqual(0.5 * held(usual.blocks));
    expect(less.blocks[0]!.holdMs).toBe(usual.blocks[0]!.holdMs);
    expect(less.reasons.map(({ rule }) => rule)).toContain('lighterWeek');
  });

  it('plans a year without set-up: two mornings a week', () => {
    const season = sensibleSeason({ today: '2026-11-23' });
    const year = planWeeks({ season, programs, records: [], today: '2026-11-23', weeks: 12 });
    expect(year).toHaveLength(24);
    expect(JSON.stringify(year)).not.toMatch(/NaN|Infinity|null/);
  });
});
