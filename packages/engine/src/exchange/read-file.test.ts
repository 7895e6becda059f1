import { describe, expect, it } from 'vitest';
import { parseHandOver } from './hand-over.ts';
import { parseJournal } from './journal-file.ts';

const journalOf = (lists: Record<string, readonly unknown[]>): string =>
  JSON.stringify({ format: 'larkhold/journal', version: 1, drills: [], days: [], weeks: [], ...lists });
const day = (index: number) => ({ date: new Date(index * 86_400_000).toISOString().slice(0, 10), feel: 3 });
const drill = (reps: readonly unknown[]) => ({
  ...{ id: 'a', program: 'Attic', date: '2026-05-01', startedAt: '2026-05-01T08:00:00Z', reps },
  endedAt: '2026-05-01T08:10:00Z',
});
const refused = (text: string) => {
  const read = parseJournal(text);
  return read.ok ? [] : read.problems;
};

describe('a file with very many mistakes', () => {
  it.each(['drills', 'days', 'weeks', 'notes', 'milestones'])(
    '%s: a quarter of a million empty rows are refused, the first one first',
    (list) => {
      const problems = refused(journalOf({ [list]: Array(250_000).fill({}) }));
      expect(problems.length).toBeGreaterThan(0);
      expect(problems.length).toBeLessThanOrEqual(100);
      expect(problems[0]?.pointer).toMatch(new RegExp(`^/${list}/0/`));
    },
  );

  it('so is a drill with a quarter of a million empty reps, and a hand-over of empty drills', () => {
    expect(refused(journalOf({ drills: [drill(Array(250_000).fill({}))] }))[0]?.pointer).toMatch(/^\/drills\/0\/reps/);
    expect(refused(journalOf({ drills: Array(2000).fill(drill(Array(5000).fill({}))) }))[0]?.pointer).toMatch(
      /^\/drills\/0\/reps\/0\//,
    );
    const text = JSON.stringify({ format: 'larkhold/hand-over', version: 1, drills: Array(250_000).fill({}) });
    expect(parseHandOver(text).ok).toBe(false);
  });

  it('a mistake far behind is reported with its place', () => {
    const days = Array.from({ length: 5000 }, (_, index) => day(index));
    const broken = days.with(4321, { ...day(4321), feel: 99 });
    expect(refused(journalOf({ days: broken })).map(({ pointer }) => pointer)).toEqual(['/days/4321/feel']);
    const read = parseJournal(journalOf({ days, weeks: [{ week: '2026-W18', focus: 'calm' }] }));
    expect(read.ok && read.journal.days).toHaveLength(5000);
    expect(read.ok && read.journal.days[4321]).toEqual(day(4321));
    expect(read.ok && read.journal.weeks).toHaveLength(1);
  });
});
