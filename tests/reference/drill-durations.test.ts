import { builtInPrograms, ladderPath, layOut, type PrescribedBlock } from '@larkhold/engine';
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
const PATH = 'archerygb.org news: 20 reps of 15 s, then of 20 s, then of 30 s, on days without shooting, about a month';
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
  row('twenty holds of 15 s, twice the hold between', [15, 30, 20, 1, 0, 870, 300], `${PATH}; the rest is ours`),
  row('twenty holds of 20 s, twice the hold between', [20, 40, 20, 1, 0, 1160, 400], `${PATH}; the rest is ours`),
  row('twenty holds of 30 s, twice the hold between', [30, 60, 20, 1, 0, 1740, 600], `${PATH}; the rest is ours`),
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
    expect(durationMs).toBe(drill.total * 1000 + 10_000 + sets * reps * (DRAW_MS + LET_DOWN_MS));
    expect(steps.at(-1)?.kind).toBe('letDown');
  });
});

/** Hold, seconds between, reps, sets and set rest of each step of a built-in program's ladder. */
function stepsOf(title: string): number[][] {
  const block = builtInPrograms.find((program) => program.title === title)!.blocks[0]!;
  return ladderPath(block).map(({ hold, reps, sets }) => {
    const between = 'seconds' in block.rest ? block.rest.seconds : block.rest.timesHold * hold;
    return [hold, between, reps, sets, sets > 1 ? (block.setRest ?? 0) : 0];
  });
}
const numbersOf = ({ hold, between, reps, sets, setRest }: Published) => [hold, between, reps, sets, setRest];

describe('built-in programs', () => {
  it.each([
    ['Club starter', 'club starter'],
    ['Twenty holds', 'twenty holds of 15 s, twice the hold between'],
    ['Twenty holds', 'twenty holds of 20 s, twice the hold between'],
    ['Twenty holds', 'twenty holds of 30 s, twice the hold between'],
    ['One set of ten', 'holding, one set a day'],
    ['Holding', 'holding, low end: the 30 min its source states'],
    ['Laddered holding', 'holding, laddered, first step'],
    ['Laddered holding', 'holding, laddered, last step'],
    ['Power', 'power, low end'],
    ['Flexibility', 'flexibility'],
    ['Travel band', 'band evening'],
    ['Band evening', 'band evening'],
  ])('%s has the published step "%s"', (title, drill) => {
    expect(stepsOf(title)).toContainEqual(numbersOf(published.find((one) => one.drill === drill)!));
  });

  it('Power reaches the published 5 s, 12 reps and 5 sets, and never more', () => {
    expect(stepsOf('Power').at(-1)).toEqual([5, 0, 12, 5, 180]); // set rest 180 to 300 s: K. Lee, as above
    for (const [hold = 0, , reps = 0, sets = 0] of stepsOf('Power')) {
      expect(hold >= 3 && hold <= 5 && reps >= 5 && reps <= 12 && sets >= 3 && sets <= 5).toBe(true);
    }
  });

  it('Holding is the half hour that its source states at every step, to two minutes', () => {
    for (const [hold = 0, between = 0, reps = 0, sets = 0, setRest = 0] of stepsOf('Holding')) {
      const seconds = sets * (reps * hold + (reps - 1) * between) + (sets - 1) * setRest;
      expect(Math.abs(seconds - 1800)).toBeLessThanOrEqual(120);
      expect(between).toBe(2 * hold);
    }
    expect(Math.max(...stepsOf('Holding').map(([hold = 0]) => hold))).toBe(45); // over 45 s: add 2-3 lb
  });

  it('Laddered holding adds a band at 60 s for three sets and starts again at 30', () => {
    const block = builtInPrograms.find(({ title }) => title === 'Laddered holding')!.blocks[0]!;
    const path = ladderPath(block);
    const added = path.findIndex(({ addedWeight }) => addedWeight > 0);
    expect(path[added - 1]).toMatchObject({ hold: 60, reps: 10, sets: 3 });
    expect(path[added]).toMatchObject({ hold: 30, reps: 10, sets: 3 });
  });

  it.each([
    ['Half an hour of fifteens', 15],
    ['Half an hour of thirties', 30],
  ])('%s lasts the half hour that its source states, draw and let-down counted, and no longer', (title, seconds) => {
    const [hold = 0, between = 0, reps = 0] = stepsOf(title).at(-1)!;
    expect([hold, between]).toEqual([seconds, seconds]);
    const whole = reps * (hold + (DRAW_MS + LET_DOWN_MS) / 1000) + (reps - 1) * between;
    expect(whole).toBeLessThanOrEqual(1800);
    expect(whole).toBeGreaterThan(1800 - 2 * (seconds + 6));
  });

  it('each name a source, and say what in their ladder is ours', () => {
    for (const { title, source, blocks } of builtInPrograms) {
      expect(source, title).toMatch(/\.(com|org|co)\b|\b(19|20)\d\d\b/);
      if (blocks.some(({ ladder }) => ladder)) expect(source, title).toMatch(/\bours\b/);
    }
  });
});
