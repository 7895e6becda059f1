import { describe, expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { prescribe } from '../prescription/prescribe.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { dueToday } from '../season/due-today.ts';
import { emptySeason } from '../season/empty-season.ts';
import { seasonNotices } from '../season/season-notices.ts';
import { takeDatedSessions } from '../season/take-dated-sessions.ts';
import { answerHandOver, createHandOver, formatHandOver, parseHandOver } from './hand-over.ts';

const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const madeAt = '2026-12-07T10:00:00Z';
const dated = {
  ...{ by: 'Kim', madeAt: '2026-11-20T10:00:00Z', from: '2026-11-23', to: '2026-12-06' },
  sessions: ['2026-11-23', '2026-11-26'].map((day) => ({ day, programs: [{ title: 'Holding' }], minutes: 20 })),
};
const season = { ...emptySeason('Winter'), dated: [dated] };
const drill = (date: string, held: number): DrillRecord => ({
  ...{ id: `d ${date}`, program: 'Holding', programId: holding.id, date },
  ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:20:00Z` },
  reps: Array.from({ length: held }, (_, rep) => ({
    ...{ block: 0, set: 0, rep, hand: 'usual' as const, prescribedMs: 20_000, heldMs: 20_000 },
    outcome: 'held' as const,
  })),
});
const journal = { ...createJournal(), drills: [drill('2026-11-23', 6), drill('2026-12-01', 3)] };
const input = { journal, archerId: 'a', archer: 'Jo', from: '2026-11-23', to: '2026-12-06', madeAt };

describe('planned against done in a hand-over', () => {
  it('comes back in seconds, reps and days, as it was asked on each day', () => {
    const { plan } = createHandOver({ ...input, programs: [holding], season });
    // What the program asked on its first day, worked out by the prescription itself on that day.
    const [block] = prescribe({ program: holding, records: [], today: '2026-11-23' }).blocks;
    const asked = block!.sets * block!.reps;
    expect(plan?.done).toEqual({ days: 2, reps: 9, seconds: 180 });
    expect(plan?.planned.days).toBe(2);
    expect(plan?.keptDays).toBe(1);
    expect(plan?.days.map(({ date }) => date)).toEqual(['2026-11-23', '2026-11-26', '2026-12-01']);
    expect(plan?.days[0]?.planned).toEqual({
      programs: ['Holding'],
      reps: asked,
      seconds: asked * (block!.holdMs / 1000),
    });
    expect(plan?.days[2]?.planned).toEqual({ programs: [], reps: 0, seconds: 0 });
  });

  it('is left out where nobody wrote anything, and a program that nobody has counts as a day', () => {
    expect(createHandOver({ ...input, programs: [holding] }).plan).toBeUndefined();
    expect(createHandOver({ ...input, season: emptySeason('Winter') }).plan).toBeUndefined();
    const { plan } = createHandOver({ ...input, season });
    expect(plan?.planned).toEqual({ days: 2, reps: 0, seconds: 0 });
  });

  it('does not tell of pain where pain is left out: what was asked is as if nobody had said anything', () => {
    const hurt = { ...journal, drills: journal.drills.map((one, at) => ({ ...one, pain: at === 0 })) };
    const made = (includesPain: boolean, from = journal) =>
      createHandOver({ ...input, journal: from, programs: [holding], season, includesPain }).plan;
    expect(made(true, hurt)?.planned).not.toEqual(made(true)?.planned);
    expect(made(false, hurt)).toEqual(made(true));
  });

  it('goes through the file, with the days of the answer', () => {
    const answered = answerHandOver(createHandOver({ ...input, programs: [holding], season }), {
      ...{ by: 'Kim', madeAt, comment: '', dated: { ...dated, madeAt } },
    });
    expect(parseHandOver(formatHandOver(answered))).toEqual({ ok: true, handOver: answered });
    const wrong = { by: 'Kim', madeAt, comment: '', dated: { ...dated, from: 'soon' } };
    expect(() => answerHandOver(answered, wrong)).toThrow(TypeError);
  });

  it('goes round: a coach writes the next month, its days are due, and what was done of them comes back', () => {
    // Given a hand-over that a coach answers with three dated sessions in the month that follows,
    const days = ['2026-12-08', '2026-12-11', '2026-12-15'];
    const sessions = days.map((day) => ({ day, programs: [{ title: 'Holding' }], minutes: 20 }));
    const month = { by: 'Kim', madeAt, from: '2026-12-07', to: '2027-01-06', sessions };
    const sent = answerHandOver(createHandOver({ ...input, programs: [holding] }), {
      by: 'Kim',
      madeAt,
      comment: '',
      dated: month,
    });
    const read = parseHandOver(formatHandOver(sent));
    if (!read.ok) throw new Error(read.problems[0]?.message);
    const written = read.handOver.answers.at(-1)?.dated;
    // when the archer takes it in, twice by mistake,
    const taken = takeDatedSessions(takeDatedSessions(emptySeason('Winter'), written!), written!);
    expect(taken.dated).toEqual([month]);
    expect(seasonNotices(taken, [holding])).toEqual([]);
    // then its days are due, with their minutes, and the days between are for rest, with the next day that is not;
    const due = (today: string) => dueToday(taken, { rowDays: 0 }, today);
    for (const day of days)
      expect(due(day)).toMatchObject([{ kind: 'program', program: { title: 'Holding' }, minutes: 20 }]);
    expect(due('2026-12-09')).toMatchObject([{ kind: 'rest', because: { rule: 'noSession', nextDay: '2026-12-11' } }]);
    // and after two of the three were drilled, and one day more, planned against done goes back in seconds, reps and days.
    const done = [drill('2026-12-08', 5), drill('2026-12-11', 4), drill('2026-12-13', 1)];
    const back = createHandOver({
      ...{ ...input, journal: { ...createJournal(), drills: done }, programs: [holding], season: taken },
      ...{ from: month.from, to: '2026-12-20', madeAt: '2026-12-21T10:00:00Z' },
    }).plan!;
    expect(back.done).toEqual({ days: 3, reps: 10, seconds: 200 }); // 20 s each
    expect(back.planned.days).toBe(3);
    expect(back.keptDays).toBe(2);
    expect(back.days.map(({ date, planned, done: of }) => [date, planned.reps > 0, of.reps])).toEqual([
      ['2026-12-08', true, 5],
      ['2026-12-11', true, 4],
      ['2026-12-13', false, 1],
      ['2026-12-15', true, 0],
    ]);
    // A second month that overlaps the first is reported; the one written later counts there, and nothing is lost.
    const later = { ...month, madeAt: '2026-12-10T10:00:00Z', from: '2026-12-14', sessions: [] };
    const both = takeDatedSessions(taken, later);
    expect(both.dated).toHaveLength(2);
    expect(seasonNotices(both, [holding])).toMatchObject([
      { rule: 'answersOverlap', from: '2026-12-14', to: '2027-01-06' },
    ]);
    expect(dueToday(both, { rowDays: 0 }, '2026-12-15')).toMatchObject([{ kind: 'rest' }]);
    expect(dueToday(both, { rowDays: 0 }, '2026-12-11')).toMatchObject([{ kind: 'program' }]);
  });
});
