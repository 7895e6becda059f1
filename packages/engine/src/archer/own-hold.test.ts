import { describe, expect, it } from 'vitest';
import type { MaxHoldEstimate } from './estimate-max-hold.ts';
import { isAtOdds, longestOf, ownHold } from './own-hold.ts';

const unknown: MaxHoldEstimate = { kind: 'too little data', evidence: [], words: '' };
const about30: MaxHoldEstimate = {
  ...{ kind: 'estimate', evidence: ['a'], words: '', from: 'test' },
  ...{ seconds: 30, lowSeconds: 22, highSeconds: 38 },
};

describe('the own longest hold', () => {
  it('is what was said, else what the journal tells, else unknown', () => {
    expect(ownHold(about30, 50)).toMatchObject({ kind: 'said', seconds: 50, estimate: about30 });
    expect(ownHold(about30)).toMatchObject({ kind: 'estimated', seconds: 30, lowSeconds: 22, highSeconds: 38 });
    expect(ownHold(unknown)).toEqual({ kind: 'unknown', estimate: unknown });
    expect(ownHold(unknown, 50)).toMatchObject({ kind: 'said', seconds: 50 });
  });

  it('is at odds with the journal outside its range, and with nothing where there is none', () => {
    expect([21, 22, 38, 39].map((said) => isAtOdds(ownHold(about30, said)))).toEqual([true, false, false, true]);
    expect([ownHold(about30), ownHold(unknown, 300), ownHold(unknown)].map(isAtOdds)).toEqual([false, false, false]);
  });

  it('has ends for an outlook only where it is estimated', () => {
    expect(longestOf(ownHold(about30))).toEqual({ seconds: 30, ends: [22, 38] });
    expect(longestOf(ownHold(about30, 50))).toEqual({ seconds: 50, ends: [] });
    expect(longestOf(ownHold(unknown))).toBeUndefined();
  });
});
