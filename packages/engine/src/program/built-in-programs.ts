import { type Program, programSchema } from './program.ts';

const warmUpBow = ['Shoulder circles, 10 each way', 'Band pulls, 2 x 10', 'Two slow half draws, let down each time'];
const coolDown = ['Arms overhead, slow breaths, one minute', 'Chest stretch in a doorway, 30 s each side'];
const layoff = [
  { days: 14, stepsDown: 1 },
  { days: 28, stepsDown: 3 },
];

const clubStarter = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1001',
  title: 'Club starter',
  about: 'Five short holds with long rests: a first program that asks little. Let down while the form is still good.',
  source:
    'bannockburnbowmen.org, coaching corner: 5 s holds, 20 s rest, 5 reps. The ladder is ours: common practice, no source.',
  tool: 'light-bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{
        title: 'Short holds',
        drill: 'holding',
        sets: 1,
        reps: 5,
        draw: 3,
        hold: 5,
        letDown: 3,
        rest: { seconds: 20 },
      },
      ladder: {
        rungs: [
          { raise: 'reps', by: 1, until: 8 },
          { raise: 'hold', by: 1, until: 10, resets: { reps: 5 } },
        ],
        layoff,
      },
    },
  ],
  coolDown,
};

const holding = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002',
  title: 'Holding',
  about:
    'Long holds at full draw, half an hour of hold and rest. For archers who already hold 30 seconds with good form.',
  source:
    'K. Lee, SPT text as reprinted at usm-archery.blogspot.com (2008): 30-60 s holds, rest twice the hold, 10 reps, 120 s between sets, about 30 min; over 45 s add 2-3 lb.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{
        title: 'Full-draw holds',
        drill: 'holding',
        sets: 2,
        reps: 10,
        draw: 3,
        hold: 30,
        letDown: 3,
        rest: { timesHold: 2 },
        setRest: 120,
      },
      calls: 'shot-process',
      ladder: {
        rungs: [
          { raise: 'hold', by: 5, until: 45 },
          { raise: 'addedWeight', by: 2, until: 6, resets: { hold: 30 } },
        ],
        ...{ deload: { everyWeeks: 4, keep: 0.6 }, layoff },
      },
    },
  ],
  coolDown,
};

const ladderedHolding = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1003',
  title: 'Laddered holding',
  about: 'Holds that grow by five seconds from 30 to 60, then a band on the bow and back to 30.',
  source:
    'acearchers.com, "Archery Exercises": 30 s holds, +5 s up to 60, rest twice the hold, 10 reps, 3 sets, 300 s between sets; at 60 s for 3 sets a band on the bow and restart at 30.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{
        title: 'Laddered holds',
        drill: 'holding',
        sets: 3,
        reps: 10,
        draw: 3,
        hold: 30,
        letDown: 3,
        rest: { timesHold: 2 },
        setRest: 300,
      },
      calls: 'shot-process',
      ladder: {
        rungs: [
          { raise: 'hold', by: 5, until: 60 },
          { raise: 'addedWeight', by: 2, until: 4, resets: { hold: 30 } },
        ],
        ...{ deload: { everyWeeks: 4, keep: 0.6 }, layoff },
      },
    },
  ],
  coolDown,
};

const power = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1004',
  title: 'Power',
  about: 'From set-up to a short hold and back to set-up, without a rest between reps. Rest fully after each set.',
  source:
    'K. Lee, SPT text as reprinted at usm-archery.blogspot.com (2008): 3-5 s holds, set-up to hold and back, 5-12 reps, 3-5 sets, 180-300 s between sets, about 30 min.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{
        title: 'Set-up to hold',
        drill: 'power',
        sets: 3,
        reps: 5,
        draw: 2,
        hold: 3,
        letDown: 2,
        rest: { seconds: 0 },
        setRest: 180,
        letDownTo: 'set-up',
      },
      ladder: {
        rungs: [
          { raise: 'reps', by: 1, until: 12 },
          { raise: 'sets', by: 1, until: 5, resets: { reps: 5 } },
        ],
        deload: { everyWeeks: 4, keep: 0.6 },
        layoff,
      },
    },
  ],
  coolDown,
};

const flexibility = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1005',
  title: 'Flexibility',
  about:
    'Ten seconds of expansion, 1 to 1.5 cm past the clicker, arrow on, close to a safe butt. Needs a clicker. Let down every time.',
  source:
    'K. Lee, kisiklee.com question 46: 10 s of expansion past the clicker, 30 s rest, 6 reps, 5 sets, 120 s between sets.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{
        title: 'Expansion past the clicker',
        drill: 'flexibility',
        sets: 5,
        reps: 6,
        draw: 3,
        hold: 10,
        letDown: 3,
        rest: { seconds: 30 },
        setRest: 120,
      },
      calls: ['Keep reaching', 'Shoulders low'],
    },
  ],
  coolDown,
};

const bandEvening = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1006',
  title: 'Band evening',
  about: 'Many short holds on a stretch band. Quiet, and possible in any room.',
  source: 'spigarellirevolution.blogspot.com, 2013: 10 s holds, 10 s rest, 6 reps, 10 sets, 20 s between sets.',
  tool: 'band',
  warmUp: ['Shoulder circles, 10 each way', 'Easy band pulls, 10'],
  blocks: [
    {
      title: 'Band holds',
      drill: 'holding',
      sets: 10,
      reps: 6,
      draw: 2,
      hold: 10,
      letDown: 2,
      rest: { seconds: 10 },
      setRest: 20,
      hand: 'usual',
    },
  ],
  coolDown,
};

const baselineTest = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1007',
  title: 'Baseline test',
  kind: 'test',
  measure: 'rep-where-form-fails',
  about:
    'Holds of 15 seconds with 25 seconds of rest until form fails. Stop at that rep: its number is where you start. Repeat every 4 to 8 weeks.',
  source:
    'ndarchery.co, "Developing an SPT protocol", 2025: 15 s holds, 25 s rest, until form fails; the rep where form fails is the starting number.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      title: 'Holds until form fails',
      drill: 'holding',
      sets: 1,
      reps: 20,
      draw: 3,
      hold: 15,
      letDown: 3,
      rest: { seconds: 25 },
    },
  ],
  coolDown,
};

/** The programs that every rack has, the gentlest first. Each follows one published source, named in its `source`. */
export const builtInPrograms: readonly Program[] = [
  ...[clubStarter, holding, ladderedHolding, power, flexibility, bandEvening, baselineTest],
].map((program) => programSchema.parse({ format: 'larkhold/program', version: 2, ...program }));
