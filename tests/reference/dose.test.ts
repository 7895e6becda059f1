import { builtInPrograms, createJournal, type DrillRecord, estimateMaxHold } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import { describe, expect, it } from 'vitest';
import { daysPerWeekOf } from '../../apps/web/src/rack/plan/plan-settings.ts';

describe('days a week', () => {
  // ACSM position stand, Ratamess et al. 2009, Med Sci Sports Exerc 41(3):687: novice 2-3, intermediate 3-4, advanced 4-5 days a week.
  it('are three where nothing else is said: right for novices and for intermediates', () => {
    const days = daysPerWeekOf({ kit: createKit(), journal: createJournal() });
    expect(days).toBeGreaterThanOrEqual(2);
    expect(days).toBeLessThanOrEqual(3);
    expect(days).toBeGreaterThanOrEqual(3);
    expect(days).toBeLessThanOrEqual(4);
  });
});

describe('a hold', () => {
  // Lum & Barbosa 2019, Int J Sports Med 40:363: isometric work for size, 3-30 s a hold.
  it('begins between 3 and 30 s in every built-in program that trains', () => {
    for (const { blocks } of builtInPrograms.filter(({ kind }) => kind !== 'test')) {
      for (const { hold } of blocks) expect(hold >= 3 && hold <= 30).toBe(true);
    }
  });
});

describe('the range of a longest hold', () => {
  // Frey Law & Avin 2010, Ergonomics 53:109: the 95 % prediction interval of an endurance time lies 29 to 47 % from the mean.
  it('is never told narrower than 29 % either way, however well the drills agree', () => {
    const test = builtInPrograms.find(({ title }) => title === 'Baseline test')!;
    const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 15_000 } as const;
    const drill = (date: string): DrillRecord => ({
      ...{ id: date, program: test.title, programId: test.id, date, startedAt: `${date}T07:00:00Z` },
      endedAt: `${date}T07:10:00Z`,
      reps: [
        { ...rep, rep: 0, heldMs: 15_000, outcome: 'held' },
        { ...rep, rep: 1, heldMs: 9_000, outcome: 'short' },
      ],
    });
    const drills = ['2026-11-02', '2026-11-09', '2026-11-16', '2026-11-23'].map(drill);
    const found = estimateMaxHold(drills, builtInPrograms, '2026-11-25');
    if (found.kind !== 'estimate') throw new TypeError('expected an estimate');
    expect(found.lowSeconds / found.seconds).toBeCloseTo(0.71, 9);
    expect(found.highSeconds / found.seconds).toBeCloseTo(1.29, 9);
  });
});
