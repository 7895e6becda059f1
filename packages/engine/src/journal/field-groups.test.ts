import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  groupsOf,
  joinRows,
  latestStamp,
  type MergeRow,
  type MergeRules,
  plainRow,
  rowOf,
  writtenAfter,
} from './field-groups.ts';

const [dawn, noon, dusk] = ['2026-11-25T06:00:00Z', '2026-11-25T12:00:00Z', '2026-11-25T18:00:00Z'];
const page: MergeRules = { kind: 'page', keyName: 'date', groups: { feel: 'feel', feelWords: 'feel' } };
const thing: MergeRules = { kind: 'thing', keyName: 'id', groups: { a: 'pair', b: 'pair' } };
const day = { date: '2026-11-25' };

/** Both ways round must give the same. */
function join(a: MergeRow, b: MergeRow, rules: MergeRules): MergeRow {
  const merged = joinRows(a, b, rules);
  expect(joinRows(b, a, rules)).toEqual(merged);
  return merged;
}

describe('taking a row apart', () => {
  it('puts what is edited together into one group, and what nobody named into one of its own', () => {
    const row = { ...day, feel: 4, feelWords: 'Calm', mood: 'even', editedAt: noon, edits: { mood: dawn } };
    expect([...groupsOf(row, page)]).toEqual([
      ['feel', { value: { feel: 4, feelWords: 'Calm' }, stamp: noon }],
      ['mood', { value: { mood: 'even' }, stamp: dawn }],
    ]);
  });

  it('leaves aside what says when, and that it is gone', () => {
    const row = { id: 'n', text: 'x', editedAt: noon, edits: {}, restoredAt: noon, removed: true } as const;
    expect([...groupsOf(row, thing)]).toEqual([['text', { value: { text: 'x' }, stamp: noon }]]);
  });

  it('names a group that was emptied, but none that has no stamp', () => {
    const row = { ...day, editedAt: noon, edits: { note: dawn, place: '' } };
    expect([...groupsOf(row, page)]).toEqual([['note', { value: {}, stamp: dawn }]]);
  });

  it('has the empty stamp where nobody knows, and the key as a field where there is only one of its kind', () => {
    expect([...groupsOf({ id: 'x' }, {})]).toEqual([['id', { value: { id: 'x' }, stamp: '' }]]);
    expect(groupsOf({ text: 'x', edits: { text: '' }, editedAt: noon }, {}).get('text')?.stamp).toBe('');
  });

  it('is not misled by fields that are called as every object’s own are', () => {
    const row = { ...day, constructor: 'x', toString: 'y', editedAt: noon, edits: { note: dawn } } as never;
    const groups = groupsOf(row, page);
    expect(groups.get('constructor')).toEqual({ value: { constructor: 'x' }, stamp: noon });
    expect(groups.get('toString')).toEqual({ value: { toString: 'y' }, stamp: noon });
  });
});

describe('putting a row together', () => {
  const group = (value: Record<string, unknown>, stamp: string) => ({ value, stamp });

  it('has key, groups by name, stamp, the stamps of older and of emptied groups, and its life, in that order', () => {
    const groups = new Map([
      ['note', group({ note: 'Windy' }, noon)],
      ['arrows', group({ arrows: [] }, dawn)],
      ['place', group({}, noon)],
    ]);
    const row = rowOf(day, groups, noon, dusk);
    expect(JSON.stringify(row)).toBe(
      `{"date":"2026-11-25","arrows":[],"note":"Windy","editedAt":"${noon}","edits":{"arrows":"${dawn}","place":"${noon}"},"restoredAt":"${dusk}"}`,
    );
  });

  it('has the stamp of a group even where the row has none', () => {
    expect(rowOf(day, new Map([['note', group({ note: 'x' }, dawn)]]), undefined)).toEqual({
      ...{ ...day, note: 'x', edits: { note: dawn } },
    });
    expect(Object.keys(rowOf(day, new Map([['note', group({ note: 'x' }, noon)]]), noon))).toEqual([
      ...['date', 'note', 'editedAt'],
    ]);
  });
});

describe('joining two versions of a row', () => {
  it('takes of each group the later one, whole', () => {
    const a = { ...day, feel: 2, feelWords: 'Tired', note: 'early note', editedAt: dawn };
    const b = { ...day, feel: 4, editedAt: noon, edits: { note: '2026-11-25T05:00:00Z' }, note: 'older note' };
    expect(join(a, b, page)).toEqual({ ...day, feel: 4, note: 'early note', editedAt: noon, edits: { note: dawn } });
  });

  it('gives back the very row where both say the same', () => {
    const a = { ...day, note: 'x', editedAt: noon };
    const b = { editedAt: noon, note: 'x', ...day };
    expect(joinRows(a, a, page)).toBe(a);
    expect(joinRows(a, b, page)).toBe(a);
    expect(joinRows(b, a, page)).toBe(b);
  });

  it('takes of two with one stamp the greater text, and keeps what only one says', () => {
    const a = { ...day, note: 'apple', place: 'Hall', editedAt: noon };
    const b = { ...day, note: 'pear', mood: 'even', editedAt: noon };
    expect(join(a, b, page)).toEqual({ ...day, note: 'pear', place: 'Hall', mood: 'even', editedAt: noon });
  });

  it('orders one instant by the device that wrote', () => {
    const a = { ...day, note: 'zzz', editedAt: `${noon}~a1` };
    const b = { ...day, note: 'aaa', editedAt: `${noon}~b2` };
    expect(join(a, b, page)).toEqual(b);
  });

  it('lets a rule for one group count for more than stamps, and where it decides nothing, the stamps', () => {
    const count = ({ value }: { value: Readonly<Record<string, unknown>> }): number => Number(value.a);
    const rules: MergeRules = { ...thing, compareGroups: { pair: (x, y) => count(x) - count(y) } };
    const a = { id: 'n', a: 9, b: 'old', text: 'old', editedAt: dawn };
    const b = { id: 'n', a: 1, b: 'new', text: 'new', editedAt: noon };
    expect(join(a, b, rules)).toEqual({ id: 'n', a: 9, b: 'old', text: 'new', editedAt: noon, edits: { pair: dawn } });
    expect(join({ ...a, a: 1 }, b, rules)).toEqual({ id: 'n', a: 1, b: 'new', text: 'new', editedAt: noon });
  });

  it('lets a thing that was put back win over all that it was, however late that was written', () => {
    const before = { id: 'n', text: 'before', extra: 1, editedAt: dusk };
    const back = { id: 'n', text: 'back', editedAt: dawn, restoredAt: noon };
    expect(join(before, back, thing)).toEqual(back);
    expect(join(back, { ...back, text: 'again', restoredAt: dusk }, thing)).toMatchObject({ text: 'again' });
  });

  it('keeps the life of a thing and drops that of a page', () => {
    const [a, b] = [
      { text: 'x', editedAt: dawn, restoredAt: noon },
      { more: 'y', editedAt: dawn, restoredAt: noon },
    ];
    expect(join({ id: 'n', ...a }, { id: 'n', ...b }, thing)).toEqual({ id: 'n', ...a, ...b });
    expect(join({ ...day, ...a }, { ...day, ...b, restoredAt: dusk }, page)).toEqual({
      ...{ ...day, text: 'x', more: 'y', editedAt: dawn },
    });
  });

  it('changes neither', () => {
    const [a, b] = [
      Object.freeze({ ...day, feel: 2, editedAt: dawn }),
      Object.freeze({ ...day, note: 'x', editedAt: noon }),
    ];
    expect(join(a, b, page)).toEqual({ ...day, feel: 2, note: 'x', editedAt: noon, edits: { feel: dawn } });
    expect(a).toEqual({ ...day, feel: 2, editedAt: dawn });
  });

  it('never loses what is later, and a row merged again with what it holds already stays as it is', () => {
    const stamps = fc.constantFrom(dawn, noon, dusk);
    const rows = fc
      .record(
        { feel: fc.nat(5), note: fc.constantFrom('a', 'b'), editedAt: stamps, feelAt: stamps },
        { requiredKeys: ['editedAt', 'feelAt'] },
      )
      .map(({ feelAt, ...row }): MergeRow => ({ ...day, ...row, edits: { feel: feelAt } }));
    fc.assert(
      fc.property(rows, rows, (a, b) => {
        const merged = join(plainRow(a, page), plainRow(b, page), page);
        expect(joinRows(merged, plainRow(a, page), page)).toEqual(merged);
        const feelStamp = (row: MergeRow) => groupsOf(row, page).get('feel')?.stamp ?? '';
        expect(feelStamp(merged)).toBe([feelStamp(a), feelStamp(b)].sort()[1]);
        expect(merged.editedAt).toBe([String(a.editedAt), String(b.editedAt)].sort()[1]);
      }),
    );
  });
});

describe('a row written in the one way', () => {
  it('is the row itself where there is nothing to tidy', () => {
    for (const row of [
      { ...day, note: 'x' },
      { ...day, note: 'x', editedAt: noon },
      { ...day, note: 'x', editedAt: noon, edits: { note: dawn } },
    ])
      expect(plainRow(row, page)).toBe(row);
    const back = { id: 'n', text: 'x', editedAt: noon, restoredAt: dusk, edits: { text: dawn } };
    expect(plainRow(back, thing)).toBe(back);
  });

  it('has no stamp of a group that says the same as the row’s, no empty stamp, and of a page no life', () => {
    expect(plainRow({ ...day, note: 'x', editedAt: noon, edits: { note: noon } }, page)).toEqual({
      ...{ ...day, note: 'x', editedAt: noon },
    });
    expect(Object.keys(plainRow({ ...day, note: 'x', editedAt: '' }, page))).toEqual(['date', 'note']);
    expect(Object.keys(plainRow({ ...day, note: 'x', restoredAt: noon }, page))).toEqual(['date', 'note']);
    expect(plainRow({ id: 'n', text: 'x', edits: {}, restoredAt: noon }, thing)).toEqual({
      ...{ id: 'n', text: 'x', restoredAt: noon },
    });
  });
});

describe('what was written after an instant', () => {
  it('is of a page what has a later stamp, group by group; what is as old is not later', () => {
    const row = { ...day, feel: 4, note: 'x', place: 'Hall', editedAt: dusk, edits: { note: dawn, place: noon } };
    expect(writtenAfter(row, noon, page)).toEqual({ ...day, feel: 4, editedAt: dusk });
    expect(writtenAfter(row, dawn, page)).toEqual({
      ...{ ...day, feel: 4, place: 'Hall', editedAt: dusk, edits: { place: noon } },
    });
  });

  it('is the row itself if all of it is later, and nothing if nothing is', () => {
    const row = { ...day, note: 'x', editedAt: noon };
    expect(writtenAfter(row, dawn, page)).toBe(row);
    expect(writtenAfter(row, noon, page)).toBeUndefined();
    expect(writtenAfter(row, dusk, page)).toBeUndefined();
    const unstamped = { ...day, note: 'x' };
    expect(writtenAfter(unstamped, dawn, page)).toBeUndefined();
  });

  it('is the stamp alone where only that is later, and the group alone where only that is', () => {
    expect(writtenAfter({ ...day, note: 'x', editedAt: dusk, edits: { note: dawn } }, noon, page)).toEqual({
      ...{ ...day, editedAt: dusk },
    });
    const group = { ...day, note: 'x', editedAt: dawn, edits: { note: dusk } };
    const left = writtenAfter(group, noon, page);
    expect(left).toEqual({ ...day, note: 'x', edits: { note: dusk } });
    expect(Object.keys(left ?? {})).not.toContain('editedAt');
  });
});

it('the latest stamp of a row is the last of its own, its groups’ and its life’s', () => {
  expect(latestStamp(day)).toBeUndefined();
  expect(latestStamp({ ...day, editedAt: dawn })).toBe(dawn);
  expect(latestStamp({ ...day, editedAt: dusk, restoredAt: noon, edits: { note: dawn } })).toBe(dusk);
  expect(latestStamp({ ...day, editedAt: dawn, restoredAt: dusk, edits: { note: noon } })).toBe(dusk);
  expect(latestStamp({ ...day, editedAt: dawn, restoredAt: noon, edits: { note: dawn, feel: dusk } })).toBe(dusk);
});
