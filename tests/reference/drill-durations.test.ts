import { layOut, type PrescribedBlock, READY_MS } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';

/** Seconds as published; `total` is the seconds of hold and rest that S(R h + (R-1) r) + (S-1) Q gives, worked out by hand. */
interface Published {
  drill: string;
  hold: number;
  between: number;
  reps: number;
  sets: number;
  setRest: number;
  total: number;
  underTension: number;
  source: string;
}

const LEE = 'K. Lee, "SPT" text, as reprinted at usm-archery.blogspot.com/2008/12 and ogio.nl';
const ACE = 'acearchers.com, "Archery Exercises"';
const FLEX = 'K. Lee, kisiklee.com Q46, and the reprints of "SPT"';

function row(drill: string, numbers: readonly number[], source: string): Published {
  const [hold = 0, between = 0, reps = 0, sets = 0, setRest = 0, total = 0, underTension = 0] = numbers;
  return { drill, hold, between, reps, sets, setRest, total, underTension, source };
}

// Columns: hold, between, reps, sets, set rest, total, under tension
const published: Published[] = [
  row('holding, low end: the 30 min its source states', [30, 60, 10, 2, 120, 1800, 600], LEE),
  row('holding, high end, one set', [60, 120, 10, 1, 0, 1680, 600], LEE),
  row('holding one rung up', [35, 70, 10, 1, 0, 980, 350], `${LEE}; 2 x hold`),
  row('holding, laddered, first step', [30, 60, 10, 3, 300, 3120, 900], ACE),
  row('holding, laddered, last step', [60, 120, 10, 3, 300, 5640, 1800], ACE),
  row('holding, one set a day', [30, 60, 10, 1, 0, 840, 300], 'acearchers.com, home practice weeks, 2020'),
  row('power, low end', [3, 0, 5, 3, 180, 405, 45], LEE),
  row('power, high end', [5, 0, 12, 5, 300, 1500, 300], LEE),
  row('flexibility', [10, 30, 6, 5, 120, 1530, 300], FLEX),
  row('short holds, 60 of them: the most that fit its 30 min', [15, 15, 60, 1, 0, 1785, 900], 'archerygb.org news'),
  row('long holds, 30 of them: the most that fit its 30 min', [30, 30, 30, 1, 0, 1770, 900], 'archerygb.org news'),
  row('club starter', [5, 20, 5, 1, 0, 105, 25], 'bannockburnbowmen.org, coaching corner'),
  row('band evening', [10, 10, 6, 10, 20, 1280, 600], 'spigarellirevolution.blogspot.com, 2013'),
  row(
    'baseline test, ten reps of it',
    [15, 25, 10, 1, 0, 375, 150],
    'ndarchery.co, "Developing an SPT protocol", 2025',
  ),
];

// Draw and let-down times are not published: common practice, no source.
const DRAW_MS = 3000;
const LET_DOWN_MS = 3000;

function timelineOf(drill: Published) {
  const block: PrescribedBlock = {
    block: 0,
    title: drill.drill,
    drill: 'holding',
    sets: drill.sets,
    reps: drill.reps,
    drawMs: DRAW_MS,
    holdMs: drill.hold * 1000,
    letDownMs: LET_DOWN_MS,
    restMs: drill.between * 1000,
    setRestMs: drill.setRest * 1000,
    letDownTo: 'rest',
    hand: 'usual',
    addedWeightLbf: 0,
  };
  return layOut({
    programTitle: drill.drill,
    date: '2026-11-25',
    blocks: [block],
    reasons: [],
    cautions: [],
    durationMs: 0,
  });
}

describe('published drills last as long as their numbers say', () => {
  it.each(published)('$drill ($source)', (drill) => {
    const { steps, durationMs } = timelineOf(drill);
    const msOf = (...kinds: string[]) =>
      steps.filter((step) => kinds.includes(step.kind)).reduce((sumMs, step) => sumMs + step.durationMs, 0);

    const { sets, reps, hold, between, setRest } = drill;
    expect(sets * (reps * hold + (reps - 1) * between) + (sets - 1) * setRest).toBe(drill.total);
    expect(msOf('hold', 'rest', 'setRest')).toBe(drill.total * 1000);
    expect(msOf('hold')).toBe(drill.underTension * 1000);
    expect(durationMs).toBe(drill.total * 1000 + READY_MS + sets * reps * (DRAW_MS + LET_DOWN_MS));
    expect(steps.at(-1)?.kind).toBe('letDown');
  });
});
