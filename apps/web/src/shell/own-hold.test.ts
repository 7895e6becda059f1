import {
  builtInPrograms,
  createJournal,
  type DrillRecord,
  isAtOdds,
  type RepRecord,
  sustainedHoldSeconds,
} from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import { describe, expect, it } from 'vitest';
import { BASELINE_ID, lastBaseline, ownHoldOf, retestWords } from './own-hold.ts';

/** A baseline test: whole holds of 15 s, then one let down early. */
function baseline(date: string, heldReps: number, lastMs = 7000, change: Partial<DrillRecord> = {}): DrillRecord {
  const held: RepRecord[] = Array.from({ length: heldReps }, (_, rep) => {
    return { block: 0, set: 0, rep, hand: 'usual', prescribedMs: 15_000, heldMs: 15_000, outcome: 'held' };
  });
  const short: RepRecord = { ...held[0]!, rep: heldReps, heldMs: lastMs, outcome: 'short' };
  const at = `${date}T06:30:00Z`;
  return {
    ...{ id: `b-${date}`, program: 'Baseline test', programId: BASELINE_ID, date, startedAt: at, endedAt: at },
    ...{ reps: lastMs > 0 ? [...held, short] : held, ...change },
  };
}

const view = (drills: DrillRecord[], maxHoldSeconds?: number) => ({
  journal: { ...createJournal(), drills },
  programs: builtInPrograms,
  today: '2026-11-25',
  kit: { ...createKit(), maxHoldSeconds },
});

describe('the baseline test', () => {
  it('counts the later of two on a day by the instant, not by the digits of the clock', () => {
    const lisbon = { startedAt: '2026-11-20T10:00:00+00:00', id: 'lisbon' };
    const berlin = { startedAt: '2026-11-20T10:30:00+01:00', id: 'berlin' };
    const both = [berlin, lisbon].map((change) => baseline('2026-11-20', 4, 7000, change));
    expect(lastBaseline(both, builtInPrograms)?.record.id).toBe('lisbon');
    expect(lastBaseline(both.reverse(), builtInPrograms)?.record.id).toBe('lisbon');
  });

  it('is the program of the rack that it is used for', () => {
    expect(builtInPrograms.find(({ id }) => id === BASELINE_ID)?.title).toBe('Baseline test');
  });

  it('gives the longest hold, longer for more reps, and more than the hold itself', () => {
    const seconds = [2, 4, 8].map((reps) => lastBaseline([baseline('2026-11-20', reps)], builtInPrograms)!.seconds!);
    expect(seconds[0]).toBeGreaterThan(15);
    expect(seconds[1]).toBeGreaterThan(seconds[0]!);
    expect(seconds[2]).toBeGreaterThan(seconds[1]!);
    // Frey-Law et al. 2012, closed form: 20 % of MVC is held for 274 s. A bow that is held through no more than eight reps is heavier than that.
    expect(seconds[2]).toBeLessThan(sustainedHoldSeconds(0.2, 'shoulder')!);
  });

  it('gives no longest hold where nothing failed, and passes over painful and removed tests', () => {
    const whole = lastBaseline([baseline('2026-11-20', 20, 0)], builtInPrograms);
    expect(whole?.record.date).toBe('2026-11-20');
    expect(whole).not.toHaveProperty('seconds');
    const tests = [
      baseline('2026-11-01', 5),
      baseline('2026-11-10', 5, 7000, { pain: true }),
      baseline('2026-11-12', 5, 7000, { removed: true }),
    ];
    expect(lastBaseline(tests, builtInPrograms)?.record.date).toBe('2026-11-01');
  });

  // ndarchery.co 2025: repeated every 4 to 8 weeks.
  it.each([
    ['2026-10-29', undefined],
    ['2026-10-28', /4\sweeks ago.*4 to 8 weeks/],
    ['2026-09-29', /8\sweeks ago.*old/],
  ])('of %s is due or not', (date, words) => {
    const said = retestWords(lastBaseline([baseline(date, 5)], builtInPrograms), '2026-11-25');
    if (words) expect(said).toMatch(words);
    else expect(said).toBeUndefined();
  });
});

describe('the longest hold', () => {
  it('is unknown with too little data, and says so', () => {
    const own = ownHoldOf(view([]));
    expect(own.kind).toBe('unknown');
    expect(own.estimate.words).toContain('Too little data');
  });

  it('is estimated with a range once three drills ended early', () => {
    const drills = ['2026-11-05', '2026-11-12', '2026-11-19'].map((date) => baseline(date, 5));
    const own = ownHoldOf(view(drills));
    if (own.kind !== 'estimated') throw new TypeError('expected an estimate');
    expect(own.lowSeconds).toBeLessThan(own.seconds);
    expect(own.highSeconds).toBeGreaterThan(own.seconds);
  });

  it('is the kit’s where it says one; drills that can’t be made to fit with it are reported', () => {
    const drills = ['2026-11-05', '2026-11-12', '2026-11-19'].map((date) => baseline(date, 3));
    expect(ownHoldOf(view(drills, 300))).toMatchObject({ kind: 'said', seconds: 300 });
    expect(isAtOdds(ownHoldOf(view(drills, 300)))).toBe(true);
    const fitting = ownHoldOf(view(drills));
    if (fitting.kind !== 'estimated') throw new TypeError('expected an estimate');
    expect(isAtOdds(ownHoldOf(view(drills, fitting.seconds)))).toBe(false);
  });
});
