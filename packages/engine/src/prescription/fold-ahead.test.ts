import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyLifePlan, inputOf, live } from '../../../../tests/fixtures/prescription/any-life.ts';
import { knowArcher } from '../archer/know-archer.ts';
import { foldAhead } from './fold-ahead.ts';
import { prescribe } from './prescribe.ts';

test('no answer depends on how far a journal was folded ahead, or with which program', () => {
  fc.assert(
    fc.property(anyLifePlan(), fc.nat(3), fc.boolean(), (plan, turns, isOwn) => {
      const life = live(plan);
      const input = inputOf(life, life.days.at(-1)!);
      const fresh = structuredClone(input);
      const { records, days, archer, today } = fresh;
      const ahead = foldAhead({ records, days, ...(isOwn ? { program: input.program } : {}), ...archer });
      for (let turn = 0; turn < turns; turn++) ahead.next();
      expect(prescribe(fresh)).toEqual(prescribe(input));
      const known = { records: input.records, days: input.days, today, archer };
      expect(knowArcher({ records, days, today, archer })).toEqual(knowArcher(known));
      for (const _ of foldAhead({ records, days, program: input.program, ...archer }));
      expect(prescribe(fresh)).toEqual(prescribe(input));
    }),
    { seed: 322, numRuns: 60 },
  );
});
