// RFC 4180, section 2, read back by Papa Parse, an independent reader. OWASP, "CSV Injection", lists the characters that start a formula.
import {
  type DrillRecord,
  formatCsv,
  formatDaysCsv,
  formatDrillsCsv,
  formatRepsCsv,
  type Journal,
} from '@larkhold/engine';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { anyJournal } from '../fixtures/journal/any-journal.ts';

const read = (text: string): string[][] => {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: ',', newline: '\r\n' });
  expect(errors).toEqual([]);
  expect(data.pop()).toEqual(['']); // after the final line break
  return data;
};
const unguarded = (cell: string): string => cell.replace(/^'/, '');
const record: DrillRecord = {
  id: 'd-1',
  program: '=HYPERLINK("http://example.invalid","x")',
  date: '2026-10-25',
  startedAt: '2026-10-25T02:30:00+02:00',
  endedAt: '2026-10-25T02:10:00+01:00',
  reps: [
    { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' },
    { block: 0, set: 0, rep: 1, hand: 'opposite', prescribedMs: 30_000, heldMs: 28_400, outcome: 'short' },
  ],
  effort: 6.5,
  pain: false,
  note: 'two lines,\r\none "quoted"',
};
const journal: Journal = {
  drills: [record, { ...record, id: 'gone', removed: true }],
  days: [
    { date: '2026-10-24', arrows: [{ kind: 'blank bale', count: 60 }], work: [{ kind: 'mobility', minutes: 12.5 }] },
  ],
  weeks: [],
};

describe('CSV', () => {
  it('gives any text back, but for the guard before a formula', () => {
    const cells = fc.string({ unit: 'binary' }).map((text) => text.replaceAll('\0', ''));
    fc.assert(
      fc.property(fc.array(fc.tuple(cells, cells, cells), { minLength: 1 }), (rows) => {
        const back = read(formatCsv(rows.map((row) => ['key', ...row])));
        expect(back).toHaveLength(rows.length);
        for (const [index, row] of rows.entries()) {
          expect(back[index]?.slice(1).map((cell, at) => (cell === row[at] ? cell : unguarded(cell)))).toEqual(row);
        }
      }),
    );
  });

  it('leaves no cell that a spreadsheet would run', () => {
    const starts = fc.constantFrom('=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠');
    fc.assert(
      fc.property(starts, fc.string(), (start, rest) => {
        expect(read(formatCsv([['a', start + rest]]))[0]?.[1]).toBe(`'${start}${rest}`);
      }),
    );
  });

  it('ends every record in CRLF and has as many fields in each (RFC 4180, 2.1 and 2.4)', () => {
    fc.assert(
      fc.property(anyJournal, (any) => {
        for (const format of [formatDrillsCsv, formatRepsCsv, formatDaysCsv]) {
          const text = format(any);
          expect(text.endsWith('\r\n')).toBe(true);
          const rows = read(text);
          expect(new Set(rows.map((row) => row.length)).size).toBe(1);
        }
      }),
    );
  });

  it('quotes a field with a comma, a quote or a line break of any kind (RFC 4180, 2.6 and 2.7)', () => {
    expect(formatCsv([['a\rb', 'c\nd', 'e,f', 'g"h', 'plain', 1.5, undefined, true]])).toBe(
      '"a\rb","c\nd","e,f","g""h",plain,1.5,,yes\r\n',
    );
  });

  it('has a row for each drill that is kept', () => {
    const [header, row, ...more] = read(formatDrillsCsv(journal));
    expect(more).toEqual([]);
    const cells = Object.fromEntries((header ?? []).map((name, index) => [name, row?.[index]]));
    expect(cells).toMatchObject({
      date: '2026-10-25',
      program: `'=HYPERLINK("http://example.invalid","x")`,
      reps: '2',
      held: '1',
      short: '1',
      'hold seconds': '58.4',
      effort: '6.5',
      pain: 'no',
      note: 'two lines,\r\none "quoted"',
      id: 'd-1',
    });
  });

  it('has a row for each rep, counted from 1', () => {
    const rows = read(formatRepsCsv(journal));
    expect(rows).toHaveLength(3);
    expect(rows[2]).toEqual([
      '2026-10-25',
      `'${record.program}`,
      '1',
      '1',
      '2',
      'opposite',
      '30',
      '28.4',
      'short',
      'd-1',
      '',
      // The clock's own word, and no camera.
      '28.4',
      'short',
      '',
      '',
    ]);
  });

  it('has a row for each day with an entry or a drill', () => {
    const [header, ...rows] = read(formatDaysCsv(journal));
    const column = (name: string) => rows.map((row) => row[header?.indexOf(name) ?? -1]);
    expect(column('date')).toEqual(['2026-10-24', '2026-10-25']);
    expect(column('blank bale arrows')).toEqual(['60', '0']);
    expect(column('mobility minutes')).toEqual(['12.5', '0']);
    expect(column('drills')).toEqual(['0', '1']);
    expect(column('hold seconds')).toEqual(['0', '58.4']);
  });
});
