import { builtInPrograms, createJournal } from '@larkhold/engine';
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
