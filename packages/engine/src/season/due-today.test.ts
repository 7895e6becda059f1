import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anySeason, firstDay, yearDays } from '../../../../tests/fixtures/season/any-season.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { type Due, dueToday, type SeasonArcher } from './due-today.ts';
import { findProgram } from './find-program.ts';
import { parseSeason } from './parse-season.ts';
import type { Season } from './season.ts';
import { seasonNotices } from './season-notices.ts';
import { takeDatedSessions } from './take-dated-sessions.ts';

const folder = new URL('../../../../tests/fixtures/season/', import.meta.url);
const parsed = parseSeason(readFileSync(new URL('v1-indoor-winter.season.json', folder), 'utf8'));
const winter = (parsed as { season: Season }).season;
const fresh: SeasonArcher = { rowDays: 0 };
const says = (day: string, known: SeasonArcher = fresh, season: Season = winter) =>
  dueToday(season, known, day).map((due) => (due.kind === 'rest' ? due.because : `${due.kind} ${due.program.title}`));

/** A year as an archer lives it who does all that is due, and now and then shoots arrows on a rest day. */
function liveYear(season: Season, ageYears: number | undefined, arrowDays: ReadonlySet<number>) {
  let known: SeasonArcher = { rowDays: 0, ageYears };
  const year: { day: number; due: Due[]; drew: boolean }[] = [];
  for (let day = firstDay - 20; day < firstDay + yearDays + 80; day++) {
    const due = dueToday(season, known, dayOfNumber(day));
    const drew = due.every(({ kind }) => kind !== 'rest') || arrowDays.has(day);
    year.push({ day, due, drew });
    if (!drew) continue;
    const rowDays = known.lastDrawDay !== undefined && dayNumber(known.lastDrawDay) === day - 1 ? known.rowDays + 1 : 1;
    const done = due.flatMap((one) =>
      one.kind === 'test' ? [{ program: one.program.title, programId: one.program.id, date: dayOfNumber(day) }] : [],
    );
    known = { ageYears, lastDrawDay: dayOfNumber(day), rowDays, tests: [...(known.tests ?? []), ...done] };
  }
  return year;
}
const isNear = ({ competitions }: Season, day: number, before: number) =>
  competitions.some(({ day: first, lastDay = first }) => dayNumber(first) - before <= day && day <= dayNumber(lastDay));

const anyLife = fc.record({
  season: anySeason,
  ageYears: fc.constantFrom(undefined, 10, 14, 15.9, 16, 40, 70),
  arrowDays: fc
    .uniqueArray(fc.integer({ min: firstDay, max: firstDay + yearDays }), { maxLength: 60 })
    .map((days) => new Set(days)),
});

describe('any valid season, lived for a year', () => {
  // One walk for all three, and one `expect` a life: a hundred years of days are many.
  it('has an answer for every day (programs, or one test, or one rest), never a seventh day in a row with a bow, and rests around competitions', () => {
    fc.assert(
      fc.property(anyLife, ({ season, ageYears, arrowDays }) => {
        let row = 0;
        const broken = liveYear(season, ageYears, arrowDays).flatMap(({ day, due, drew }) => {
          const [kind, ...others] = new Set(due.map((one) => one.kind));
          const before = row;
          row = drew ? row + 1 : 0;
          return [
            ...(kind === undefined || others.length > 0 || (kind !== 'program' && due.length > 1) ? ['answer'] : []),
            ...(kind !== 'rest' && before >= 6 ? ['seventh day'] : []),
            // On every day of a competition and on the day before there is rest, and no test on either of the two before.
            ...(kind !== 'rest' && isNear(season, day, 1) ? ['competition'] : []),
            ...(kind === 'test' && isNear(season, day, 2) ? ['test before a competition'] : []),
          ].map((rule) => [dayOfNumber(day), rule]);
        });
        expect(broken).toEqual([]);
      }),
      { numRuns: 100, seed: 20_261_130 },
    );
  });

  it('gives an archer under sixteen no two days running', () => {
    fc.assert(
      fc.property(anyLife, ({ season, arrowDays }) => {
        const year = liveYear(season, 13, arrowDays);
        const running = year.filter(({ due }, at) => year[at - 1]?.drew && due[0]!.kind !== 'rest');
        expect(running.map(({ day }) => dayOfNumber(day))).toEqual([]);
      }),
      { numRuns: 100, seed: 20_261_133 },
    );
  });

  it('never asks for more because somebody wrote more for a day: one list of programs is due, not two', () => {
    fc.assert(
      fc.property(anyLife, fc.integer({ min: 0, max: yearDays }), ({ season }, at) => {
        const date = dayOfNumber(firstDay + at);
        const due = dueToday(season, fresh, date).filter(({ kind }) => kind === 'program');
        const lists = [
          ...season.blocks.flatMap(({ days }) => Object.values(days)),
          ...season.dated.flatMap(({ sessions }) => sessions.map(({ programs }) => programs)),
        ];
        const asked = JSON.stringify(due.map((one) => (one.kind === 'rest' ? undefined : one.program)));
        if (due.length > 0) expect(lists.map((list) => JSON.stringify(list))).toContain(asked);
      }),
      { numRuns: 500, seed: 20_261_134 },
    );
  });
});

describe('the winter season of the fixture', () => {
  it.each([
    ['2026-11-02', ['program Holding']],
    ['2026-11-04', ['program Weekday holding', 'program Flexibility']],
    ['2026-12-12', ['test Baseline test']],
    ['2026-12-15', ['program Power']],
    ['2026-12-30', ['program Power']],
  ])('on %s has %j', (day, due) =>
    expect(
      says(day, {
        rowDays: 0,
        tests: [{ program: 'Baseline test', date: day === '2026-12-15' ? '2026-12-12' : '2026-01-01' }],
      }),
    ).toEqual(due),
  );

  it('rests with its reason', () => {
    expect(says('2026-11-03')).toMatchObject([
      { rule: 'noSession', nextDay: '2026-11-04', planner: { rule: 'weekday', block: 'Base', week: 1, ofWeeks: 6 } },
    ]);
    expect(says('2026-12-05')).toEqual([{ rule: 'dayBeforeCompetition', title: 'Club shoot', day: '2026-12-06' }]);
    expect(says('2027-01-17')).toMatchObject([{ rule: 'competition', title: 'County indoor' }]);
    expect(says('2026-12-24')).toEqual([
      { rule: 'restDay', from: '2026-12-24', to: '2026-12-27', why: 'with the family' },
    ]);
    expect(says('2026-12-29')).toMatchObject([{ rule: 'noSession', planner: { rule: 'coach', by: 'Coach Orla' } }]);
    expect(says('2026-10-31')).toEqual([{ rule: 'outsideSeason', nextDay: '2026-11-02' }]);
    expect(says('2028-01-01')).toEqual([{ rule: 'outsideSeason' }]);
    expect(says('2026-11-04', { rowDays: 6, lastDrawDay: '2026-11-03' })).toEqual([{ rule: 'daysInRow', days: 6 }]);
    expect(says('2026-11-04', { rowDays: 6, lastDrawDay: '2026-11-02' })).toHaveLength(2);
    expect(says('2026-11-04', { rowDays: 1, ageYears: 14, lastDrawDay: '2026-11-03' })).toMatchObject([
      { rule: 'youngDayBetween' },
    ]);
    expect(says('2026-11-04', { rowDays: 0, pain: { day: '2026-11-04' } })).toEqual([
      { rule: 'pain', day: '2026-11-04' },
    ]);
    expect(() => says('2026-02-30')).toThrow(RangeError);
  });

  it('is lighter in the fourth week, and for two weeks before the main competition only', () => {
    const lighter = (day: string) => dueToday(winter, fresh, day)[0];
    expect(lighter('2026-11-23')).toMatchObject({ lighter: { rule: 'lighterWeek', keepRatio: 0.5, week: 4 } });
    expect(lighter('2026-11-30')).not.toHaveProperty('lighter'); // six days before the club shoot, a minor one
    expect(lighter('2026-12-30')).not.toHaveProperty('lighter'); // 17 days before
    expect(lighter('2027-01-12')).toMatchObject({ lighter: { rule: 'taper', keepRatio: 0.5, daysLeft: 4 } });
  });

  it('lets a test wait while something is against it, for a week at most, and asks for it once', () => {
    const test = (day: string, known: SeasonArcher = fresh) => says(day, known).includes('test Baseline test');
    expect(test('2026-12-13')).toBe(true);
    expect(test('2026-12-18')).toBe(true);
    expect(test('2026-12-19')).toBe(false);
    expect(test('2026-12-13', { rowDays: 1, tests: [{ program: 'Baseline test', date: '2026-12-12' }] })).toBe(false);
    expect(test('2026-12-13', { rowDays: 0, pain: { day: '2026-12-10', stage: 'mimed' } })).toBe(false);
  });
});

describe('what will not happen as written', () => {
  it('is reported, with its place: a program nobody has, and nothing replaces it', () => {
    expect(seasonNotices(winter, builtInPrograms)).toMatchObject([
      { rule: 'programMissing', pointer: '/blocks/0/days/wednesday/0', title: 'Weekday holding' },
    ]);
    const has = (ref: Parameters<typeof findProgram>[0]) => findProgram(ref, builtInPrograms) !== undefined;
    expect(dueToday(winter, fresh, '2026-11-04', has)).toMatchObject([{ program: { title: 'Flexibility' } }]);
    expect(dueToday(winter, fresh, '2026-11-04', () => false)).toMatchObject([
      { kind: 'rest', because: { rule: 'programMissing', titles: ['Weekday holding', 'Flexibility'] } },
    ]);
  });

  it('is reported for two answers for the same days: the one made later counts, whichever came first', () => {
    const [answer] = winter.dated;
    const later = { ...answer!, by: 'Coach Niamh', madeAt: '2026-12-28T18:00:00Z', sessions: [] };
    for (const season of [takeDatedSessions(winter, later), { ...winter, dated: [later, answer!] }]) {
      expect(says('2026-12-30', fresh, season)).toMatchObject([{ rule: 'noSession', planner: { by: 'Coach Niamh' } }]);
      expect(seasonNotices(season)).toMatchObject([
        { rule: 'answersOverlap', by: 'Coach Orla', from: '2026-12-29', to: '2027-01-10' },
      ]);
    }
    expect(takeDatedSessions(winter, structuredClone(answer!))).toBe(winter);
  });

  it('is reported for any months of coaches that overlap: each day is one of theirs, in whatever order they came, and none is lost', () => {
    fc.assert(
      fc.property(anySeason, fc.nat(), ({ dated, ...rest }, shuffle) => {
        // Written at different instants, as answers are.
        const answers = dated.map((one, at) => ({ ...one, madeAt: `2026-01-01T0${at}:00:00Z` }));
        const bare = { ...rest, dated: [] };
        const turned = [
          ...answers.slice(shuffle % (answers.length + 1)),
          ...answers.slice(0, shuffle % (answers.length + 1)),
        ];
        const taken = [answers, turned].map((list) => list.reduce(takeDatedSessions, bare));
        for (const season of taken) expect(new Set(season.dated)).toEqual(new Set(answers));
        const says = (season: Season, day: string) =>
          dueToday(season, fresh, day).map((due) =>
            due.kind === 'rest' ? due.because.rule : [due.program.title, 'minutes' in due ? due.minutes : undefined],
          );
        const covers = ({ from, to }: (typeof answers)[number], day: string) => from <= day && day <= to;
        for (const { from, to } of answers) {
          for (const day of [from, to]) {
            const last = answers.findLast((one) => covers(one, day))!;
            const alone = says({ ...bare, dated: [last] }, day);
            for (const season of taken) expect(says(season, day)).toEqual(alone);
          }
        }
        const said = seasonNotices(taken[0]!).filter(({ rule }) => rule === 'answersOverlap').length;
        const pairs = answers.flatMap((a, at) =>
          answers.slice(at + 1).filter((b) => covers(a, b.from) || covers(b, a.from)),
        );
        expect(said).toBe(pairs.length);
      }),
      { numRuns: 100, seed: 20_261_128 },
    );
  });

  it('is reported for blocks that overlap, for full weeks, for tests and sessions on days of rest', () => {
    const [base, powerBlock] = winter.blocks;
    const holding = base!.days.monday;
    const everyDay = {
      monday: holding,
      tuesday: holding,
      wednesday: holding,
      thursday: holding,
      friday: holding,
      saturday: holding,
      sunday: holding,
    };
    const season: Season = {
      ...winter,
      blocks: [
        { ...base!, days: everyDay },
        { ...powerBlock!, from: '2026-12-07' },
      ],
      tests: [
        { day: '2026-12-04', program: { title: 'Baseline test' } },
        { day: '2026-12-25', program: { title: 'Baseline test' } },
        { day: '2026-11-10', program: { title: 'Power' } },
      ],
      dated: [{ ...winter.dated[0]!, from: '2026-12-20', sessions: [{ day: '2026-12-26', programs: holding! }] }],
    };
    expect(seasonNotices(season, builtInPrograms).map(({ rule, pointer }) => [rule, pointer])).toEqual([
      ['blocksOverlap', '/blocks/0'],
      ['everyDay', '/blocks/0/days'],
      ['testNearCompetition', '/tests/0/day'],
      ['testOnRestDay', '/tests/1/day'],
      ['notATest', '/tests/2/program'],
      ['sessionOnRestDay', '/dated/0/sessions/0'],
    ]);
    const tested = { rowDays: 0, tests: [{ program: 'Baseline test', date: '2026-12-04' }] };
    expect(says('2026-12-08', tested, season)).toEqual(['program Power']);
  });
});
