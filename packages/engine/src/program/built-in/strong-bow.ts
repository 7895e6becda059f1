import { type BuiltIn, coolDown, deload, layoff, warmUpBow } from './rack.ts';

const holding: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002',
  title: 'Holding',
  about:
    'Long holds at full draw, half an hour of hold and rest at every step: the longer the hold, the fewer of them. For archers who already hold 30 seconds with good form.',
  source:
    'K. Lee, SPT text as reprinted at usm-archery.blogspot.com (2008): 30-60 s holds, rest twice the hold, 10 reps, repeated to 30 min, 120 s between sets; over 45 s add 2-3 lb. The steps of 5 s, one rep less for each so that it stays half an hour, and 4 lb as the most are ours.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'Full-draw holds', drill: 'holding', sets: 2, reps: 10 },
      ...{ draw: 3, hold: 30, letDown: 3, rest: { timesHold: 2 }, setRest: 120 },
      calls: 'shot-process',
      ladder: {
        rungs: [
          { raise: 'hold', by: 5, until: 35, resets: { reps: 9 } },
          { raise: 'hold', by: 5, until: 40, resets: { reps: 8 } },
          { raise: 'hold', by: 5, until: 45, resets: { reps: 7 } },
          { raise: 'addedWeight', by: 2, until: 4, resets: { hold: 30, reps: 10 } },
        ],
        deload,
        layoff,
      },
    },
  ],
  coolDown,
};

const ladderedHolding: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1003',
  title: 'Laddered holding',
  about:
    'Holds that grow by five seconds from 30 to 60, then a band on the bow and back to 30. It grows long: up to an hour and a half.',
  source:
    'acearchers.com, "Archery Exercises": 30 s holds, +5 s up to 60, rest twice the hold, 10 reps, 3 sets, 300 s between sets; at 60 s for 3 sets a band on the bow and restart at 30. 2 lb for the band, and a second band as the most, are ours.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'Laddered holds', drill: 'holding', sets: 3, reps: 10 },
      ...{ draw: 3, hold: 30, letDown: 3, rest: { timesHold: 2 }, setRest: 300 },
      calls: 'shot-process',
      ladder: {
        rungs: [
          { raise: 'hold', by: 5, until: 60 },
          { raise: 'addedWeight', by: 2, until: 4, resets: { hold: 30 } },
        ],
        deload,
        layoff,
      },
    },
  ],
  coolDown,
};

const power: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1004',
  title: 'Power',
  about: 'From set-up to a short hold and back to set-up, without a rest between reps. Rest fully after each set.',
  source:
    'K. Lee, SPT text as reprinted at usm-archery.blogspot.com (2008): 3-5 s holds, set-up to hold and back, 5-12 reps, 3-5 sets, 180-300 s between sets, about 30 min. The order is ours: reps, then hold, then sets, with eight reps after each.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'Set-up to hold', drill: 'power', sets: 3, reps: 5 },
      ...{ draw: 2, hold: 3, letDown: 2, rest: { seconds: 0 }, setRest: 180, letDownTo: 'set-up' },
      ladder: {
        rungs: [
          { raise: 'reps', by: 1, until: 12 },
          { raise: 'hold', by: 1, until: 5, resets: { reps: 8 } },
          { raise: 'sets', by: 1, until: 5, resets: { reps: 8 } },
        ],
        deload,
        layoff,
      },
    },
  ],
  coolDown,
};

const flexibility: BuiltIn = {
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
      ...{ title: 'Expansion past the clicker', drill: 'flexibility', sets: 5, reps: 6 },
      ...{ draw: 3, hold: 10, letDown: 3, rest: { seconds: 30 }, setRest: 120 },
      calls: ['Keep reaching', 'Shoulders low'],
    },
  ],
  coolDown,
};

/** Programs for an archer's own bow, the gentlest first of each family. */
export const strongBow: readonly BuiltIn[] = [holding, ladderedHolding, power, flexibility];
