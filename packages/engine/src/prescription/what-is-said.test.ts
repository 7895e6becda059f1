import { describe, expect, it } from 'vitest';
import { type PrescribeInput, prescribe } from './prescribe.ts';
import { trialProgram, trialRecord } from './trial-history.ts';

const today = '2026-11-25';
const records = [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30)];
const on = (more: Partial<PrescribeInput>) => prescribe({ program: trialProgram(), records, today, ...more });
const rules = (said: readonly { rule: string }[]) => said.map(({ rule }) => rule);

describe('what is said of a morning', () => {
  it('is the step that was earned and the caution of a drawn string, and nothing else', () => {
    const { reasons, cautions } = on({});
    expect(rules(reasons)).toEqual(['climb']);
    expect(cautions).toEqual([
      'Never let go of a drawn string with no arrow on it. Let down slowly, every time.',
      'Warm up first. Stop on pain; if it stays, see a doctor or a physiotherapist.',
      "A qualified coach's word, club rules and local rules come before this plan.",
    ]);
  });

  it('is of a lighter tool from the 365th day away, and not on the 364th', () => {
    const away = (date: string) => on({ records: [trialRecord(date, 30)] }).cautions;
    expect(away('2025-11-25')[0]).toMatch(/^365 days without a bow or a band: begin with lighter limbs/);
    expect(away('2025-11-26')[0]).toMatch(/^Never let go/);
  });

  it('is of a child up to eleven years, and of the young from twelve on', () => {
    const said = (ageYears: number) => on({ archer: { ageYears } }).reasons.find(({ rule }) => rule === 'age')?.change;
    expect(said(10)).toBe(said(11));
    expect(said(12)).toBe(said(15));
    expect(said(11)).not.toBe(said(12));
  });

  it('names the day after a rest day of the season where it is known', () => {
    const rest = (seasonRest: PrescribeInput['seasonRest']) => on({ seasonRest }).rest?.change;
    expect(rest({ rule: 'outsideSeason', nextDay: '2026-11-27' })).toMatch(/27 November/);
    expect(rest({ rule: 'outsideSeason' })).not.toMatch(/November|undefined/);
  });
});
