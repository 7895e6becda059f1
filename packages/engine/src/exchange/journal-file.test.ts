import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyWrittenJournal } from '../../../../tests/fixtures/journal/any-journal.ts';
import { journalSchema } from '../journal/journal.ts';
import { createJournal, mergeJournals } from '../journal/merge-journals.ts';
import { formatJournal, parseJournal } from './journal-file.ts';

const fixtureOf = (version: number): string =>
  readFileSync(new URL(`../../../../tests/fixtures/journal/v${version}.journal.json`, import.meta.url), 'utf8');
const fixture = fixtureOf(2);
const problemsOf = (text: string) => {
  const read = parseJournal(text);
  if (read.ok) throw new Error('expected problems');
  return read.problems;
};
const change = (edit: (file: Record<string, unknown>) => void): string => {
  const file = JSON.parse(fixture);
  edit(file);
  return JSON.stringify(file);
};

describe('a journal file', () => {
  it('reads back what was written, each thing once', () => {
    fc.assert(
      fc.property(anyWrittenJournal, (journal) => {
        const text = formatJournal(journal);
        expect(parseJournal(text)).toEqual({ ok: true, journal: mergeJournals(journal, createJournal()) });
        expect(formatJournal(journal)).toBe(text);
      }),
    );
  });

  it('is the same text after it was read and written again, in whatever order rows came out of a merge', () => {
    const week = { week: '2026-W01', goal: 'Ten', focus: 'Low', sketch: [], comment: 'More rest' };
    const editedAt = '2026-01-05T07:00:00Z';
    const weeks = [
      { ...week, editedAt: '' },
      { ...week, editedAt, edits: { goal: editedAt } },
      { comment: 'More rest', zebra: 1, week: '2026-W01', goal: 'Ten', focus: 'Low', sketch: [], alpha: 2, editedAt },
    ];
    for (const one of weeks) {
      for (const other of [undefined, { ...week, focus: 'High', editedAt: '2026-01-06T07:00:00Z' }]) {
        const text = formatJournal({ drills: [], days: [], weeks: other ? [one, other] : [one] });
        const read = parseJournal(text);
        if (!read.ok) throw new Error(JSON.stringify(read.problems));
        expect(formatJournal(read.journal)).toBe(text);
      }
    }
  });

  it('holds only what the schema allows', () => {
    fc.assert(fc.property(anyWrittenJournal, (journal) => journalSchema.safeParse(journal).success));
  });

  it('of version 1 is read for ever; of what it says was removed a mark is kept, and nothing else', () => {
    const read = parseJournal(fixtureOf(1));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.journal.drills.map((record) => record.id)).toEqual(['d-0001']);
    expect(read.journal.removed).toEqual([{ of: 'drills', key: 'd-0002', at: '2026-01-04T05:32:00Z' }]);
    const old = JSON.parse(fixtureOf(1));
    expect(read.journal.drills).toEqual(old.drills.slice(0, 1));
    expect(read.journal).toMatchObject({ days: old.days, weeks: old.weeks, majorGoal: old.majorGoal });
    expect(read.madeAt).toBe('2026-01-05T07:00:00Z');
  });

  it('of version 2 is read for ever, and written byte for byte as it was, what only a newer app knows included', () => {
    const read = parseJournal(fixture);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.journal.days[0]?.arrows).toEqual([{ kind: 'blank bale', count: 90, distanceM: 4 }]);
    expect(read.journal.weeks[0]?.focus).toBe('Low front shoulder');
    expect(read.madeAt).toBe('2026-11-27T09:00:00Z');
    expect(formatJournal(read.journal, read.madeAt)).toBe(fixture);
  });

  it('may begin with a byte order mark', () => {
    expect(parseJournal(`\uFEFF${fixture}`).ok).toBe(true);
  });

  it('that is cut off says where it ends', () => {
    expect(problemsOf(fixture.slice(0, 200))).toMatchObject([{ pointer: '', line: expect.any(Number) }]);
    expect(problemsOf('{\n  "format": oops')).toMatchObject([{ line: 2, column: 13 }]);
    expect(problemsOf('')).toHaveLength(1);
  });

  it('of another kind is refused by name', () => {
    expect(problemsOf('{"format":"larkhold/program","version":1}')[0]?.message).toContain('larkhold/program');
    for (const foreign of ['[]', 'null', '12', '"larkhold/journal"', '{"format":["larkhold/journal"]}']) {
      expect(problemsOf(foreign)[0]?.pointer).toBe('/format');
    }
  });

  it('of a newer version is refused with a message that says so', () => {
    expect(problemsOf('{"format":"larkhold/journal","version":3}')).toMatchObject([
      { pointer: '/version', message: expect.stringContaining('newer') },
    ]);
    for (const version of ['0', '1.5', '"1"', 'null', '-1', '1e400']) {
      expect(problemsOf(`{"format":"larkhold/journal","version":${version}}`)[0]?.pointer).toBe('/version');
    }
  });

  it('reports every problem, and where', () => {
    const text = change((file) => {
      const [first] = file.drills as Record<string, unknown>[];
      if (first !== undefined) {
        first.effort = 11;
      }
      file.days = [{ date: '2026-02-30' }];
    });
    const pointers = problemsOf(text).map((problem) => problem.pointer);
    expect(pointers.sort()).toEqual(['/days/0/date', '/drills/0/effort']);
  });

  it('may not have a key called __proto__, and takes its kin as ordinary unknown keys', () => {
    const withKey = (key: string) => fixture.replace('"format"', `"${key}": {"polluted": true}, "format"`);
    expect(problemsOf(withKey('__proto__'))[0]?.pointer).toBe('/__proto__');
    expect(problemsOf(fixture.replace('"feel"', '"__proto__": {"polluted": true}, "feel"'))[0]?.pointer).toBe(
      '/days/0/__proto__',
    );
    for (const key of ['constructor', 'toString']) {
      const read = parseJournal(withKey(key));
      expect(read.ok && formatJournal(read.journal)).toContain(`"${key}"`);
    }
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('that is huge or bottomless is refused', () => {
    expect(problemsOf(' '.repeat(64 * 1024 * 1024 + 1))[0]?.message).toContain('too big');
    expect(problemsOf('['.repeat(200_000))).toHaveLength(1);
    expect(problemsOf(`${'['.repeat(200_000)}${']'.repeat(200_000)}`)).toHaveLength(1);
    const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`;
    expect(problemsOf(fixture.replace('"format"', `"deep": ${deep}, "format"`))).toHaveLength(1);
  });
});
