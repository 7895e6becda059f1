import { describe, expect, it } from 'vitest';
import {
  type CollectionName,
  collectionNames,
  journalCollections,
  journalSingles,
  singleNames,
} from './collections.ts';
import type { FieldGroup } from './field-groups.ts';

const drill = (date: string, startedAt: string, id: string) => ({ date, startedAt, id }) as never;

/** A row of each list with nothing in it that could be left out. */
const barest: Record<CollectionName, Record<string, unknown>> = {
  drills: {
    ...{ id: 'd', program: 'Slow mornings', date: '2026-11-25', reps: [] },
    ...{ startedAt: '2026-11-25T06:00:00Z', endedAt: '2026-11-25T06:10:00Z' },
  },
  days: { date: '2026-11-25' },
  weeks: { week: '2026-W48' },
  notes: { id: 'n', madeAt: '2026-11-25T06:00:00Z' },
  milestones: { id: 'm', text: 'Hold in wind', setDay: '2026-11-25' },
  opened: { id: 'p', program: { version: 99 } },
};

/** The fields of a list that a reader gets, or that nobody gets. */
const readBy = (name: CollectionName, reader: string): string[] =>
  Object.entries(journalCollections[name].fields).flatMap(([field, one]) => (one === reader ? [field] : []));

describe('the table of lists', () => {
  it('names every list and every single thing of a journal, in order', () => {
    expect(collectionNames).toEqual(['drills', 'days', 'weeks', 'notes', 'milestones', 'opened']);
    expect(singleNames).toEqual(['majorGoal', 'season', 'ownKit']);
  });

  it('tells things, which a removal ends, from pages of the calendar, and by what each is known', () => {
    const told = collectionNames.map((name) => [name, journalCollections[name].kind, journalCollections[name].keyName]);
    expect(told).toEqual([
      ['drills', 'thing', 'id'],
      ['days', 'page', 'date'],
      ['weeks', 'page', 'week'],
      ['notes', 'thing', 'id'],
      ['milestones', 'thing', 'id'],
      ['opened', 'thing', 'id'],
    ]);
  });

  it.each(collectionNames)('has for %s the schema of its own rows, with no field missing that they need', (name) => {
    const { schema } = journalCollections[name];
    expect(schema.safeParse(barest[name]).success).toBe(true);
    for (const key of Object.keys(barest[name])) {
      const { [key]: _, ...less } = barest[name];
      expect(schema.safeParse(less).success, `${name} without ${key}`).toBe(false);
    }
  });

  it('has the schema of each single thing', () => {
    const stamp = { editedAt: '2026-11-25T06:00:00Z' };
    const { majorGoal, season, ownKit } = journalSingles;
    expect(majorGoal.schema.safeParse({ text: 'Hold steady in wind', ...stamp }).success).toBe(true);
    expect(majorGoal.schema.safeParse(stamp).success).toBe(false);
    expect(majorGoal.schema.safeParse(undefined).success).toBe(false);
    expect(season.schema.safeParse({ document: { format: 'larkhold/season', version: 1 }, ...stamp }).success).toBe(
      true,
    );
    expect(season.schema.safeParse({ document: { format: 'larkhold/program', version: 1 } }).success).toBe(false);
    expect(ownKit.schema.safeParse({ bow: 'barebow', ...stamp }).success).toBe(true);
    expect(ownKit.schema.safeParse({ bow: 'barebow', editedAt: 'yesterday' }).success).toBe(false);
  });
});

describe('who reads a field', () => {
  it('is the coach, of what was asked and done', () => {
    expect(readBy('drills', 'always').sort()).toEqual([
      ...['date', 'durationMs', 'effort', 'endedAt', 'id', 'kind', 'onFingersLbf', 'open', 'pain', 'prescribedReps'],
      ...['program', 'programId', 'reps', 'startedAt', 'tool'],
    ]);
    expect(readBy('days', 'always').sort()).toEqual([
      ...['arrows', 'date', 'feel', 'pain', 'readiness', 'shootingEffort', 'shootingMinutes', 'work'],
    ]);
    expect(readBy('weeks', 'always').sort()).toEqual(['focus', 'goal', 'plannedDays', 'sketch', 'week']);
    expect(readBy('milestones', 'always').sort()).toEqual(['id', 'reachedDay', 'setDay', 'text']);
  });

  it('is of words about a day, a drill or a week only a coach to whom notes are shown', () => {
    expect(readBy('drills', 'with notes')).toEqual(['note']);
    expect(readBy('days', 'with notes').sort()).toEqual(['feelWords', 'note', 'place']);
    expect(readBy('weeks', 'with notes').sort()).toEqual(['carriedForward', 'comment', 'needsWork', 'wentRight']);
    expect(readBy('milestones', 'with notes')).toEqual(['words']);
  });

  it('is of the notes wall and the programs nobody', () => {
    expect(readBy('notes', 'never').sort()).toEqual(['id', 'madeAt', 'programId', 'strokes', 'text', 'week']);
    expect(readBy('opened', 'never').sort()).toEqual(['id', 'program']);
    for (const name of ['notes', 'opened'] as const)
      expect([...readBy(name, 'always'), ...readBy(name, 'with notes')]).toEqual([]);
    for (const name of ['drills', 'days', 'weeks', 'milestones'] as const) expect(readBy(name, 'never')).toEqual([]);
  });
});

describe('what is edited together', () => {
  it('is of a drill what the session wrote; effort, pain and note are a group each', () => {
    const groups = Object.entries(journalCollections.drills.groups ?? {});
    expect(groups.map(([field]) => field).sort()).toEqual([
      ...['date', 'durationMs', 'endedAt', 'kind', 'onFingersLbf', 'open', 'prescribedReps', 'program', 'programId'],
      ...['reps', 'startedAt', 'tool'],
    ]);
    expect(new Set(groups.map(([, group]) => group))).toEqual(new Set(['session']));
  });

  it('is of a day the feel with its words and the shooting with its effort; of a week the focus with its sketch', () => {
    const { days, weeks } = journalCollections;
    expect(days.groups).toEqual({
      ...{ feel: 'feel', feelWords: 'feel' },
      ...{ shootingEffort: 'shooting', shootingMinutes: 'shooting' },
    });
    expect(weeks.groups).toEqual({ focus: 'focus', sketch: 'focus' });
  });

  it('is of a note where it is pinned; of a milestone when it was reached and how; of a program nothing', () => {
    const { notes, milestones, opened } = journalCollections;
    expect(notes.groups).toEqual({ programId: 'pin', week: 'pin' });
    expect(milestones.groups).toEqual({ reachedDay: 'reached', words: 'reached' });
    expect(opened.groups).toBeUndefined();
  });
});

describe('rows', () => {
  it('of drills come by day, then by the instant of their start, then by id', () => {
    const { compareRows } = journalCollections.drills;
    const rows = [
      drill('2026-11-26', '2026-11-25T23:30:00Z', 'a'),
      drill('2026-11-25', '2026-11-25T07:00:00Z', 'c'),
      drill('2026-11-25', '2026-11-25T09:00:00+02:00', 'b'), // the same instant as c
      drill('2026-11-25', '2026-11-25T08:30:00+02:00', 'd'), // half an hour before
    ];
    const sorted = rows.toSorted(compareRows).map(({ id }: { id: string }) => id);
    expect(sorted).toEqual(['d', 'b', 'c', 'a']);
    expect(rows.toReversed().toSorted(compareRows)).toEqual(rows.toSorted(compareRows));
  });

  it('of days, weeks and programs come by their key', () => {
    const { days, weeks, opened } = journalCollections;
    expect(days.compareRows({ date: '2026-11-25' }, { date: '2026-12-01' })).toBeLessThan(0);
    expect(days.compareRows({ date: '2026-12-01' }, { date: '2026-11-25' })).toBeGreaterThan(0);
    expect(weeks.compareRows({ week: '2026-W48' }, { week: '2027-W01' })).toBeLessThan(0);
    expect(weeks.compareRows({ week: '2027-W01' }, { week: '2026-W48' })).toBeGreaterThan(0);
    expect(opened.compareRows({ id: 'a', program: {} }, { id: 'b', program: {} })).toBeLessThan(0);
    expect(opened.compareRows({ id: 'b', program: {} }, { id: 'a', program: {} })).toBeGreaterThan(0);
  });
});

describe('a hand-over from Wednesday the 25th to Tuesday the 1st', () => {
  const span = ['2026-11-25', '2026-12-01'] as const;

  it.each([
    ['2026-11-24', false],
    ['2026-11-25', true],
    ['2026-11-28', true],
    ['2026-12-01', true],
    ['2026-12-02', false],
  ])('holds drills and days of %s: %s', (date, isHeld) => {
    expect(journalCollections.days.isWithin?.({ date }, ...span)).toBe(isHeld);
    expect(journalCollections.drills.isWithin?.(drill(date, `${date}T06:00:00Z`, 'a'), ...span)).toBe(isHeld);
  });

  // By the calendar: 2026-11-25 lies in week 48 (from Monday the 23rd), 2026-12-01 in week 49 (from the 30th).
  it.each([
    ['2026-W47', false],
    ['2026-W48', true],
    ['2026-W49', true],
    ['2026-W50', false],
  ])('holds the page of %s: %s', (week, isHeld) => {
    expect(journalCollections.weeks.isWithin?.({ week }, ...span)).toBe(isHeld);
  });

  it.each([
    ['set long ago and open', '2020-01-01', undefined, true],
    ['set on the last day', '2026-12-01', undefined, true],
    ['set after it', '2026-12-02', undefined, false],
    ['reached long ago', '2020-01-01', '2020-02-01', true],
    ['reached on the last day', '2020-01-01', '2026-12-01', true],
    ['reached after it', '2020-01-01', '2026-12-02', false],
  ])('holds a milestone %s: %s, %s: %s', (_, setDay, reachedDay, isHeld) => {
    const row = { id: 'm', text: 'Hold in wind', setDay, ...(reachedDay === undefined ? {} : { reachedDay }) };
    expect(journalCollections.milestones.isWithin?.(row, ...span)).toBe(isHeld);
  });

  it('holds no note and no opened program', () => {
    expect(journalCollections.notes.isWithin).toBeUndefined();
    expect(journalCollections.opened.isWithin).toBeUndefined();
  });
});

describe('of two copies of one session', () => {
  const session = (reps: unknown, open?: true): FieldGroup => ({
    value: { reps, ...(open ? { open } : {}) },
    stamp: '2026-11-25T06:00:00Z',
  });
  const order = (a: FieldGroup, b: FieldGroup): number =>
    journalCollections.drills.compareGroups?.session?.(a, b) ?? Number.NaN;

  it.each([
    ['the ended one wins over an open one that has more reps', session([1]), session([1, 2, 3], true), 1],
    ['the ended one wins over an open one, the other way round', session([1, 2, 3], true), session([1]), -1],
    ['of open ones that with more reps wins', session([1, 2], true), session([1], true), 1],
    ['of open ones that with fewer reps gives way', session([], true), session([1], true), -1],
    ['of open ones with as many reps neither does', session([1], true), session([2], true), 0],
    ['of ended ones neither does, whatever their reps', session([1]), session([1, 2, 3]), 0],
    ['reps that are no list count as none', session('abc', true), session([1], true), -1],
  ])('%s', (_, a, b, sign) => {
    expect(Math.sign(order(a, b))).toBe(sign);
  });

  it('only the word true says that it is open', () => {
    const said = (open: unknown): FieldGroup => ({ value: { reps: [], open }, stamp: '' });
    expect(order(said('no'), session([1, 2]))).toBe(0);
    expect(Math.sign(order(said(true), session([])))).toBe(-1);
  });

  it('is a rule for the session alone', () => {
    expect(Object.keys(journalCollections.drills.compareGroups ?? {})).toEqual(['session']);
  });
});
