import { expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { prescribe } from '../prescription/prescribe.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { seasonEffects, todaysProgram } from './todays-program.ts';

const today = '2026-11-25';
const programs = builtInPrograms;
const called = (title: string) => programs.find((one) => one.title === title)!;
const record = (date: string, title: string): DrillRecord => ({
  ...{ id: `${title} ${date}`, program: title, programId: called(title).id, date },
  ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:10:00Z` },
  reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 9000, heldMs: 9000, outcome: 'held' }],
});
const ask = (more: Partial<Parameters<typeof todaysProgram>[0]> = {}) =>
  todaysProgram({ journal: createJournal(), programs, today, ...more });

it('goes from one that is due to the next, and keeps what was chosen for its day', () => {
  const days = { wednesday: [{ title: 'Holding' }, { title: 'Flexibility' }] };
  const blocks = [{ title: 'Base', from: '2026-11-23', weeks: 4, days }];
  const document = { format: 'larkhold/season' as const, version: 1, title: 'Winter', blocks };
  const journal = { ...createJournal(), season: { document } };
  expect(ask({ journal }).program.title).toBe('Holding');
  const half = { ...journal, drills: [record(today, 'Holding')] };
  expect(ask({ journal: half }).program.title).toBe('Flexibility');
  const power = { takenId: called('Power').id!, takenDay: today };
  expect(ask({ journal, ...power }).program.title).toBe('Power');
  expect(ask({ journal, ...power, takenDay: '2026-11-24' }).program.title).toBe('Holding');
  const holding = { takenId: called('Holding').id!, takenDay: today };
  expect(ask({ journal: half, ...holding }).program.title).toBe('Flexibility');
});

it('asks less than a full day on a rest day of the season, for every built-in program, and says why', () => {
  const journal = { ...createJournal(), drills: [record('2026-11-24', 'Holding')] };
  const { season } = ask({ journal });
  expect(season.due[0]).toMatchObject({ kind: 'rest', because: { rule: 'noSession' } });
  const sum = (blocks: ReturnType<typeof prescribe>['blocks']) =>
    blocks.reduce((total, { sets, reps, holdMs }) => total + sets * reps * holdMs, 0);
  for (const program of programs.filter(({ kind }) => kind !== 'test')) {
    const input = { program, records: [], today, archer: { longestHoldSeconds: 60, hasClicker: true } };
    const full = prescribe(input);
    const effects = seasonEffects(season, program, today);
    const rest = prescribe({ ...input, ...effects });
    expect([program.title, rest.rest?.rule]).toEqual([program.title, 'seasonRest']);
    expect(sum(rest.blocks)).toBeLessThan(sum(full.blocks));
    // Taken in the rack for this very day, it is the archer's own word.
    expect(prescribe({ ...input, ...seasonEffects(season, program, today, today) }).rest).toBeUndefined();
    expect(seasonEffects(season, program, '2026-11-26').seasonRest).toBeUndefined();
  }
});
