import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyClash, anyJournal } from '../../../../tests/fixtures/journal/any-journal.ts';
import type { DrillRecord } from './drill-record.ts';
import { compareInstants, isSame } from './edit-order.ts';
import type { DayEntry, Journal } from './journal.ts';
import { createJournal, mergeJournals, visibleJournal } from './merge-journals.ts';
import type { RepRecord } from './rep-record.ts';

describe('merging', () => {
  it('is commutative', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, (a, b) => {
        expect(mergeJournals(a, b)).toEqual(mergeJournals(b, a));
      }),
    );
  });

  it('is associative', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, anyJournal, (a, b, c) => {
        expect(mergeJournals(mergeJournals(a, b), c)).toEqual(mergeJournals(a, mergeJournals(b, c)));
      }),
    );
  });

  it('is associative where few rows clash in every way that a reader lets in', () => {
    fc.assert(
      fc.property(anyClash, anyClash, anyClash, (a, b, c) => {
        const merged = mergeJournals(mergeJournals(a, b), c);
        expect(merged).toEqual(mergeJournals(a, mergeJournals(b, c)));
        expect(merged).toEqual(mergeJournals(c, mergeJournals(b, a)));
        expect(mergeJournals(merged, b)).toEqual(merged);
      }),
      { numRuns: 5_000 },
    );
  });

  it('ends the same whoever met first: a page with edits, its removal that carries no stamp, and one that says it was put back', () => {
    const at = (days: DayEntry[]): Journal => ({ ...createJournal(), days });
    const a = at([{ date: '2026-11-25', note: 'Windy', edits: { note: '2026-11-25T06:00:00Z' } }]);
    const b = at([{ date: '2026-11-25', removed: true }]);
    const c = at([{ date: '2026-11-25', feel: 4, restoredAt: '2026-11-25T07:00:00Z' }]);
    const merged = mergeJournals(mergeJournals(a, b), c);
    expect(merged).toEqual(mergeJournals(a, mergeJournals(b, c)));
    expect(merged.days).toEqual(a.days);
  });

  it('is idempotent, and an empty journal changes nothing', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, (a, b) => {
        const merged = mergeJournals(a, b);
        expect(mergeJournals(merged, merged)).toEqual(merged);
        expect(mergeJournals(merged, b)).toEqual(merged);
        expect(mergeJournals(a, createJournal())).toEqual(mergeJournals(a, a));
      }),
    );
  });

  it('loses nothing and doubles nothing: every id of either side is there once, or there is a mark of it', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, (a, b) => {
        const { drills, removed = [] } = mergeJournals(a, b);
        const marked = removed.filter(({ of }) => of === 'drills').map(({ key }) => key);
        const ids = drills.map((record) => record.id);
        expect(new Set(ids).size).toBe(ids.length);
        const expected = new Set([...a.drills, ...b.drills].map((record) => record.id));
        expect(new Set([...ids, ...marked.filter((key) => expected.has(key))])).toEqual(expected);
      }),
    );
  });

  it('loses no field: what only one side says of a day is there, unless the other side emptied it or a mark is later', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, (a, b) => {
        const merged = mergeJournals(a, b);
        for (const theirs of [a, b].flatMap(({ days }) => days)) {
          const others = [...a.days, ...b.days].filter((one) => one !== theirs && one.date === theirs.date);
          const isAlone = others.every((one) => one.arrows === undefined && one.edits?.arrows === undefined);
          const isMarked = merged.removed?.some(({ of, key }) => of === 'days' && key === theirs.date);
          if (theirs.arrows === undefined || theirs.removed || !isAlone || isMarked) continue;
          if (others.some(({ restoredAt }) => restoredAt !== undefined) || theirs.restoredAt !== undefined) continue;
          expect(merged.days.find(({ date }) => date === theirs.date)?.arrows).toEqual(theirs.arrows);
        }
      }),
    );
  });

  it('leaves both sides as they were', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, (a, b) => {
        const before = structuredClone([a, b]);
        mergeJournals(a, b);
        expect([a, b]).toEqual(before);
      }),
    );
  });

  const day = { date: '2026-02-01', note: 'first', editedAt: '2026-02-01T20:00:00+02:00' };
  it('takes the later edit, whatever the offsets it is written with', () => {
    const later = { ...day, note: 'second', editedAt: '2026-02-01T18:30:00Z' };
    expect(mergeJournals({ ...createJournal(), days: [day] }, { ...createJournal(), days: [later] }).days).toEqual([
      later,
    ]);
  });

  it('takes an edit over none', () => {
    const bare = { date: '2026-02-01', note: 'zzz' };
    expect(mergeJournals({ ...createJournal(), days: [bare] }, { ...createJournal(), days: [day] }).days).toEqual([
      day,
    ]);
  });

  it('keeps a removal over the record at the same instant, and an edit made after it', () => {
    const mark = { ...day, removed: true as const };
    const merge = (a: typeof day, b: typeof day) =>
      mergeJournals({ ...createJournal(), days: [a] }, { ...createJournal(), days: [b] });
    expect(merge(day, mark)).toEqual({
      ...createJournal(),
      removed: [{ of: 'days', key: '2026-02-01', at: day.editedAt }],
    });
    expect(visibleJournal(merge(day, mark))).toEqual(createJournal());
    const again = { ...day, editedAt: '2026-02-02T00:00:00Z' };
    expect(merge(mark, again).days).toEqual([again]);
  });

  it('keeps the record of an ended session over one that was still open at the same instant', () => {
    const open = {
      id: 'a',
      program: 'Slow mornings',
      date: '2026-02-01',
      startedAt: '2026-02-01T06:00:00Z',
      endedAt: '2026-02-01T06:10:00Z',
      reps: [],
    };
    const drills = (...records: Parameters<typeof mergeJournals>[0]['drills']) => ({
      ...createJournal(),
      drills: records,
    });
    for (const tool of ['band', 'strap'] as const) {
      const ended = { ...open, tool: 'bow' as const };
      expect(mergeJournals(drills({ ...open, open: true, tool }), drills(ended)).drills).toEqual([ended]);
    }
  });
});

describe('two devices', () => {
  const early = '2026-11-25T06:00:00.000Z';
  const late = '2026-11-25T21:00:00.000Z';
  const merge = (a: Partial<Journal>, b: Partial<Journal>): Journal => {
    const [left, right] = [
      mergeJournals({ ...createJournal(), ...a }, { ...createJournal(), ...b }),
      mergeJournals({ ...createJournal(), ...b }, { ...createJournal(), ...a }),
    ];
    expect(left).toEqual(right);
    return left;
  };

  it('that write one day keep the arrows of one and the feel of the other', () => {
    const phone: DayEntry = { date: '2026-11-25', arrows: [{ kind: 'practice', count: 72 }], editedAt: early };
    const laptop: DayEntry = { date: '2026-11-25', feel: 4, note: 'Windy', editedAt: late };
    expect(merge({ days: [phone] }, { days: [laptop] }).days).toEqual([
      { ...phone, ...laptop, edits: { arrows: early } },
    ]);
  });

  it('keep a field empty that one of them emptied later', () => {
    const filled: DayEntry = { date: '2026-11-25', note: 'Windy', feel: 4, editedAt: early };
    const emptied: DayEntry = { date: '2026-11-25', feel: 4, editedAt: late, edits: { feel: early, note: late } };
    expect(merge({ days: [filled] }, { days: [emptied] }).days).toEqual([emptied]);
  });

  const rep: RepRecord = {
    block: 0,
    set: 0,
    rep: 0,
    hand: 'usual',
    prescribedMs: 20_000,
    heldMs: 20_000,
    outcome: 'held',
  };
  const drill: DrillRecord = {
    ...{ id: 'd', program: 'Slow mornings', date: '2026-11-25', startedAt: early, endedAt: early, reps: [rep] },
  };
  const further = { ...drill, reps: [rep, { ...rep, rep: 1 }], open: true as const };

  it('that hold one open drill keep the copy that went further, also where the other one was written on later', () => {
    const behind = { ...drill, open: true as const, note: 'zzz', editedAt: late };
    expect(merge({ drills: [further] }, { drills: [behind] }).drills[0]).toMatchObject({
      reps: further.reps,
      note: 'zzz',
    });
    const worded = { ...drill, open: true as const, program: 'zzz' };
    expect(merge({ drills: [further] }, { drills: [worded] }).drills[0]?.reps).toHaveLength(2);
    expect(merge({ drills: [drill] }, { drills: [{ ...further, editedAt: late }] }).drills[0]?.open).toBeUndefined();
  });

  it('keep nothing of a drill that one of them removed, whatever the other one wrote on it later', () => {
    const mark = { of: 'drills', key: 'd', at: early };
    const merged = merge({ removed: [mark] }, { drills: [{ ...drill, note: 'kept secret', editedAt: late }] });
    expect(merged).toEqual({ ...createJournal(), removed: [mark] });
    const restored = { ...drill, restoredAt: late };
    expect(merge(merged, { drills: [restored] }).drills).toEqual([restored]);
  });

  it('keep of a day that one of them removed what the other one wrote after that', () => {
    const mark = { of: 'days', key: '2026-11-25', at: '2026-11-25T12:00:00.000Z' };
    const day: DayEntry = { date: '2026-11-25', note: 'Windy', feel: 4, editedAt: late, edits: { note: early } };
    expect(merge({ removed: [mark] }, { days: [day] }).days).toEqual([{ date: '2026-11-25', feel: 4, editedAt: late }]);
  });

  it('bring together the programs, the season and the archer’s own part of the kit', () => {
    const phone = {
      opened: [{ id: 'p', program: { title: 'Old' } }],
      ownKit: { bow: 'barebow', drawWeightLbf: 34, editedAt: early },
    };
    const laptop = {
      opened: [{ id: 'p', program: { title: 'New' }, editedAt: late }],
      ownKit: { drawWeightLbf: 36, editedAt: late },
    };
    const season = { document: { format: 'larkhold/season' as const, version: 1, weeks: 12 }, editedAt: early };
    const merged = merge({ ...phone, season }, laptop);
    expect(merged.opened).toEqual(laptop.opened);
    expect(merged.ownKit).toEqual({ bow: 'barebow', drawWeightLbf: 36, editedAt: late, edits: { bow: early } });
    expect(merged.season).toEqual(season);
    expect(merge(merged, { removed: [{ of: 'opened', key: 'p', at: early }] }).opened).toBeUndefined();
  });

  it('give back to a newer app what only it knows', () => {
    const newer = {
      strings: [
        { id: 's1', strands: 18, editedAt: early },
        { id: 's2', strands: 20, editedAt: late },
      ],
    } as Partial<Journal>;
    const older = { strings: [{ id: 's1', strands: 16, editedAt: late }] } as Partial<Journal>;
    expect(merge(newer, older)).toMatchObject({
      strings: [
        { id: 's1', strands: 16 },
        { id: 's2', strands: 20 },
      ],
    });
    const day = { date: '2026-11-25', mood: 'even', editedAt: early } as DayEntry;
    expect(merge({ days: [day] }, { days: [{ date: '2026-11-25', feel: 4, editedAt: late }] }).days[0]).toMatchObject({
      mood: 'even',
      feel: 4,
    });
  });
});

describe('instants', () => {
  it('are ordered as the platform’s own Date orders them', () => {
    const instants = fc
      .record({ at: fc.date({ min: new Date('1904-01-01'), max: new Date('2199-12-31'), noInvalidDate: true }) })
      .map(({ at }) => at.toISOString());
    fc.assert(
      fc.property(instants, instants, (a, b) => {
        expect(Math.sign(compareInstants(a, b))).toBe(Math.sign(Date.parse(a) - Date.parse(b)));
      }),
    );
  });

  it('count an unreadable one as earlier than any', () => {
    expect(compareInstants('yesterday', '1970-01-01T00:00:00Z')).toBeLessThan(0);
    expect(compareInstants('2026-02-30T00:00:00Z', '1970-01-01T00:00:00Z')).toBeLessThan(0);
    expect(compareInstants(undefined, undefined)).toBe(0);
  });
});

it('two values are the same whatever the order of their keys', () => {
  expect(isSame({ a: 1, b: [{ c: 2 }] }, { b: [{ c: 2 }], a: 1, d: undefined })).toBe(true);
  expect(isSame({ a: 1 }, { a: 1, b: 2 })).toBe(false);
  expect(isSame([1, 2], [2, 1])).toBe(false);
  expect(isSame({ 0: 1 }, [1])).toBe(false);
  expect(isSame([1], { 0: 1 })).toBe(false);
  expect(isSame([1, 2], [1])).toBe(false);
  expect(isSame([1], [1, 2])).toBe(false);
});
