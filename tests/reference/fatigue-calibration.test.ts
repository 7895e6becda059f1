// The way back: what an archer of a known longest hold would log, by the model, must give that hold again.
import {
  builtInPrograms,
  createDemoJournal,
  type DrillRecord,
  estimateMaxHold,
  layOut,
  predictSession,
  prescribe,
  type RepRecord,
} from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const today = '2026-11-25';
const holding = builtInPrograms.find((program) => program.title === 'Laddered holding')!;

/** The record that an archer would leave who does what the model says: lets down where it fails. */
function logged(maxHoldSeconds: number, day: number, change: Partial<DrillRecord> = {}): DrillRecord {
  const timeline = layOut(prescribe({ program: holding, records: [], today }));
  const { failsAt } = predictSession(timeline, { maxHoldSeconds });
  const reps: RepRecord[] = [];
  for (const { kind, block, set, rep, hand, durationMs } of timeline.steps) {
    if (kind !== 'hold') continue;
    const isFailing = failsAt?.set === set && failsAt.rep === rep;
    const heldMs = isFailing ? Math.round(failsAt.secondsIn * 1000) : durationMs;
    reps.push({ block, set, rep, hand, prescribedMs: durationMs, heldMs, outcome: isFailing ? 'short' : 'held' });
    if (isFailing) break;
  }
  const date = `2026-11-${String(day).padStart(2, '0')}`;
  const at = `${date}T06:30:00Z`;
  return { id: `d-${day}`, program: holding.title, date, startedAt: at, endedAt: at, reps, ...change };
}

describe('the longest hold, from the journal', () => {
  it('gives back the archer who would have logged it', () => {
    fc.assert(
      fc.property(fc.double({ min: 12, max: 38, noNaN: true }), (maxHoldSeconds) => {
        const records = [3, 9, 14, 20].map((day) => logged(maxHoldSeconds, day));
        fc.pre(records[0]?.reps.at(-1)?.outcome === 'short');
        const estimate = estimateMaxHold(records, builtInPrograms, today);
        if (estimate.kind !== 'estimate') throw new Error(estimate.words);
        expect(Math.abs(estimate.seconds - maxHoldSeconds)).toBeLessThan(0.05);
        expect(estimate.lowSeconds).toBeLessThanOrEqual(maxHoldSeconds * 0.711);
        expect(estimate.highSeconds).toBeGreaterThanOrEqual(maxHoldSeconds * 1.289);
      }),
      { seed: 31, numRuns: 40 },
    );
  });

  it('is moved little by one morning that ended early for another reason', () => {
    const records = [3, 6, 9, 14, 18].map((day) => logged(34, day));
    const interrupted = logged(34, 20);
    interrupted.reps = [{ ...interrupted.reps[0]!, heldMs: 4000, outcome: 'short' }];
    const estimate = estimateMaxHold([...records, interrupted], builtInPrograms, today);
    if (estimate.kind !== 'estimate') throw new Error(estimate.words);
    expect(estimate.seconds).toBeCloseTo(34, 0);
    expect(estimate.lowSeconds).toBeLessThan(5);
  });

  it('learns nothing from let-downs in the draw, with nothing held', () => {
    const inDraw = (day: number) => {
      const record = logged(34, day);
      return { ...record, reps: [{ ...record.reps[0]!, heldMs: 0, outcome: 'short' as const }] };
    };
    expect(estimateMaxHold([3, 6, 9].map(inDraw), builtInPrograms, today)).toMatchObject({
      kind: 'too little data',
      letDownDrillsCount: 0,
      heldDrillsCount: 0,
    });
  });

  it('is never less than a hold that was held, and can be predicted from', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 30_000 }), { minLength: 3, maxLength: 6 }), (heldMs) => {
        const records = heldMs.map((ms, index) => {
          const record = logged(34, index + 1);
          return { ...record, reps: [{ ...record.reps[0]!, heldMs: ms, outcome: 'short' as const }] };
        });
        const estimate = estimateMaxHold(records, builtInPrograms, today);
        if (estimate.kind !== 'estimate') throw new Error(estimate.words);
        expect(estimate.seconds).toBeGreaterThanOrEqual(Math.min(...heldMs) / 1000);
        const timeline = layOut(prescribe({ program: holding, records: [], today }));
        for (const seconds of [estimate.lowSeconds, estimate.seconds, estimate.highSeconds]) {
          expect(predictSession(timeline, { maxHoldSeconds: seconds }).reps.length).toBeGreaterThan(0);
        }
      }),
      { seed: 33, numRuns: 60 },
    );
  });

  it('takes let-downs for form as least values, interruptions as nothing, and no other tool than a bow', () => {
    const days = [3, 9, 14, 20];
    const because = (why: RepRecord['why']) =>
      days.map((day) => {
        const record = logged(30, day);
        return { ...record, reps: record.reps.map((rep) => (rep.outcome === 'short' ? { ...rep, why } : rep)) };
      });
    expect(estimateMaxHold(because('tired'), builtInPrograms, today)).toMatchObject({ kind: 'estimate' });
    const form = estimateMaxHold(because('form'), builtInPrograms, today);
    expect(form).toMatchObject({ kind: 'too little data', letDownDrillsCount: 0, heldDrillsCount: 4 });
    expect(form).toMatchObject({ atLeastSeconds: expect.closeTo(30, 0) });
    expect(estimateMaxHold(because('interrupted'), builtInPrograms, today)).toMatchObject({ letDownDrillsCount: 0 });
    const band = because('tired').map((record) => ({ ...record, tool: 'band' as const }));
    expect(estimateMaxHold(band, builtInPrograms, today)).toMatchObject({ letDownDrillsCount: 0, heldDrillsCount: 0 });
  });

  it('rises when whole drills were held that a weaker archer could not have held', () => {
    const weak = [3, 6, 9].map((day) => logged(30, day));
    const strong = [12, 13, 14, 15, 16].map((day) => logged(400, day));
    const estimate = estimateMaxHold([...weak, ...strong], builtInPrograms, today);
    if (estimate.kind !== 'estimate') throw new Error(estimate.words);
    expect(estimate).toMatchObject({ letDownDrillsCount: 3, heldDrillsCount: 5 });
    expect(estimate.seconds).toBeGreaterThan(36);
  });

  it('does not depend on the order of the records', () => {
    const records = [26, 30, 34, 38].map((max, index) => logged(max, 3 + index));
    const estimate = estimateMaxHold(records, builtInPrograms, today);
    expect(estimateMaxHold([...records].reverse(), builtInPrograms, today)).toEqual(estimate);
  });

  it('says when there is too little data, and what is known all the same', () => {
    const none = estimateMaxHold([], builtInPrograms, today);
    expect(none).toEqual({
      kind: 'too little data',
      letDownDrillsCount: 0,
      heldDrillsCount: 0,
      words: expect.stringMatching(/^Too little data: 0 /),
    });
    const two = estimateMaxHold([logged(34, 3), logged(34, 9)], builtInPrograms, today);
    expect(two).toMatchObject({ kind: 'too little data', atLeastSeconds: expect.closeTo(34, 1) });
  });

  it('leaves out what can not be trusted: old, future, removed, painful, unsure, and drills of unknown programs', () => {
    const odd = [
      logged(34, 3, { date: '2026-09-01' }),
      logged(34, 4, { date: '2026-11-26' }),
      logged(34, 5, { removed: true }),
      logged(34, 6, { pain: true }),
      logged(34, 7, { program: 'Gone' }),
      logged(34, 8),
    ];
    odd[5]!.reps[0]!.outcome = 'unsure';
    expect(estimateMaxHold(odd, builtInPrograms, today)).toMatchObject({ letDownDrillsCount: 0, heldDrillsCount: 0 });
    expect(() => estimateMaxHold([], builtInPrograms, 'today')).toThrow(RangeError);
  });

  it('has a sane answer for the invented diary', () => {
    const { drills } = createDemoJournal({ endDay: today, programs: builtInPrograms });
    const estimate = estimateMaxHold(drills, builtInPrograms, today);
    // Nearly everything is held in it, so that it may give a least value only.
    const seconds = estimate.kind === 'estimate' ? estimate.seconds : estimate.atLeastSeconds;
    expect(seconds).toBeGreaterThan(30);
    expect(seconds).toBeLessThan(240);
  });
});
