import { describe, expect, it } from 'vitest';
import { judgeBlock } from './judge-block.ts';
import { missedTwo, trialProgram, trialRecord } from './trial-history.ts';

// Verdicts follow the rules of the program file page.

const { ladder } = trialProgram().blocks[0]!;
const place = { hold: 30, reps: 5, sets: 2, addedWeight: 0 };
const judge = (...record: Parameters<typeof trialRecord>) => judgeBlock(trialRecord(...record), 0, place, ladder!);

describe('judgeBlock', () => {
  it('calls the whole dose held in full clean, missed from a fifth on, broken below', () => {
    expect(judge('2026-11-20', 30)).toBe('clean');
    expect(judge('2026-11-20', 30, missedTwo)).toBe('missed');
    expect(judge('2026-11-20', 30, { 0: 'short' })).toBe('broken');
  });

  it('lets pain and too much effort break a row', () => {
    expect(judge('2026-11-20', 30, {}, { pain: true })).toBe('broken');
    expect(judge('2026-11-20', 30, {}, { effort: 8 })).toBe('broken');
    expect(judge('2026-11-20', 30, {}, { effort: 7 })).toBe('clean');
    expect(judge('2026-11-20', 30, { 3: 'unsure' }, { pain: true })).toBe('broken');
  });

  it('lets pain break the row of a block that was not begun', () => {
    expect(judge('2026-11-20', 30, {}, { reps: [] })).toBe('absent');
    expect(judge('2026-11-20', 30, {}, { reps: [], pain: true })).toBe('broken');
  });

  it('stays neutral on unsure reps, shorter holds and a drill stopped early', () => {
    expect(judge('2026-11-20', 30, { 3: 'unsure' })).toBe('neutral');
    expect(judge('2026-11-20', 25)).toBe('neutral');
    expect(judge('2026-11-20', 30, {}, { prescribedReps: 12 })).toBe('neutral');
  });

  it('stays neutral on fewer reps than the dose, with or without a count of what was prescribed', () => {
    const { reps } = trialRecord('2026-11-20', 30);
    expect(judge('2026-11-20', 30, {}, { reps: reps.slice(0, 6), prescribedReps: 6 })).toBe('neutral');
    expect(judge('2026-11-20', 30, {}, { reps: reps.slice(0, 9), prescribedReps: undefined })).toBe('neutral');
    expect(judge('2026-11-20', 30, {}, { prescribedReps: undefined })).toBe('clean');
  });
});
