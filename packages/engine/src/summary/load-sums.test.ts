import { describe, expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { Journal } from '../journal/journal.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { loadsOf } from './load-sums.ts';

function drill(date: string, change: Partial<DrillRecord> = {}): DrillRecord {
  const rep = {
    block: 0,
    set: 0,
    rep: 0,
    hand: 'usual',
    prescribedMs: 30_000,
    heldMs: 30_000,
    outcome: 'held',
  } as const;
  const at = `${date}T06:30:00Z`;
  return {
    ...{ id: date, program: 'Holding', date, startedAt: at, endedAt: at, reps: [rep, { ...rep, rep: 1 }] },
    ...{ effort: 6, durationMs: 10 * 60_000, ...change },
  };
}

const journalOf = (...drills: DrillRecord[]): Journal => ({ ...createJournal(), drills });
// Wednesday; its ISO week begins on 23 November.
const today = '2026-11-25';

describe('what today and the week cost', () => {
  it('adds up hold time, impulse and load by ISO week', () => {
    const journal = journalOf(drill('2026-11-22'), drill('2026-11-23'), drill(today));
    const loads = loadsOf(journal, { drawWeightLbf: 40 }, today);
    expect(loads.today).toMatchObject({ heldMs: 60_000, load: 60 }); // Foster 1998: effort x minutes
    expect(loads.week).toMatchObject({ heldMs: 120_000, load: 120 });
    expect(loads.weekBefore).toMatchObject({ heldMs: 60_000, load: 60 });
    // NIST SP 811: 1 lbf is 4.4482216152605 N; times 40, times 60 s.
    expect(loads.today.impulseNs).toBeCloseTo(10_675.73, 1);
  });

  it('takes a drill’s own weight before the kit’s, and never the kit’s for another tool', () => {
    const journal = journalOf(
      drill(today, { onFingersLbf: 20 }),
      drill(today, { id: 'b', tool: 'band' }),
      drill(today, { id: 'c', effort: undefined }),
    );
    const { today: sums } = loadsOf(journal, { drawWeightLbf: 40 }, today);
    expect(sums.impulseNs).toBeCloseTo(60 * 4.448_221_615_260_5 * 60, 6); // 20 lb and 40 lb, a minute each
    expect(sums).toMatchObject({ unweighedCount: 1, unratedCount: 1, load: 120 });
    expect(loadsOf(journalOf(drill(today)), {}, today).today.impulseNs).toBeUndefined();
  });

  it('has no ratio before 28 days, and the published ones after (Williams et al. 2017)', () => {
    // 30 for 21 days, then 50 for 7: rolling 50 / 35, fading 1.2497.
    const day = (index: number) => new Date(Date.UTC(2026, 10, 25 - 27 + index)).toISOString().slice(0, 10);
    const drills = Array.from({ length: 28 }, (_, index) =>
      drill(day(index), { effort: 5, durationMs: (index < 21 ? 6 : 10) * 60_000 }),
    );
    const loads = loadsOf(journalOf(...drills), {}, today);
    expect(loads.rollingRatio).toBeCloseTo(1.4286, 4);
    expect(loads.fadingRatio).toBeCloseTo(1.2497, 4);
    expect(loads.sevenDays?.monotony).toBeUndefined(); // all days equal: not defined
    expect(loadsOf(journalOf(...drills.slice(1)), {}, today).rollingRatio).toBeUndefined();
  });

  it('says how much of the time a camera saw, and nothing where it saw nothing', () => {
    const [rep] = drill(today).reps;
    if (rep === undefined) throw new Error('no rep');
    const watched = drill(today, {
      reps: [
        { ...rep, seen: { fromMs: 1_000, toMs: 26_000 } },
        { ...rep, rep: 1 },
      ],
    });
    const { week, weekBefore } = loadsOf(journalOf(watched, drill('2026-11-17')), {}, today);
    expect(week).toMatchObject({ heldMs: 55_000, seenMs: 25_000 });
    expect(weekBefore.seenMs).toBeUndefined();
  });

  it('of nothing is nothing', () => {
    const loads = loadsOf(createJournal(), {}, today);
    expect(loads.week).toEqual({ heldMs: 0, load: 0, unratedCount: 0, unweighedCount: 0 });
    expect(loads.rollingRatio).toBeUndefined();
  });

  it('leaves out what is dated after today', () => {
    expect(loadsOf(journalOf(drill('2026-12-24')), {}, today).week.load).toBe(0);
  });

  it('the week before is its seven days, and evenness needs seven of the journal', () => {
    const of = (...dates: string[]) =>
      loadsOf(journalOf(...dates.map((date) => drill(date))), { drawWeightLbf: 40 }, today);
    expect(of('2026-11-15', '2026-11-16', '2026-11-22', '2026-11-23').weekBefore.load).toBe(120);
    // Of the seven days up to 25 November the first is the 19th.
    expect(of('2026-11-20').sevenDays).toBeUndefined();
    expect(of('2026-11-19').sevenDays?.total).toBe(60);
    expect(loadsOf(journalOf(drill(today, { tool: 'bow' })), { drawWeightLbf: 40 }, today).today.unweighedCount).toBe(
      0,
    );
  });
});
