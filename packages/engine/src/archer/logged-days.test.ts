import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import { prescribe } from '../prescription/prescribe.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { knowArcher } from './know-archer.ts';

const program = builtInPrograms[0]!;
const first = dayNumber('2026-06-01');
const today = dayOfNumber(first + 70);

function drill(id: string, dayAt: number, isShort: boolean): DrillRecord {
  const date = dayOfNumber(first + dayAt);
  const startedAt = `${date}T06:30:00Z`;
  const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 10_000 } as const;
  const end = isShort ? ({ heldMs: 4_000, outcome: 'short' } as const) : ({ heldMs: 10_000, outcome: 'held' } as const);
  const reps = Array.from({ length: 6 }, (_, at) => ({ ...rep, rep: at, ...end }));
  return { id, program: program.title, programId: program.id, date, startedAt, endedAt: startedAt, reps };
}

const anyEdit = fc.record({
  do: fc.constantFrom(
    'add',
    'add',
    'add',
    'early',
    'copy',
    'remove',
    'in place',
    'version',
    'entry',
    'entry in place',
    'next',
  ),
  at: fc.nat(100),
  isShort: fc.boolean(),
  key: fc.constantFrom('effort', 'pain', 'date', 'removed', 'reps', 'fewer reps', 'program'),
});

/** A careless caller changes a record that was read before. */
function changeInPlace(record: DrillRecord, key: string, isShort: boolean, dayAt: number): void {
  if (key === 'effort') record.effort = isShort ? 10 : 3;
  if (key === 'pain') record.pain = isShort;
  if (key === 'date') record.date = dayOfNumber(first + dayAt);
  if (key === 'removed') record.removed = true;
  if (key === 'reps') record.reps = drill('', dayAt, isShort).reps;
  if (key === 'fewer reps') record.reps.pop();
  if (key === 'program') Object.assign(record, { program: 'Another', programId: undefined });
}

describe('the journal by days', () => {
  it('never gives what was kept where anything was changed: later, earlier, merged, removed or in place', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { minLength: 3, maxLength: 14 }), (edits) => {
        let records: DrillRecord[] = [drill('first', 0, false)];
        let days: DayEntry[] = [];
        for (const [turn, { do: kind, at, isShort, key }] of edits.entries()) {
          const place = at % records.length;
          const one = records[place]!;
          if (kind === 'add') records = [...records, drill(`${turn}`, turn * 3 + 1, isShort)];
          if (kind === 'early') records = [drill(`${turn}`, at % 60, isShort), ...records];
          if (kind === 'copy') records = structuredClone(records);
          if (kind === 'remove' && records.length > 1) records = records.filter((other) => other !== one);
          if (kind === 'in place') changeInPlace(one, key, isShort, at % 60);
          if (kind === 'version') records = [...records, { ...one, effort: 9, editedAt: '2026-10-01T00:00:00Z' }];
          if (kind === 'entry') days = [...days, { date: dayOfNumber(first + (at % 70)), pain: isShort }];
          const [entry] = days;
          if (kind === 'entry in place' && entry) entry.pain = isShort;
          const known = { records, days, today };
          const fresh = structuredClone(known);
          expect(prescribe({ program, ...known })).toEqual(prescribe({ program, ...fresh }));
          expect(knowArcher(known)).toEqual(knowArcher(fresh));
          // Asked with a drill that is not there yet, and may never be.
          const next = { ...known, records: [...records, drill('next', 60 + (at % 9), isShort)] };
          if (kind !== 'next') continue;
          expect(prescribe({ program, ...next })).toEqual(prescribe({ program, ...structuredClone(next) }));
          expect(prescribe({ program, ...known })).toEqual(prescribe({ program, ...fresh }));
        }
      }),
      { seed: 319, numRuns: 200 },
    );
  });
});
