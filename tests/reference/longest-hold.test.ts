// The longest hold from the journal: by definition where a fresh hold fails, and by published values at another weight and in its range.
import {
  builtInPrograms,
  carefulLimit,
  createDemoJournal,
  type DrillRecord,
  estimateMaxHold,
  knowArcher,
  layOut,
  prescribe,
  type RepRecord,
} from '@larkhold/engine';
import { describe, expect, it } from 'vitest';

const today = '2026-11-25';
const byTitle = (title: string) => builtInPrograms.find((program) => program.title === title)!;
const holding = byTitle('Laddered holding');
const baseline = byTitle('Baseline test');

/** A drill of full holds and, after them, one that ended early. */
function drill(
  day: number,
  fullCount: number,
  last: Partial<RepRecord>,
  change: Partial<DrillRecord> = {},
): DrillRecord {
  const prescribedMs = 30_000;
  const rep = (at: number): RepRecord => {
    return { block: 0, set: 0, rep: at, hand: 'usual', prescribedMs, heldMs: prescribedMs, outcome: 'held' };
  };
  const reps = Array.from({ length: fullCount }, (_, at) => rep(at));
  const date = `2026-11-${String(day).padStart(2, '0')}`;
  const at = `${date}T06:30:00Z`;
  return {
    ...{ id: `d-${day}`, program: holding.title, programId: holding.id, date, startedAt: at, endedAt: at, tool: 'bow' },
    reps: [...reps, { ...rep(fullCount), outcome: 'short', ...last }],
    ...change,
  };
}
const tired = (day: number, heldMs: number, change: Partial<DrillRecord> = {}) =>
  drill(day, 0, { heldMs, why: 'tired' }, change);

describe('the longest hold, from the journal', () => {
  it('is where a fresh hold fails, by its definition: the middle of those that did', () => {
    const estimate = estimateMaxHold([tired(3, 18_000), tired(9, 25_000), tired(14, 19_000)], builtInPrograms, today);
    expect(estimate).toMatchObject({
      kind: 'estimate',
      seconds: 19,
      from: 'failures',
      evidence: ['d-3', 'd-9', 'd-14'],
    });
  });

  it('is what is known of the archer, and nothing else: one answer in the whole product', () => {
    const records = [
      tired(3, 18_000),
      drill(9, 3, { heldMs: 12_000, why: 'form' }),
      drill(12, 4, { heldMs: 20_000, why: 'tired' }),
    ];
    const estimate = estimateMaxHold(records, builtInPrograms, today, { onFingersLbf: 38 });
    const [known] = knowArcher({ records, today, archer: { onFingersLbf: 38 } }).capacity;
    expect(estimate).toMatchObject({
      seconds: known?.likelySeconds,
      highSeconds: known?.atMostSeconds,
      evidence: known?.evidence,
    });
  });

  // Frey Law & Avin 2010, Ergonomics 53:109, table 2: a shoulder's endurance goes with the load to the power of -1.83.
  it('is given for the weight in question: a tenth more on the fingers makes it a sixth shorter', () => {
    const records = [tired(10, 30_000, { onFingersLbf: 40 })];
    const at = (onFingersLbf: number) => estimateMaxHold(records, builtInPrograms, today, { onFingersLbf });
    expect(at(40)).toMatchObject({ seconds: 30, atLbf: 40 });
    expect(at(44)).toMatchObject({ seconds: expect.closeTo(30 * 1.1 ** -1.83, 6), atLbf: 44 });
    expect(at(36)).toMatchObject({ seconds: expect.closeTo(30 * 0.9 ** -1.83, 6), atLbf: 36 });
    expect(estimateMaxHold(records, builtInPrograms, today)).toMatchObject({ seconds: 30, atLbf: 40 });
  });

  // J Exerc Sci Fitness 2012 (n = 21): the smallest real difference of one person's shoulder strength is up to 28 %.
  it("has a range of one person's own noise, and never less than was held", () => {
    const estimate = estimateMaxHold([tired(10, 20_000)], builtInPrograms, today);
    expect(estimate).toMatchObject({ lowSeconds: expect.closeTo(14.4, 9), highSeconds: expect.closeTo(25.6, 9) });
    const held = estimateMaxHold(
      [tired(10, 31_000), drill(12, 1, { heldMs: 9000, why: 'form' })],
      builtInPrograms,
      today,
    );
    expect(held).toMatchObject({ seconds: 31, lowSeconds: 30 });
  });

  it('takes let-downs for form as least values; interruptions, what nobody explained, and other tools say nothing', () => {
    const of = (record: DrillRecord) => estimateMaxHold([record], builtInPrograms, today);
    expect(of(drill(5, 2, { heldMs: 9000, why: 'form' }))).toMatchObject({
      kind: 'too little data',
      atLeastSeconds: 30,
    });
    expect(of(drill(5, 2, { heldMs: 9000 }))).toMatchObject({ kind: 'too little data', atLeastSeconds: 30 });
    expect(of(drill(5, 0, { heldMs: 9000, why: 'interrupted' }))).not.toHaveProperty('atLeastSeconds');
    expect(of(tired(5, 18_000, { tool: 'band' }))).toMatchObject({ kind: 'too little data', evidence: [] });
  });

  it('takes a test before everything else, marked or known by its program', () => {
    const record = drill(20, 0, { heldMs: 24_000 }, { program: 'Ausgangstest', programId: baseline.id });
    const records = [tired(10, 40_000), record];
    expect(estimateMaxHold(records, builtInPrograms, today)).toMatchObject({ seconds: 24, from: 'test' });
    expect(estimateMaxHold(records, [], today)).toMatchObject({ seconds: 40, from: 'failures' });
    expect(estimateMaxHold([{ ...record, kind: 'test' }], [], today)).toMatchObject({ seconds: 24, from: 'test' });
  });

  it('leaves out what is old, to come, removed or painful, and does not depend on the order', () => {
    const records = [
      ...[tired(3, 18_000), tired(9, 25_000)],
      tired(4, 90_000, { date: '2026-09-30' }),
      tired(5, 90_000, { date: '2026-11-26' }),
      tired(6, 90_000, { removed: true }),
      tired(7, 90_000, { pain: true }),
    ];
    expect(estimateMaxHold(records, builtInPrograms, today)).toMatchObject({ seconds: 21.5 });
    expect(estimateMaxHold([...records].reverse(), builtInPrograms, today)).toEqual(
      estimateMaxHold(records, builtInPrograms, today),
    );
    expect(() => estimateMaxHold([], builtInPrograms, 'today')).toThrow(RangeError);
    expect(() => estimateMaxHold([], builtInPrograms, today, { onFingersLbf: -1 })).toThrow(RangeError);
  });

  it('says when there is too little data, and has a sane answer for the invented diary', () => {
    expect(estimateMaxHold([], builtInPrograms, today)).toEqual({
      ...{ kind: 'too little data', evidence: [], words: expect.stringMatching(/^Too little data: no test/) },
    });
    const { drills } = createDemoJournal({ endDay: today, programs: builtInPrograms });
    const estimate = estimateMaxHold(drills, builtInPrograms, today);
    const seconds = estimate.kind === 'estimate' ? estimate.seconds : (estimate.atLeastSeconds ?? 0);
    expect(seconds).toBeGreaterThan(10);
    expect(seconds).toBeLessThan(240);
  });
});

// Sahlin & Ren 1989, J Appl Physiol 67:648: endurance comes back by half in 1.2 minutes.
describe('the careful limit of a drill', () => {
  const prescription = prescribe({ program: baseline, records: [], today });
  const { steps } = layOut({
    ...prescription,
    blocks: [{ ...prescription.blocks[0]!, reps: 5, restMs: 72_000, holdMs: 20_000 }],
  });

  it('adds up what has not come back: 20 s of hold with a half-time between them come to 20, 30, 35 and 37.5 s', () => {
    const limits = [19, 20, 29, 30, 34, 37, 38.75].map((seconds) => carefulLimit(steps, seconds)?.rep);
    expect(limits).toEqual([0, 1, 1, 2, 2, 3, undefined]);
  });
});
