import { builtInPrograms, createJournal, type DrillRecord, prescribe, type RepRecord } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import { describe, expect, it } from 'vitest';
import { outlookOf } from './outlook-of.ts';

const today = '2026-11-25';
const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const first = prescribe({ program: holding, records: [], today });
const asked = { ...first, blocks: first.blocks.map((block) => ({ ...block, sets: 2, reps: 4, holdMs: 45_000 })) };

/** Two sets of four holds of 45 s, and what is otherwise about them. */
function drill(date: string, change: Partial<DrillRecord> = {}): DrillRecord {
  const reps = Array.from({ length: 8 }, (_, at): RepRecord => {
    const place = { block: 0, set: Math.floor(at / 4), rep: at % 4, hand: 'usual' as const };
    return { ...place, prescribedMs: 45_000, heldMs: 45_000, outcome: 'held' };
  });
  const at = `${date}T06:30:00Z`;
  return { id: date, program: 'Holding', programId: holding.id, date, startedAt: at, endedAt: at, reps, ...change };
}

function outlook(drills: DrillRecord[], maxHoldSeconds?: number) {
  const kit = { ...createKit(), ...(maxHoldSeconds === undefined ? {} : { maxHoldSeconds }) };
  const view = { today, programs: builtInPrograms, chosen: holding, journal: { ...createJournal(), drills }, kit };
  const { timeline: _, ...known } = outlookOf(view, asked);
  return known;
}

describe('the outlook on a drill', () => {
  it('doubts what is longer than the longest hold', () => {
    // By definition of the longest hold: 45 s fail at 30 s for who can hold 30 s.
    expect(outlook([], 30).prediction?.failsAt).toMatchObject({ rep: 0, secondsIn: expect.closeTo(30, 3) });
    expect(outlook([drill('2026-11-23', { pain: true })], 30).prediction?.failsAt).toBeDefined();
  });

  it('doubts nothing that was held before', () => {
    const { prediction, heldOn, ends } = outlook([drill('2026-11-21'), drill('2026-11-23')], 30);
    expect(heldOn).toBe('2026-11-23');
    expect(prediction?.failsAt).toBeUndefined();
    expect(prediction?.reps).toHaveLength(8);
    expect(Math.min(...(prediction?.reps ?? []).map(({ reserve }) => reserve))).toBeLessThan(0.05);
    expect(ends).toEqual([]);
  });

  it('leaves a longest hold that is enough as it is', () => {
    const known = outlook([drill('2026-11-23')], 300).prediction;
    expect(known).toEqual(outlook([], 300).prediction);
  });

  it('knows what was held where no longest hold is known', () => {
    expect(outlook([drill('2026-11-23')])).toMatchObject({ heldOn: '2026-11-23', ends: [] });
    expect(outlook([drill('2026-11-23')]).prediction).toBeUndefined();
    expect(outlook([])).toEqual({ heldOn: undefined, ends: [] });
  });
});
