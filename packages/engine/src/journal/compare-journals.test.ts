import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyJournal } from '../../../../tests/fixtures/journal/any-journal.ts';
import { collectionNames, singleNames } from './collections.ts';
import { compareJournals } from './compare-journals.ts';
import { isSame } from './edit-order.ts';
import type { DayEntry, Journal } from './journal.ts';
import { createJournal, mergeJournals } from './merge-journals.ts';

const withDays = (...days: DayEntry[]): Journal => ({ ...createJournal(), days });
const early = '2026-04-01T10:00:00Z';
const late = '2026-04-02T10:00:00Z';

describe('comparing', () => {
  it('tells new, changed, kept and the same apart', () => {
    const ours = withDays(
      { date: '2026-04-01', note: 'ours', editedAt: early },
      { date: '2026-04-02', note: 'ours', editedAt: late },
      { date: '2026-04-03', note: 'both', editedAt: early },
      { date: '2026-04-04', note: 'ours alone' },
      { date: '2026-04-06', note: 'stays', editedAt: early },
    );
    const theirs = withDays(
      { date: '2026-04-01', note: 'theirs', editedAt: late },
      { date: '2026-04-02', note: 'theirs', editedAt: early },
      { editedAt: early, note: 'both', date: '2026-04-03' },
      { date: '2026-04-05', note: 'new' },
      { date: '2026-04-06', note: 'stays', editedAt: late, removed: true },
    );
    expect(compareJournals(ours, theirs)).toMatchObject({
      days: {
        added: ['2026-04-05'],
        changed: ['2026-04-01', '2026-04-06'],
        kept: ['2026-04-02'],
        same: ['2026-04-03'],
        removed: ['2026-04-06'],
      },
      addedCount: 1,
      changedCount: 2,
      keptCount: 1,
      sameCount: 1,
      majorGoal: 'same',
    });
  });

  it('tells of every list and of what there is only one of', () => {
    const drill = { program: 'x', date: '2026-04-01', startedAt: early, endedAt: early, reps: [] };
    const theirs: Journal = {
      drills: [{ ...drill, id: 'd' }],
      days: [{ date: '2026-04-01' }],
      weeks: [{ week: '2026-W14' }],
      notes: [{ id: 'n', madeAt: early }],
      milestones: [{ id: 'm', text: 'x', setDay: '2026-04-01' }],
      opened: [{ id: 'p', program: {} }],
      majorGoal: { text: 'theirs', editedAt: early },
      season: { document: { format: 'larkhold/season', version: 1 } },
      ownKit: { editedAt: late },
    };
    const ours: Journal = {
      ...createJournal(),
      majorGoal: { text: 'ours', editedAt: late },
      ownKit: { editedAt: early },
    };
    const only = (key: string) => ({ added: [key], changed: [], kept: [], same: [], removed: [] });
    expect(compareJournals(ours, theirs)).toEqual({
      ...{ drills: only('d'), days: only('2026-04-01'), weeks: only('2026-W14'), notes: only('n') },
      ...{ milestones: only('m'), opened: only('p'), majorGoal: 'kept', season: 'added', ownKit: 'changed' },
      ...{ addedCount: 6, changedCount: 0, keptCount: 0, sameCount: 0 },
    });
    const again = compareJournals(theirs, theirs);
    expect(again).toMatchObject({ majorGoal: 'same', season: 'same', ownKit: 'same', addedCount: 0, sameCount: 6 });
  });

  it('counts what we have removed, and they still have, as ours that is kept: it does not come back', () => {
    const drill = { id: 'd', program: 'x', date: '2026-04-01', startedAt: early, endedAt: early, reps: [] };
    const ours: Journal = { ...createJournal(), removed: [{ of: 'drills', key: 'd', at: late }] };
    const told = compareJournals(ours, { ...createJournal(), drills: [drill] });
    expect(told.drills).toEqual({ added: [], changed: [], kept: ['d'], same: [], removed: [] });
    expect([told.keptCount, told.addedCount]).toEqual([1, 0]);
  });

  it('says "the same" exactly when a merge would change nothing', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, (ours, theirs) => {
        const comparison = compareJournals(ours, theirs);
        const changes =
          comparison.addedCount + comparison.changedCount > 0 ||
          singleNames.some((name) => ['added', 'changed'].includes(comparison[name]));
        const tidy = mergeJournals(ours, createJournal());
        expect(!isSame(known(mergeJournals(tidy, theirs)), known(tidy))).toBe(changes);
      }),
    );
  });

  it('of a merged journal with either side finds nothing new', () => {
    fc.assert(
      fc.property(anyJournal, anyJournal, (ours, theirs) => {
        const after = compareJournals(mergeJournals(ours, theirs), theirs);
        expect(after.addedCount + after.changedCount).toBe(0);
      }),
    );
  });
});

/** What this app shows of a journal: no marks, nothing that only a newer app knows. */
function known(journal: Journal): unknown {
  return Object.fromEntries([...collectionNames, ...singleNames].map((name) => [name, journal[name]]));
}
