import { describe, expect, it } from 'vitest';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { explain } from './explain.ts';
import { prescribe } from './prescribe.ts';
import type { AskedNumber } from './prescription.ts';
import { trialLadder, trialProgram, trialRecord } from './trial-history.ts';

const asked: AskedNumber[] = [
  ...(['sets', 'reps', 'draw', 'hold', 'letDown', 'rest', 'setRest', 'addedWeight', 'duration'] as const),
];
const records = [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30)];
const today = '2026-11-25';

describe('explain', () => {
  it('says where the hold and the rest come from', () => {
    const prescription = prescribe({ program: trialProgram(), records, today });
    expect(explain(prescription, 0, 'hold')).toBe(
      'Hold: 35 s. The program begins with 30 s; step 1 of 15 on its ladder is 35 s. Holds: hold 30 s to 35 s, after 2 clean days in a row, the last on 22 November. 2 more clean days lead on: hold 35 s to 40 s.',
    );
    expect(explain(prescription, 0, 'rest')).toBe(
      'Rest between reps: 1 min 10 s. 2 times a hold of 35 s: a shorter hold does not shorten the rest.',
    );
    expect(explain(prescription, 0, 'draw')).toBe('Draw: 3 s. As the program says.');
    expect(explain(prescription, 0, 'addedWeight')).toBe('Added weight: 0 lb. The program begins with 0 lb.');
    // 2 x (5 x 41 + 4 x 70) + 120 = 1090 s, and 10 s to get ready.
    expect(explain(prescription, 0, 'duration')).toBe(
      'Length: 18 min 20 s. 10 s to get ready. Holds: 2 sets of 5 reps, 18 min 10 s.',
    );
  });

  it('adds what made it less today', () => {
    const program = trialProgram({ reps: 10, ladder: { ...trialLadder, deload: { everyWeeks: 2, keep: 0.6 } } });
    const prescription = prescribe({ program, records: records.slice(0, 1), today, minutes: 15 });
    expect(explain(prescription, 0, 'reps')).toMatch(/begins with 10\. In 15 minutes.*because this is training week 2/);
    expect(explain(prescription, 0, 'sets')).toMatch(/begins with 2\. In 15 minutes/);
    expect(explain(prescription, 0, 'hold')).not.toMatch(/minutes/);
  });

  it('says that a block was left out, and knows its blocks', () => {
    const [first] = trialProgram().blocks;
    const program = { ...trialProgram(), blocks: [first!, { ...first!, title: 'Again' }] };
    const prescription = prescribe({ program, records: [], today, minutes: 2 });
    expect(prescription.blocks).toHaveLength(1);
    const missing = prescription.blocks[0]!.block === 0 ? 1 : 0;
    expect(explain(prescription, missing, 'reps')).toMatch(/^Left out today\. In 2 minutes/);
    expect(() => explain(prescription, 2, 'reps')).toThrow(RangeError);
  });

  it.each(builtInPrograms.map((program) => [program.title, program] as const))(
    'answers for every number of %s',
    (_, program) => {
      const prescription = prescribe({ program, records: [], today, archer: { ageYears: 14 }, readiness: 'heavy' });
      for (const { block } of prescription.blocks) {
        for (const number of asked) {
          expect(explain(prescription, block, number)).toMatch(/^[A-Z][a-z -]+: [0-9].*\.$/);
          expect(explain(prescription, block, number)).not.toMatch(/NaN|undefined|Infinity/);
        }
      }
    },
  );
});
