import { describe, expect, it } from 'vitest';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { prescribe } from './prescribe.ts';
import { sessionsOf } from './program-sessions.ts';
import { missedTwo, trialLadder, trialProgram, trialRecord } from './trial-history.ts';

// What happens to odd histories is ours to define; docs/prescription.md says the same in words.

const program = trialProgram();
const idsOf = (records: ReturnType<typeof trialRecord>[], today = '2026-11-25') =>
  sessionsOf(program, records, dayNumber(today)).sessions.map(({ record }) => record.id);
const holdOf = (records: ReturnType<typeof trialRecord>[], today = '2026-11-25', of = program) =>
  prescribe({ program: of, records, today }).blocks[0]!.holdMs / 1000;

describe('the order of sessions', () => {
  // Auckland, UTC+13, 25 November 07:00 is 24 November 18:00 UTC; Los Angeles, UTC-8, 24 November 20:00 is 25 November 04:00 UTC.
  const auckland = { ...trialRecord('2026-11-25', 30), id: 'first', startedAt: '2026-11-25T07:00:00+13:00' };
  const losAngeles = { ...trialRecord('2026-11-24', 30), id: 'second', startedAt: '2026-11-24T20:00:00-08:00' };

  it('is that of real instants, though the local day went back', () => {
    expect(idsOf([losAngeles, auckland])).toEqual(['first', 'second']);
    expect(holdOf([losAngeles, auckland])).toBe(35);
  });

  it('counts no day off where the local day went back', () => {
    const layoff = [{ days: 2, stepsDown: 1 }];
    const records = [trialRecord('2026-11-24', 30), auckland, { ...losAngeles, reps: [] }];
    expect(holdOf(records, '2026-11-26', trialProgram({ ladder: { ...trialLadder, layoff } }))).toBe(35);
    expect(holdOf(records, '2026-11-27', trialProgram({ ladder: { ...trialLadder, layoff } }))).toBe(30);
  });

  it('compares instants, not their text', () => {
    const early = { ...trialRecord('2026-11-24', 30), id: 'early', startedAt: '2026-11-24T09:00:00+02:00' };
    const late = { ...trialRecord('2026-11-24', 30), id: 'late', startedAt: '2026-11-24T08:00:00Z' };
    const later = { ...trialRecord('2026-11-24', 30), id: 'later', startedAt: '2026-11-24T08:00:00.500Z' };
    expect(idsOf([later, late, early])).toEqual(['early', 'late', 'later']);
  });

  it('puts a record whose start cannot be read at noon of its day', () => {
    const typed = { ...trialRecord('2026-11-24', 30), id: 'typed', startedAt: 'in the evening' };
    const morning = { ...trialRecord('2026-11-24', 30), id: 'morning', startedAt: '2026-11-24T06:30:00Z' };
    const next = { ...trialRecord('2026-11-25', 30), id: 'next' };
    expect(idsOf([next, typed, morning])).toEqual(['morning', 'typed', 'next']);
  });
});

describe('odd histories', () => {
  it('leaves out a record whose date is no day, and names it', () => {
    const records = [
      { ...trialRecord('2026-11-20', 30), date: '2026-02-30', id: 'odd' },
      trialRecord('2026-11-22', 30),
    ];
    const { reasons, blocks } = prescribe({ program, records, today: '2026-11-25' });
    expect(blocks[0]!.holdMs).toBe(30_000);
    expect(reasons.at(-1)).toMatchObject({ rule: 'impossibleDate', facts: { records: 1, dates: '2026-02-30' } });
    expect(reasons.at(-1)!.change).toContain('no such day as 2026-02-30');
  });

  it('counts a record given twice once, as last edited', () => {
    const record = trialRecord('2026-11-22', 30);
    expect(holdOf([record, record])).toBe(30);
    const removed = { ...record, removed: true as const, editedAt: '2026-11-23T00:00:00Z' };
    const other = trialRecord('2026-11-20', 30);
    expect(holdOf([removed, other, record])).toBe(30);
  });

  it('counts a day once, however many drills, and a missed one outweighs', () => {
    const evening = { ...trialRecord('2026-11-24', 30), id: 'evening', startedAt: '2026-11-24T19:00:00Z' };
    expect(holdOf([evening, trialRecord('2026-11-24', 30)])).toBe(30);
    expect(holdOf([evening, trialRecord('2026-11-24', 30), trialRecord('2026-11-22', 30)])).toBe(35);
    const missed = { ...trialRecord('2026-11-24', 30, missedTwo), id: 'missed', startedAt: '2026-11-24T12:00:00Z' };
    expect(holdOf([evening, missed, trialRecord('2026-11-24', 30)])).toBe(25.5);
  });

  it('counts sessions of before and after an edit together, each by what it asked', () => {
    const before = [trialRecord('2026-11-16', 30), trialRecord('2026-11-18', 30)];
    const after = [trialRecord('2026-11-20', 35), trialRecord('2026-11-22', 35)];
    const slower = trialProgram({ ladder: { ...trialLadder, climbAfter: { cleanSessions: 4 } } });
    expect(holdOf([...before, ...after])).toBe(40);
    expect(holdOf([...before, ...after], '2026-11-25', slower)).toBeLessThanOrEqual(40);
  });

  it('forgets a program renamed without an id, and takes up a deleted one that comes back', () => {
    const records = [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30)];
    expect(holdOf(records, '2026-11-25', { ...program, title: 'Mornings' })).toBe(30);
    expect(holdOf(records, '2026-11-25', trialProgram())).toBe(35);
  });

  it('after a year asks for no more than the foot', () => {
    const climbed = [30, 30, 35, 35, 40, 40].map((hold, at) => trialRecord(`2025-11-${10 + at}`, hold));
    expect(holdOf(climbed, '2025-11-17')).toBe(45);
    expect(holdOf(climbed, '2026-11-16')).toBeLessThanOrEqual(30);
  });

  it('with the clock set back, keeps later records out until their day comes', () => {
    const records = [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30)];
    const { reasons, blocks } = prescribe({ program, records, today: '2020-01-01' });
    expect(blocks[0]!.holdMs).toBe(30_000);
    expect(reasons.at(-1)).toMatchObject({ rule: 'future', facts: { records: 2 } });
    expect(holdOf([...records, trialRecord('2020-01-01', 30)], '2026-11-25')).toBe(35);
  });

  it('takes ten years of clean days to the top and stays there', () => {
    const records = Array.from({ length: 3650 }, (_, day) => trialRecord(dayOfNumber(17_000 + day), 45));
    const { blocks, reasons } = prescribe({ program, records, today: dayOfNumber(20_650) });
    // A rest day, for every day has a drill; half of the reps is the most. Weight ends at 5 lb where no coach says more.
    expect(blocks[0]).toMatchObject({ holdMs: 45_000, addedWeightLbf: 5 });
    expect(reasons.map(({ rule }) => rule)).toContain('top');
  });

  it('passes over diary entries whose date is no day', () => {
    const days = [{ date: '2026-11-2x', pain: true }];
    expect(prescribe({ program, records: [], today: '2026-11-25', days }).blocks[0]!.reps).toBe(5);
  });
});
