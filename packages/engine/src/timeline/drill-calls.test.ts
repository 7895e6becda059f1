import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prescribe } from '../prescription/prescribe.ts';
import type { Prescription } from '../prescription/prescription.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { checkCall } from './check-call.ts';
import { drillCalls } from './drill-calls.ts';
import { layOut } from './lay-out.ts';
import { ownCalls } from './own-calls.ts';

const [program] = builtInPrograms;
const today = prescribe({ program: program!, records: [], today: '2026-11-25' });
const asking = (calls: readonly string[] | 'shot-process'): Prescription => ({
  ...today,
  blocks: [{ ...today.blocks[0]!, sets: 1, reps: 1, calls }],
});
const saidIn = (prescription: Prescription, options: Parameters<typeof layOut>[1]) =>
  layOut(prescription, options).cues.flatMap(({ kind, words }) => (kind === 'call' ? [words] : []));

const line = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 80 }),
  fc.constantFrom('Reach', 'reach', 'Reach ', 'Shoulders low', 'Let go now', 'Lâche', 'Shoot', 'Anchor'),
);

describe('what is said at full draw', () => {
  it('is ours, or is exactly what was allowed; and never an order', () => {
    const lines = fc.array(line, { maxLength: 12 });
    fc.assert(
      fc.property(lines, lines, fc.boolean(), (own, allowedCalls, isShotProcess) => {
        const prescription = asking(isShotProcess ? 'shot-process' : own);
        const options = { allowedCalls, ...(isShotProcess ? { shotProcess: own } : {}) };
        const said = saidIn(prescription, options);
        for (const words of said) {
          expect(ownCalls.has(words!) || allowedCalls.includes(words!)).toBe(true);
          expect(checkCall(words!)).toBeUndefined();
        }
        const calls = drillCalls(prescription, options);
        expect(new Set(said)).toEqual(new Set(calls.said));
        const sorted = [...calls.said, ...calls.unsaid, ...calls.refused.map(({ words }) => words)];
        expect(sorted.sort()).toEqual([...new Set(own)].sort());
      }),
      { seed: 20261127, numRuns: 500 },
    );
  });

  it('is never a coach’s line that nobody was asked about, in any language', () => {
    for (const words of ['Let go now', 'Shoot', 'Vypusť', 'Engedd el', 'Άφησε', 'Reach'])
      expect(saidIn(asking([words]), {})).toEqual([]);
  });

  it('changes with the text: what was allowed is no longer said once it reads otherwise', () => {
    const allowedCalls = ['Reach to the gold'];
    expect(saidIn(asking(['Reach to the gold']), { allowedCalls })).toEqual(allowedCalls);
    for (const changed of ['Reach to the gold ', 'Reach to the gold!', 'reach to the gold', 'Reach to the Gold'])
      expect(drillCalls(asking([changed]), { allowedCalls })).toEqual({ said: [], unsaid: [changed], refused: [] });
  });

  it('is what built-in programs bring, unasked', () => {
    for (const one of builtInPrograms) {
      const prescription = prescribe({ program: one, records: [], today: '2026-11-25' });
      expect(drillCalls(prescription)).toMatchObject({ unsaid: [], refused: [] });
    }
  });

  it('takes no order even where it was allowed, and says which word', () => {
    const { said, refused } = drillCalls(asking(['Reach', 'Let go']), { allowedCalls: ['Reach', 'Let go'] });
    expect(said).toEqual(['Reach']);
    expect(refused).toEqual([{ words: 'Let go', fault: { kind: 'order', found: 'let go' } }]);
  });
});
