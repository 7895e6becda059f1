import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PrescribedBlock, Prescription } from '../prescription/prescription.ts';
import { timelineDurationMs } from '../prescription/timeline-duration.ts';
import { layOut } from './lay-out.ts';
import { spokenAmounts } from './spoken-amount.ts';

const plain: PrescribedBlock = {
  block: 0,
  title: 'Full-draw holds',
  drill: 'holding',
  sets: 2,
  reps: 2,
  drawMs: 3000,
  holdMs: 30_000,
  letDownMs: 3000,
  restMs: 60_000,
  setRestMs: 120_000,
  letDownTo: 'rest',
  hand: 'usual',
  addedWeightLbf: 0,
};

function today(...blocks: Partial<PrescribedBlock>[]): Prescription {
  const filled = blocks.map((block, place) => ({ ...plain, block: place, ...block }));
  return { programTitle: 'Test', date: '2026-11-25', blocks: filled, reasons: [], cautions: [], durationMs: 0 };
}

const kindsOf = (prescription: Prescription) => layOut(prescription).steps.map((step) => step.kind);
const saidBy = (prescription: Prescription, kind: string) =>
  layOut(prescription)
    .cues.filter((cue) => cue.kind === kind)
    .map((cue) => cue.words);

const anyBlock: fc.Arbitrary<Partial<PrescribedBlock>> = fc.record({
  sets: fc.integer({ min: 1, max: 4 }),
  reps: fc.integer({ min: 1, max: 6 }),
  drawMs: fc.integer({ min: 500, max: 30_000 }),
  holdMs: fc.integer({ min: 500, max: 180_000 }),
  letDownMs: fc.integer({ min: 500, max: 30_000 }),
  restMs: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 300_000 })),
  setRestMs: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 300_000 })),
  letDownTo: fc.constantFrom('rest', 'set-up'),
  hand: fc.constantFrom('usual', 'opposite', 'both'),
  calls: fc.array(fc.constantFrom('Reach', 'Shoulders low', 'Stay loose', 'Fire', 'Lâche'), { maxLength: 12 }),
});
const anyDay = fc.array(anyBlock, { minLength: 1, maxLength: 3 }).map((blocks) => today(...blocks));

describe('steps', () => {
  it('rest between reps, set rest between sets and blocks, nothing after the last let-down', () => {
    const rep = ['draw', 'hold', 'letDown'];
    const set = [...rep, 'rest', ...rep];
    expect(kindsOf(today({}, { sets: 1, reps: 1 }))).toEqual(['ready', ...set, 'setRest', ...set, 'setRest', ...rep]);
  });

  it('leaves rests of no length out', () => {
    expect(kindsOf(today({ restMs: 0, setRestMs: 0 }))).not.toContain('rest');
    expect(kindsOf(today({ restMs: 0, setRestMs: 0 }))).not.toContain('setRest');
  });

  it('keeps the place in the program when a block was left out of today', () => {
    expect(layOut(today({ block: 2 })).steps.every((step) => step.block === 2)).toBe(true);
  });

  it('alternates hands within each set, usual first', () => {
    const hands = layOut(today({ hand: 'both', reps: 3 })).steps.filter((step) => step.kind === 'draw');
    expect(hands.map((step) => step.hand)).toEqual(['usual', 'opposite', 'usual', 'usual', 'opposite', 'usual']);
  });

  it('lets down to set-up between reps only, and to rest where the hand changes', () => {
    const ends = (block: Partial<PrescribedBlock>) =>
      layOut(today(block))
        .steps.filter((step) => step.kind === 'letDown')
        .map((step) => step.to ?? 'rest');
    expect(ends({ letDownTo: 'set-up' })).toEqual(['set-up', 'rest', 'set-up', 'rest']);
    expect(ends({ letDownTo: 'set-up', hand: 'both' })).toEqual(['rest', 'rest', 'rest', 'rest']);
  });

  it('follow each other without gap or overlap, and last as long as the cheap computation says', () => {
    fc.assert(
      fc.property(anyDay, (prescription) => {
        const { steps, durationMs } = layOut(prescription);
        let atMs = 0;
        for (const step of steps) {
          expect(step.startMs).toBe(atMs);
          expect(Number.isSafeInteger(step.durationMs)).toBe(true);
          atMs += step.durationMs;
        }
        expect(durationMs).toBe(atMs);
        expect(timelineDurationMs(prescription.blocks)).toBe(durationMs);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('is empty without a block', () => {
    expect(layOut(today())).toEqual({ steps: [], cues: [], durationMs: 0 });
    expect(timelineDurationMs([])).toBe(0);
  });

  it('refuses what is no time or count', () => {
    expect(() => layOut(today({ holdMs: Number.NaN }))).toThrow('blocks[0].holdMs is NaN');
    expect(() => layOut(today({ restMs: -1 }))).toThrow(RangeError);
    // More than any program file can ask for: a stored prescription was damaged.
    expect(() => layOut(today({ sets: 1, reps: 24_001 }))).toThrow('24001 reps');
    expect(() => timelineDurationMs(today({ reps: 0 }).blocks)).toThrow('blocks[0].reps is 0');
  });
});

describe('cues', () => {
  it('are in order of time, at the steps they belong to', () => {
    fc.assert(
      fc.property(anyDay, (prescription) => {
        const { steps, cues, durationMs } = layOut(prescription);
        const starts = steps.map((step) => `${step.kind} ${step.startMs}`);
        for (const [index, cue] of cues.entries()) {
          expect(cue.atMs).toBeGreaterThanOrEqual(cues[index - 1]?.atMs ?? 0);
          expect(Number.isSafeInteger(cue.atMs)).toBe(true);
          expect(cue.words ?? '').not.toMatch(/\b(release|loose|fire)/i);
        }
        const begun = cues.filter((cue) => !['half', 'count', 'call', 'mark', 'restOver', 'done'].includes(cue.kind));
        expect(begun.map((cue) => `${cue.kind} ${cue.atMs}`)).toEqual(starts);
        expect(cues.at(-1)).toEqual({ atMs: durationMs, kind: 'done', words: 'Done' });
      }),
      { seed: 8, numRuns: 300 },
    );
  });

  it('of a 30 s hold', () => {
    const one = today({ sets: 1, reps: 1, calls: ['Shoulders low', 'Reach'] });
    const holdStartMs = 10_000 + 3000;
    const within = layOut(one, { allowedCalls: ['Reach'] })
      .cues.filter((cue) => cue.atMs >= holdStartMs)
      .map((cue) => [cue.atMs - holdStartMs, cue.kind, cue.words]);
    expect(within).toEqual([
      [0, 'hold', 'Hold'],
      [10_000, 'call', 'Shoulders low'],
      [15_000, 'half', 'Half'],
      [20_000, 'call', 'Reach'],
      [27_000, 'count', 'three'],
      [28_000, 'count', 'two'],
      [29_000, 'count', 'one'],
      [30_000, 'letDown', 'Let down'],
      [33_000, 'done', 'Done'],
    ]);
  });

  it('has no half under 10 s and no count under 5 s', () => {
    expect(saidBy(today({ holdMs: 9999 }), 'half')).toEqual([]);
    expect(saidBy(today({ holdMs: 10_000, sets: 1, reps: 1 }), 'half')).toEqual(['Half']);
    expect(saidBy(today({ holdMs: 4999 }), 'count')).toEqual([]);
    expect(saidBy(today({ holdMs: 5000, sets: 1, reps: 1 }), 'count')).toEqual(['three', 'two', 'one']);
  });

  it('keeps calls 1.5 s from other words where the hold has the room, all of them, in their order', () => {
    const calls = ['One line', 'Another', 'A third'];
    const said = (block: Partial<PrescribedBlock>) =>
      layOut(today({ sets: 1, reps: 1, calls, ...block }), { allowedCalls: calls }).cues;
    const cues = said({});
    const spoken = cues.filter((cue) => cue.kind !== 'ready' && cue.kind !== 'draw');
    for (const call of spoken.filter((cue) => cue.kind === 'call')) {
      const others = spoken.filter((cue) => cue !== call).map((cue) => Math.abs(cue.atMs - call.atMs));
      expect(Math.min(...others)).toBeGreaterThanOrEqual(1500);
    }
    for (const block of [{}, { holdMs: 2000 }])
      expect(said(block).flatMap(({ kind, words }) => (kind === 'call' ? [words] : []))).toEqual(calls);
  });

  it("says the archer's own shot process where the block asks for it, and nothing without one", () => {
    const asked = today({ sets: 1, reps: 1, calls: 'shot-process' });
    const shotProcess = ['Set the feet', 'Loose the string', 'Reach'];
    const said = (allowedCalls?: string[]) =>
      layOut(asked, { shotProcess, allowedCalls }).cues.flatMap(({ kind, words }) => (kind === 'call' ? [words] : []));
    expect(said(shotProcess)).toEqual(['Set the feet', 'Reach']);
    expect(said(['Set the feet'])).toEqual(['Set the feet']);
    expect(said()).toEqual([]);
    expect(saidBy(asked, 'call')).toEqual([]);
  });

  it('names the next set and the next block', () => {
    expect(saidBy(today({ sets: 3 }), 'setRest')).toEqual([
      'Rest. Set two of three next',
      'Rest. Set three of three next',
    ]);
    expect(saidBy(today({ sets: 1 }, { title: 'Short holds', sets: 1 }), 'setRest')).toEqual([
      'Rest. Next: Short holds',
    ]);
    expect(saidBy(today({ sets: 1 }, { title: 'Fire drill', sets: 1 }), 'setRest')).toEqual(['Rest. Next drill']);
  });

  it('calls the archer 5 s before a draw after a rest of 10 s or more', () => {
    const { cues, steps } = layOut(today({ sets: 1 }));
    const draw = steps.filter((step) => step.kind === 'draw')[1];
    expect(cues.find((cue) => cue.kind === 'restOver')?.atMs).toBe((draw?.startMs ?? 0) - 5000);
    expect(saidBy(today({ sets: 1, restMs: 9999 }), 'restOver')).toEqual([]);
  });

  it('says the hand where it could be mistaken', () => {
    expect(saidBy(today({ sets: 1, reps: 3 }), 'restOver')).toEqual(['Get ready. Two of three', 'Get ready. Last one']);
    expect(saidBy(today({ sets: 1, reps: 3, hand: 'both' }), 'restOver')).toEqual([
      'Get ready. Opposite hand. Two of three',
      'Get ready. Usual hand. Last one',
    ]);
    expect(saidBy(today({ sets: 1, hand: 'opposite' }), 'ready')).toEqual(['Get ready. Opposite hand. One of two']);
    expect(saidBy(today({ sets: 1, reps: 1, hand: 'opposite' }, { sets: 1, reps: 1 }), 'restOver')).toEqual([
      'Get ready. Usual hand. Last one',
    ]);
  });

  it('says which rep comes, and of the last of the drill alone that it is the last', () => {
    const before = (prescription: Prescription) =>
      layOut(prescription)
        .cues.filter(({ kind }) => kind === 'ready' || kind === 'restOver')
        .map(({ words }) => words?.replace('Get ready', '').replace('. ', ''));
    expect(before(today({ sets: 2, reps: 2 }))).toEqual(['One of two', 'Two of two', 'One of two', 'Last one']);
    expect(before(today({ sets: 1, reps: 20 })).at(-2)).toBe('Nineteen of twenty');
    expect(before(today({ sets: 3, reps: 1 }))).toEqual(['', '', 'Last one']);
    // Too short a rest for a call before the draw says it as it begins; the shortest says nothing of it.
    expect(saidBy(today({ sets: 1, reps: 3, restMs: 6000 }), 'rest')).toEqual([
      'Rest. Two of three next',
      'Rest. Last one next',
    ]);
    expect(saidBy(today({ sets: 1, reps: 3, restMs: 3000 }), 'rest')).toEqual(['Rest', 'Rest']);
  });

  it('says what is left of a rest of a minute or more', () => {
    const marks = (restMs: number) => {
      const { cues, steps } = layOut(today({ sets: 1, restMs }));
      const endMs = steps.filter(({ kind }) => kind === 'draw')[1]?.startMs ?? 0;
      return cues.filter(({ kind }) => kind === 'mark').map(({ atMs, words }) => [(endMs - atMs) / 1000, words]);
    };
    expect(marks(59_000)).toEqual([]);
    expect(marks(60_000)).toEqual([[30, 'Thirty seconds']]);
    expect(marks(180_000)).toEqual([
      [120, 'Two minutes'],
      [60, 'One minute'],
      [30, 'Thirty seconds'],
    ]);
  });

  it('says as much as was chosen, and walks the same steps', () => {
    const one = today({ sets: 1, holdMs: 40_000 });
    const [least, usual, most] = spokenAmounts.map((spoken) => layOut(one, { spoken }));
    const saidOf = (timeline: typeof usual) => timeline?.cues.map(({ kind, words }) => `${kind} ${words}`);
    expect(saidOf(least)?.filter((line) => /half|mark|of two|Last/.test(line))).toEqual([]);
    expect(saidOf(usual)?.filter((line) => /half|mark/.test(line))).toEqual([
      'half Half',
      'mark Thirty seconds',
      'half Half',
    ]);
    // Ten seconds are left at 30 s; twenty are left at half, which is said already.
    expect(saidOf(most)?.filter((line) => line.startsWith('mark'))).toEqual([
      ...['mark Thirty seconds', 'mark Ten seconds', 'mark Thirty seconds', 'mark Thirty seconds', 'mark Ten seconds'],
    ]);
    for (const timeline of [least, most]) expect(timeline?.steps).toEqual(usual?.steps);
  });

  it('says where a let-down ends', () => {
    expect(saidBy(today({ sets: 1, letDownTo: 'set-up' }), 'letDown')).toEqual(['Let down to set-up', 'Let down']);
  });
});
