import { describe, expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { prescribe } from '../prescription/prescribe.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { emptySeason } from '../season/empty-season.ts';
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
});
