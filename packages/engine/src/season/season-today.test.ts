import { describe, expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { seasonSchema } from './season.ts';
import { seasonToday } from './season-today.ts';

const today = '2026-11-25';
const programs = builtInPrograms;
const called = (title: string) => programs.find((one) => one.title === title)!;
const stored = (season: object) => ({
  document: { format: 'larkhold/season' as const, version: 1, title: 'Winter', blocks: [], ...season },
});
const ask = (more: Partial<Parameters<typeof seasonToday>[0]> = {}) =>
  seasonToday({ records: [], programs, today, ...more });
const drilled = (date: string, title = 'Holding'): DrillRecord => ({
  ...{ id: `${title} ${date}`, program: title, programId: called(title).id, date, pain: false },
  ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:10:00Z` },
  reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 9000, heldMs: 9000, outcome: 'held' }],
});

describe('seasonToday', () => {
  it('is there without set-up: a first run has a drill, whatever the weekday', () => {
    for (let at = 20; at < 27; at++) {
      const { due, isOwn, own } = ask({ today: `2026-11-${at}` });
      expect(due).toMatchObject([{ kind: 'program', program: { title: 'Club starter' } }]);
      expect([isOwn, own]).toEqual([false, undefined]);
    }
  });

  it('moves nobody on to another program unasked', () => {
    const archer = { longestHoldSeconds: 200 };
    expect(ask({ archer, chosen: called('Club starter') }).due).toMatchObject([{ program: { title: 'Club starter' } }]);
    expect(ask({ archer }).due).toMatchObject([{ program: { title: 'One set of ten' } }]);
  });

  it('rests after a drill of yesterday, and says when it goes on', () => {
    const records = [drilled('2026-11-24')];
    expect(ask({ records, chosen: called('Holding') }).due).toMatchObject([
      { kind: 'rest', because: { rule: 'noSession', nextDay: '2026-11-27' } },
    ]);
  });

  it('takes the archer’s own weekdays where there are any', () => {
    const days = { wednesday: [{ title: 'Power' }, { title: 'Flexibility' }] };
    const { due, isOwn } = ask({ stored: stored({ blocks: [{ title: 'Base', from: '2026-11-23', weeks: 4, days }] }) });
    expect(isOwn).toBe(true);
    expect(due.map((one) => one.kind === 'program' && one.program.title)).toEqual(['Power', 'Flexibility']);
  });

  it('keeps competitions and a coach’s days where the archer wrote no weekdays', () => {
    const competitions = [{ title: 'Club shoot', day: '2026-11-26', importance: 'minor' }];
    expect(ask({ stored: stored({ competitions }) }).due).toMatchObject([
      { kind: 'rest', because: { rule: 'dayBeforeCompetition', title: 'Club shoot' } },
    ]);
    const dated = [
      {
        ...{ by: 'Kim', madeAt: '2026-11-20T10:00:00Z', from: '2026-11-23', to: '2026-11-29' },
        sessions: [{ day: today, programs: [{ title: 'Power' }] }],
      },
    ];
    const records = [drilled('2026-11-24')];
    expect(ask({ stored: stored({ dated }), records }).due).toMatchObject([
      { kind: 'program', program: { title: 'Power' }, because: { rule: 'coach', by: 'Kim' } },
    ]);
  });

  it('has the competition of an older kit, once', () => {
    expect(ask({ competitionDay: today }).due).toMatchObject([{ kind: 'rest', because: { rule: 'competition' } }]);
    const competitions = [{ title: 'Club shoot', day: today, importance: 'minor' as const }];
    const { season } = ask({ stored: stored({ competitions }), competitionDay: today });
    expect(season.competitions).toHaveLength(1);
  });

  it('goes on without a season that it cannot read, and says why', () => {
    const { due, problems, own } = ask({ stored: stored({ blocks: 'none' }) });
    expect(due[0]!.kind).toBe('program');
    expect(own).toBeUndefined();
    expect(problems?.[0]?.pointer).toBe('/blocks');
  });

  it('is a valid season, also beside records with impossible dates', () => {
    const { season } = ask({ records: [drilled('2026-02-31'), drilled('2026-11-20')] });
    expect(seasonSchema.safeParse(season).success).toBe(true);
  });
});
