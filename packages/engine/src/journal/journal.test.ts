import { describe, expect, it } from 'vitest';
import { programVersion } from '../program/migrate-program.ts';
import { type CollectionName, journalCollections } from './collections.ts';
import { journalSchema, removalMarkSchema, seasonCopySchema } from './journal.ts';
import { journalDaySchema, journalWeekSchema } from './journal-day.ts';
import { journalIdSchema } from './journal-id.ts';
import { readablePrograms } from './readable-programs.ts';

const x = (length: number): string => 'x'.repeat(length);
const many = <T>(count: number, one: T): T[] => Array(count).fill(one);
const stamp = '2026-11-25T06:00:00Z';
const practice = { kind: 'practice', count: 72 };
const strength = { kind: 'strength', minutes: 30 };

const rows = {
  days: { date: '2026-11-25' },
  weeks: { week: '2026-W48' },
  notes: { id: 'n', madeAt: stamp },
  milestones: { id: 'm', text: 'Hold in wind', setDay: '2026-11-25' },
} satisfies Partial<Record<CollectionName, object>>;

describe.each([
  [
    'days',
    'arrows',
    [[], [practice], many(50, practice)],
    [many(51, practice), [{ kind: 'practice' }], [{ count: 1 }]],
  ],
  ['days', 'place', ['x', x(60)], ['', x(61)]],
  ['days', 'shootingEffort', [0, 9.5, 10], [-0.1, 10.1]],
  ['days', 'shootingMinutes', [0, 1440], [-1, 1441]],
  ['days', 'work', [[], many(50, strength)], [many(51, strength), [{ kind: 'sleep', minutes: 1 }]]],
  ['days', 'feel', [1, 5], [0, 6, 2.5]],
  ['days', 'feelWords', ['', x(200)], [x(201)]],
  ['days', 'readiness', ['fresh', 'as usual', 'heavy'], ['tired']],
  ['days', 'pain', [true, false], ['yes']],
  ['days', 'note', ['', x(4000)], [x(4001)]],
  ['weeks', 'goal', ['', x(1000)], [x(1001)]],
  ['weeks', 'focus', ['', x(400)], [x(401)]],
  ['weeks', 'sketch', [many(400, [0, 1]), [many(4000, 0.5)]], [many(401, [0, 1]), [many(4001, 0.5)], [['a']]]],
  ['weeks', 'plannedDays', [[], [1, 7], many(7, 2)], [[0], [8], [1.5], many(8, 2)]],
  ['weeks', 'wentRight', ['', x(4000)], [x(4001)]],
  ['weeks', 'needsWork', ['', x(4000)], [x(4001)]],
  ['weeks', 'carriedForward', ['', x(1000)], [x(1001)]],
  ['weeks', 'comment', ['', x(4000)], [x(4001)]],
  ['notes', 'text', ['', x(2000)], [x(2001)]],
  ['notes', 'strokes', [many(400, [0, 1]), [many(4000, 0.5)]], [many(401, [0, 1]), [many(4001, 0.5)]]],
  ['notes', 'programId', ['', x(64)], [x(65)]],
  ['notes', 'week', ['2026-W53'], ['2027-W53', '']],
  ['milestones', 'text', ['x', x(400)], ['', x(401)]],
  ['milestones', 'reachedDay', ['2026-11-26'], ['2026-02-30']],
  ['milestones', 'words', ['', x(1000)], [x(1001)]],
] as const)('of %s: %s', (name, field, good, bad) => {
  const takes = (value: unknown) =>
    journalCollections[name].schema.safeParse({ ...rows[name], [field]: value }).success;

  it('takes what it may be, up to the bounds, and nothing beyond', () => {
    for (const value of good) expect(takes(value), JSON.stringify(value).slice(0, 60)).toBe(true);
    for (const value of bad) expect(takes(value), JSON.stringify(value).slice(0, 60)).toBe(false);
  });
});

it('arrows and work take their kinds, and counts and times within bounds', () => {
  const takes = (more: object) => journalCollections.days.schema.safeParse({ ...rows.days, ...more }).success;
  for (const kind of ['blank bale', 'practice', 'scoring']) expect(takes({ arrows: [{ kind, count: 0 }] })).toBe(true);
  for (const kind of ['strength', 'mobility', 'fitness']) expect(takes({ work: [{ kind, minutes: 0 }] })).toBe(true);
  expect(takes({ arrows: [{ ...practice, count: 2000, distanceM: 200 }] })).toBe(true);
  expect(takes({ arrows: [{ ...practice, distanceM: 0 }] })).toBe(true);
  for (const wrong of [{ count: 2001 }, { count: -1 }, { count: 1.5 }, { distanceM: 200.5 }, { distanceM: -1 }])
    expect(takes({ arrows: [{ ...practice, ...wrong }] })).toBe(false);
  expect(takes({ work: [{ ...strength, minutes: 1440, effort: 10 }] })).toBe(true);
  expect(takes({ work: [{ ...strength, effort: 0 }] })).toBe(true);
  for (const wrong of [{ minutes: 1441 }, { minutes: -1 }, { effort: 10.5 }, { effort: -1 }])
    expect(takes({ work: [{ ...strength, ...wrong }] })).toBe(false);
});

it('a day, a week and an id are of the years and of the length that a journal can hold', () => {
  const taken = (schema: typeof journalWeekSchema | typeof journalDaySchema, values: string[]) =>
    values.map((value) => schema.safeParse(value).success);
  expect(taken(journalDaySchema, ['1899-12-31', '1900-01-01', '2999-12-31', '3000-01-01'])).toEqual([
    ...[false, true, true, false],
  ]);
  // 2026 has 53 ISO weeks, 2027 has 52.
  expect(taken(journalWeekSchema, ['1899-W52', '1900-W01', '2999-W52', '3000-W01'])).toEqual([
    false,
    true,
    true,
    false,
  ]);
  expect(taken(journalWeekSchema, ['2026-W53', '2027-W53', '2026-W00', '2026-48'])).toEqual([
    true,
    false,
    false,
    false,
  ]);
  const ids = ['', 'x', x(64), x(65), '\u{1f3f9}', '\ud83d', '\udff9x'];
  expect(ids.map((id) => journalIdSchema.safeParse(id).success)).toEqual([
    false,
    true,
    true,
    false,
    true,
    false,
    false,
  ]);
  expect(journalDaySchema.safeParse('3000-01-01').error?.issues[0]).toMatchObject({
    params: { fault: { rule: 'dayYears' } },
  });
  expect(journalWeekSchema.safeParse('x').error?.issues[0]).toMatchObject({ params: { fault: { rule: 'weekYears' } } });
});

describe('a journal', () => {
  const whole = { drills: [], days: [], weeks: [] };
  const takes = (more: object) => journalSchema.safeParse({ ...whole, ...more }).success;

  it('needs drills, days and weeks, and nothing else', () => {
    expect(takes({})).toBe(true);
    for (const key of Object.keys(whole)) expect(takes({ [key]: undefined }), key).toBe(false);
  });

  it('checks each list and each single thing by its own rule, and keeps what only a newer app knows', () => {
    for (const name of ['drills', 'days', 'weeks', 'notes', 'milestones', 'opened', 'removed']) {
      expect(takes({ [name]: [] }), name).toBe(true);
      expect(takes({ [name]: [{}] }), name).toBe(false);
    }
    expect(takes({ majorGoal: { text: x(1000), editedAt: '' } })).toBe(true);
    expect(takes({ majorGoal: { text: x(1001), editedAt: '' } })).toBe(false);
    expect(takes({ majorGoal: { text: 'x' } })).toBe(false);
    expect(takes({ season: {} })).toBe(false);
    expect(takes({ ownKit: { edits: { bow: 'yesterday' } } })).toBe(false);
    expect(journalSchema.parse({ ...whole, strings: 'new' })).toEqual({ ...whole, strings: 'new' });
  });

  it('takes marks and seasons within their bounds', () => {
    const mark = { of: 'days', key: '2026-11-25', at: '' };
    const takesMark = (more: object) => removalMarkSchema.safeParse({ ...mark, ...more }).success;
    for (const good of [{}, { of: x(64) }, { key: x(64) }, { at: x(60) }]) expect(takesMark(good)).toBe(true);
    for (const bad of [{ of: '' }, { of: x(65) }, { key: '' }, { key: x(65) }, { at: x(61) }, { at: undefined }])
      expect(takesMark(bad)).toBe(false);
    const takesSeason = (version: unknown) =>
      seasonCopySchema.safeParse({ document: { format: 'larkhold/season', version } }).success;
    expect([takesSeason(1), takesSeason(0), takesSeason(1.5)]).toEqual([true, false, false]);
  });

  it('opened programs: one of a newer app waits unread, a broken one is refused with what is wrong in it', () => {
    const newer = { id: 'p', program: { format: 'larkhold/program', version: 99, title: 'Later' } };
    expect(takes({ opened: [newer] })).toBe(true);
    expect(readablePrograms({ opened: [newer] })).toEqual([]);
    expect(readablePrograms({})).toEqual([]);
    const broken = journalSchema.safeParse({ ...whole, opened: [{ id: 'p', program: { version: 1, title: 7 } }] });
    expect(broken.error?.issues.some(({ path }) => path.join('.') === 'opened.0.program.title')).toBe(true);
    const present = { id: 'p', program: { version: programVersion, title: 7 } };
    expect(takes({ opened: [present] })).toBe(false);
    const block = {
      title: 'Holds',
      drill: 'holding',
      sets: 1,
      reps: 3,
      draw: 3,
      hold: 15,
      letDown: 3,
      rest: { seconds: 60 },
    };
    const good = { format: 'larkhold/program', version: 1, title: 'Slow mornings', tool: 'bow', blocks: [block] };
    expect(takes({ opened: [{ id: 'p', program: good }] })).toBe(true);
    expect(readablePrograms({ opened: [newer, { id: 'q', program: good }] })).toMatchObject([
      { title: 'Slow mornings' },
    ]);
  });
});
