import { describe, expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { trialProgram } from '../prescription/trial-history.ts';
import { pastEnd, pastPrograms } from './plan-past.ts';

const drill = (date: string, program = 'Weekday', programId?: string): DrillRecord => {
  const at = `${date}T06:30:00Z`;
  return {
    id: date + program,
    program,
    date,
    startedAt: at,
    endedAt: at,
    reps: [],
    ...(programId ? { programId } : {}),
  };
};
/** Thirty drills on the last days of a month, the oldest on its first. */
const month = Array.from({ length: 30 }, (_, at) => drill(`2026-11-${String(at + 1).padStart(2, '0')}`));

describe('where the past ends', () => {
  it('is six weeks ago, or where the thirtieth drill from the end was', () => {
    expect(pastEnd(month, '2026-12-01')).toBe('2026-10-20'); // 42 days before
    expect(pastEnd(month, '2027-06-01')).toBe('2026-11-01');
    expect(pastEnd(month.slice(1), '2027-06-01')).toBe('2027-04-20'); // 29 drills: only the days count
    expect(pastEnd([...month].reverse(), '2027-06-01')).toBe('2026-11-01');
  });

  it('stays for four weeks', () => {
    expect(pastEnd(month, '2026-12-01', '2026-09-22')).toBe('2026-09-22'); // 28 days before 20 October
    expect(pastEnd(month, '2026-12-01', '2026-09-21')).toBe('2026-10-20');
    expect(pastEnd(month, '2026-12-01', '2026-10-21')).toBe('2026-10-20');
  });
});

describe('the programs of a past', () => {
  const named = (title: string) => trialProgram({}, { title });
  const chosen = named('Chosen');
  const programs = [...['Old', 'Drilled', 'Tested', 'Due'].map(named), chosen];
  const because = { rule: 'weekday', block: 'Base', week: 1, ofWeeks: 4 } as const;
  const season = {
    due: [{ kind: 'program' as const, program: { title: 'Due' }, because }],
    season: { tests: [{ day: '2027-01-05', program: { title: 'Tested' } }] },
  } as unknown as Parameters<typeof pastPrograms>[0]['season'];

  it('are today’s, those that are due, the tests, and those of the last six weeks, each once', () => {
    const drills = [drill('2026-10-20', 'Drilled'), drill('2026-10-19', 'Old'), drill('2026-11-30', 'Due')];
    const found = pastPrograms({ programs, chosen, season, drills, today: '2026-12-01' });
    expect(found.map(({ title }) => title)).toEqual(['Chosen', 'Due', 'Tested', 'Drilled']);
  });

  it('are eight at the most, today’s among them', () => {
    const many = Array.from({ length: 12 }, (_, at) => named(`Evening ${at}`));
    const drills = many.map(({ title }) => drill('2026-11-30', title));
    const found = pastPrograms({ programs: [...many, chosen], chosen, season, drills, today: '2026-12-01' });
    expect(found).toHaveLength(8);
    expect(found[0]).toBe(chosen);
  });
});
