import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyJournal } from '../../../../tests/fixtures/journal/any-journal.ts';
import { compareInstants, isSame } from './edit-order.ts';
import { createJournal, mergeJournals, visibleJournal } from './merge-journals.ts';

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

  it('loses nothing and doubles nothing: every id of either side is there once', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, (a, b) => {
        const ids = mergeJournals(a, b).drills.map((record) => record.id);
        const expected = new Set([...a.drills, ...b.drills].map((record) => record.id));
        expect(ids).toHaveLength(expected.size);
        expect(new Set(ids)).toEqual(expected);
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
    expect(merge(day, mark).days).toEqual([mark]);
    expect(visibleJournal(merge(day, mark)).days).toEqual([]);
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
    for (const note of ['a', undefined]) {
      const ended = { ...open, note };
      expect(mergeJournals(drills({ ...open, open: true }), drills(ended)).drills).toEqual([ended]);
      expect(mergeJournals(drills({ ...open, open: true, note: 'z' }), drills(ended)).drills).toEqual([ended]);
    }
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
});
