import { describe, expect, it } from 'vitest';
import { collectionNames } from './collections.ts';
import type { Journal, RemovalMark } from './journal.ts';
import { createJournal, mergeJournals, visibleJournal } from './merge-journals.ts';

const [dawn, noon, dusk] = ['2026-11-25T06:00:00Z', '2026-11-25T12:00:00Z', '2026-11-25T18:00:00Z'];

const journal = (parts: Record<string, unknown>): Journal => ({ ...createJournal(), ...parts }) as Journal;

/** Both ways round must give the same. */
function merge(a: Record<string, unknown>, b: Record<string, unknown> = {}): Journal {
  const merged = mergeJournals(journal(a), journal(b));
  expect(mergeJournals(journal(b), journal(a))).toEqual(merged);
  return merged;
}

/** A row of each list, edited at noon. */
const rows: Record<string, { key: string; row: object }> = {
  drills: { key: 'd', row: { id: 'd', program: 'x', date: '2026-11-25', startedAt: dawn, endedAt: dawn, reps: [] } },
  days: { key: '2026-11-25', row: { date: '2026-11-25', feel: 4 } },
  weeks: { key: '2026-W48', row: { week: '2026-W48', focus: 'Reach' } },
  notes: { key: 'n', row: { id: 'n', madeAt: dawn, text: 'Calm' } },
  milestones: { key: 'm', row: { id: 'm', text: 'Hold in wind', setDay: '2026-11-25' } },
  opened: { key: 'p', row: { id: 'p', program: { version: 99 } } },
};

describe.each(collectionNames)('a row of %s', (of) => {
  const { key, row } = rows[of]!;
  const edited = { ...row, editedAt: noon };
  const isPage = of === 'days' || of === 'weeks';
  const found = (merged: Journal): readonly unknown[] => merged[of] ?? [];

  it('is kept where nothing of it was removed, and by a mark of another list or another key', () => {
    expect(found(merge({ [of]: [edited] }))).toEqual([edited]);
    const others = [
      { of: 'strings', key, at: dusk },
      { of, key: 'other', at: dusk },
    ];
    expect(found(merge({ [of]: [edited] }, { removed: others }))).toEqual([edited]);
  });

  it('is gone by a mark that is as late or later, and the mark stays', () => {
    for (const at of [noon, dusk]) {
      const removed = [{ of, key, at }];
      expect(merge({ [of]: [edited] }, { removed })).toEqual({ ...createJournal(), removed });
    }
  });

  it('wins over an earlier mark if it is a page; a thing does only if it was put back after that', () => {
    const removed = [{ of, key, at: dawn }];
    expect(found(merge({ [of]: [edited] }, { removed }))).toEqual(isPage ? [edited] : []);
    const back = { ...edited, restoredAt: noon };
    expect(found(merge({ [of]: [back] }, { removed }))).toEqual(isPage ? [edited] : [back]);
    expect(found(merge({ [of]: [back] }, { removed: [{ of, key, at: noon }] }))).toEqual([]);
  });

  it('of version 1 that says it is removed becomes a mark, by this list’s own key', () => {
    const gone = { ...edited, removed: true };
    expect(merge({ [of]: [gone] })).toEqual({ ...createJournal(), removed: [{ of, key, at: noon }] });
    const { editedAt: _, ...unstamped } = gone;
    expect(merge({ [of]: [unstamped] }).removed).toEqual([{ of, key, at: '' }]);
    // Nothing of it comes back, also not what carries a later stamp than the removal.
    const fields = Object.fromEntries(Object.keys(row).map((field) => [field, dusk]));
    expect(found(merge({ [of]: [{ ...gone, restoredAt: dusk, edits: { ...fields, session: dusk } }] }))).toEqual([]);
    expect(visibleJournal(journal({ [of]: [gone, { ...edited, id: 'other' }] }))[of]).toEqual([
      { ...edited, id: 'other' },
    ]);
  });
});

describe('marks', () => {
  const mark = (of: string, key: string, at: string, more = {}): RemovalMark => ({ of, key, at, ...more });

  it('are there once for each list and key, the latest, in order of list and key', () => {
    const a = [mark('weeks', 'a', dawn), mark('days', 'b', dusk), mark('days', 'a', noon)];
    const b = [mark('days', 'b', noon), mark('days', 'a', dusk), mark('notes', 'c', dawn)];
    expect(merge({ removed: a }, { removed: b }).removed).toEqual([
      mark('days', 'a', dusk),
      mark('days', 'b', dusk),
      mark('notes', 'c', dawn),
      mark('weeks', 'a', dawn),
    ]);
  });

  it('of one instant are ordered by their text, so that both sides end with one', () => {
    const [one, other] = [mark('days', 'a', noon, { why: 'empty' }), mark('days', 'a', noon, { why: 'typed twice' })];
    expect(merge({ removed: [one] }, { removed: [other] }).removed).toEqual([other]);
    const [phone, tablet] = [mark('days', 'a', `${noon}~a1`), mark('days', 'a', `${noon}~b2`)];
    expect(merge({ removed: [tablet] }, { removed: [phone] }).removed).toEqual([tablet]);
  });

  it('are not shown, and everything else is', () => {
    const shown = { days: [{ date: '2026-11-25', feel: 4 }], majorGoal: { text: 'x', editedAt: noon }, strings: [1] };
    expect(visibleJournal(journal({ ...shown, removed: [mark('days', 'a', noon)] }))).toEqual(journal(shown));
  });
});

describe('lists that only a newer app knows', () => {
  it('are merged by id, in order of id, and obey marks as things do', () => {
    const a = {
      strings: [
        { id: 'b', strands: 16, wax: 'new', editedAt: dawn },
        { id: 'a', strands: 20, editedAt: dusk },
      ],
    };
    const b = { strings: [{ id: 'b', strands: 18, editedAt: noon }], removed: [{ of: 'strings', key: 'a', at: dawn }] };
    expect(merge(a, b)).toMatchObject({
      strings: [{ id: 'b', strands: 18, wax: 'new', editedAt: noon, edits: { wax: dawn } }],
    });
    const back = {
      strings: [
        { id: 'b', editedAt: dawn },
        { id: 'a', restoredAt: noon },
      ],
    };
    expect(merge(back, b)).toMatchObject({ strings: [{ id: 'a', restoredAt: noon }, { id: 'b' }] });
  });

  it('write version 1’s marks by id', () => {
    expect(merge({ strings: [{ id: 'a', date: '2026-11-25', removed: true, editedAt: noon }] })).toEqual({
      ...{ ...createJournal(), strings: [], removed: [{ of: 'strings', key: 'a', at: noon }] },
    });
    expect(merge({ constructor: [{ id: 'a', removed: true }] }).removed).toEqual([
      { of: 'constructor', key: 'a', at: '' },
    ]);
  });

  it('win over anything else of their name; of two other values the greater text wins, and one alone is kept', () => {
    const things = [{ id: 'a' }];
    expect(merge({ strings: things }, { strings: 'zzz' })).toMatchObject({ strings: things });
    expect(merge({ strings: things }, { strings: [{ id: 7 }] })).toMatchObject({ strings: things });
    expect(merge({ strings: [{ id: 7 }] }, { strings: [null] })).toMatchObject({ strings: [{ id: 7 }] });
    expect(merge({ wind: { a: 1, b: 2 } }, { wind: { b: 1, a: 1 } })).toMatchObject({ wind: { a: 1, b: 2 } });
    expect(merge({ wind: 'light' })).toMatchObject({ wind: 'light' });
  });

  it('are kept where they are null, whichever side has them', () => {
    expect(merge({ wind: null })).toMatchObject({ wind: null });
  });

  it('are not made up: what is written nowhere is not there, also where every object has something of that name', () => {
    expect(Object.hasOwn(merge({ constructor: 'x' }), 'constructor')).toBe(true);
    expect(merge({ constructor: 'x' })).toMatchObject({ constructor: 'x' });
    expect(Object.keys(merge({}))).toEqual(['drills', 'days', 'weeks']);
  });
});

describe('an empty list', () => {
  it('of this app is left out, but for drills, days and weeks; one of a newer app is kept', () => {
    const empty = { notes: [], milestones: [], opened: [], removed: [], majorGoal: undefined, strings: [] };
    expect(Object.entries(merge(empty))).toEqual([
      ['drills', []],
      ['days', []],
      ['weeks', []],
      ['strings', []],
    ]);
  });

  it('takes the place of a value that is not a list', () => {
    expect(mergeJournals({} as Journal, { days: 'x' } as never)).toEqual(createJournal());
  });
});

describe('what there is only one of', () => {
  it.each([
    ['majorGoal', { text: 'early', editedAt: dawn }, { text: 'late', editedAt: noon }],
    ['season', { document: { weeks: 9 }, editedAt: dawn }, { document: { weeks: 12 }, editedAt: noon }],
    ['ownKit', { bow: 'recurve', editedAt: dawn }, { bow: 'barebow', editedAt: noon }],
  ])('%s is the later one, or the only one', (name, early, late) => {
    expect(merge({ [name]: early }, { [name]: late })).toMatchObject({ [name]: late });
    expect(merge({ [name]: early })).toMatchObject({ [name]: early });
  });
});

describe('fields that are edited together', () => {
  it('of a week: a later focus without a sketch leaves no sketch that belonged to another', () => {
    const a = { week: '2026-W48', focus: 'Reach', sketch: [[0, 0, 1, 1]], goal: 'Ten minutes', editedAt: dawn };
    const b = { week: '2026-W48', focus: 'Shoulders', editedAt: noon };
    expect(merge({ weeks: [a] }, { weeks: [b] }).weeks).toEqual([
      { week: '2026-W48', focus: 'Shoulders', goal: 'Ten minutes', editedAt: noon, edits: { goal: dawn } },
    ]);
  });

  it('of a day: feel and its words, shooting and its effort', () => {
    const a = {
      date: '2026-11-25',
      feel: 2,
      feelWords: 'Tired',
      shootingMinutes: 90,
      shootingEffort: 7,
      editedAt: dawn,
    };
    const b = { date: '2026-11-25', feel: 4, shootingMinutes: 60, editedAt: noon };
    expect(merge({ days: [a] }, { days: [b] }).days).toEqual([b]);
  });

  it('of a note: its pin; of a milestone: the day on which it was reached and how', () => {
    const note = { id: 'n', madeAt: dawn, text: 'Calm', programId: 'p', editedAt: dawn };
    const moved = { id: 'n', madeAt: dawn, text: 'Calm', week: '2026-W48', editedAt: noon };
    expect(merge({ notes: [note] }, { notes: [moved] }).notes).toEqual([moved]);
    const reached = {
      id: 'm',
      text: 'x',
      setDay: '2026-11-01',
      reachedDay: '2026-11-20',
      words: 'At last',
      editedAt: dawn,
    };
    const { words: _, ...again } = { ...reached, reachedDay: '2026-11-21', editedAt: noon };
    expect(merge({ milestones: [reached] }, { milestones: [again] }).milestones).toEqual([again]);
  });

  it('of a drill: the ended copy’s reps with the other’s later words', () => {
    const base = { id: 'd', program: 'x', date: '2026-11-25', startedAt: dawn, endedAt: dawn };
    const ended = { ...base, reps: [], effort: 5, editedAt: dawn };
    const open = { ...base, reps: [], open: true, effort: 7, tool: 'band', editedAt: noon };
    expect(merge({ drills: [ended] }, { drills: [open] }).drills).toEqual([
      { ...base, reps: [], effort: 7, editedAt: noon, edits: { session: dawn } },
    ]);
  });
});
