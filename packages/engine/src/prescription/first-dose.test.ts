import { expect, it } from 'vitest';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { prescribe } from './prescribe.ts';

it('asks nobody for a longer first hold than they say they have, a child on a band included', () => {
  for (const program of builtInPrograms.filter(({ kind }) => kind !== 'test')) {
    for (const ageYears of [9, 14, 40]) {
      const archer = { ageYears, longestHoldSeconds: 3, hasClicker: true };
      const { blocks, reasons } = prescribe({ program, records: [], today: '2026-11-25', archer });
      for (const { holdMs } of blocks) expect(holdMs).toBeLessThanOrEqual(3000);
      expect(JSON.stringify(reasons)).not.toContain('undefined');
    }
  }
});
