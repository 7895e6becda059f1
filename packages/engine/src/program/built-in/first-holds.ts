import { type BuiltIn, coolDown, deload, layoff, warmUpBow } from './rack.ts';

const clubStarter: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1001',
  title: 'Club starter',
  about: 'Five short holds with long rests: a first program that asks little. Let down while the form is still good.',
  source:
    'bannockburnbowmen.org, coaching corner: 5 s holds, 20 s rest, 5 reps. The ladder is ours: common practice, no source.',
  tool: 'light-bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'Short holds', drill: 'holding', sets: 1, reps: 5 },
      ...{ draw: 3, hold: 5, letDown: 3, rest: { seconds: 20 } },
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

const twentyHolds: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1008',
  title: 'Twenty holds',
  about: 'Twenty holds of 15 seconds, later of 20, later of 30: about a month, on days without shooting.',
  source:
    'archerygb.org news: 20 reps of 15 s, then of 20 s, then of 30 s, on days without shooting, about a month. It gives no rest: twice the hold is ours, after the most careful of the published ones. Four clean sessions on each step are ours, so that three steps take a month at three a week.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'Twenty holds', drill: 'holding', sets: 1, reps: 20 },
      ...{ draw: 3, hold: 15, letDown: 3, rest: { timesHold: 2 } },
      calls: 'shot-process',
      ladder: {
        rungs: [
          { raise: 'hold', by: 5, until: 20 },
          { raise: 'hold', by: 10, until: 30 },
        ],
        climbAfter: { cleanSessions: 4 },
        layoff,
      },
    },
  ],
  coolDown,
};

const fifteens: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1009',
  title: 'Half an hour of fifteens',
  about: '15 seconds of hold and 15 of rest, again and again; up to half an hour, draw and let-down counted.',
  source:
    'archerygb.org news: 15 s holds, 15 s rest, for 30 min, three times a week. Fifty reps are its half hour when draw and let-down are counted. Beginning with twenty and adding five at a time is ours.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'Fifteens', drill: 'holding', sets: 1, reps: 20 },
      ...{ draw: 3, hold: 15, letDown: 3, rest: { seconds: 15 } },
      ladder: { rungs: [{ raise: 'reps', by: 5, until: 50 }], deload, layoff },
    },
  ],
  coolDown,
};

const oneSet: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e100a',
  title: 'One set of ten',
  about: 'Ten holds of 30 seconds with a minute of rest: a quarter of an hour, for a short morning.',
  source:
    'acearchers.com, home practice weeks, 2020: one set of 10 holds of 30 s, 60 s rest. The ladder to 45 s with twice the hold as rest is ours.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'One set of holds', drill: 'holding', sets: 1, reps: 10 },
      ...{ draw: 3, hold: 30, letDown: 3, rest: { timesHold: 2 } },
      calls: 'shot-process',
      ladder: { rungs: [{ raise: 'hold', by: 5, until: 45 }], deload, layoff },
    },
  ],
  coolDown,
};

const thirties: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e100b',
  title: 'Half an hour of thirties',
  about: '30 seconds of hold and 30 of rest, again and again; up to half an hour, draw and let-down counted.',
  source:
    'archerygb.org news: 30 s holds, 30 s rest, for 30 min, three times a week. 27 reps are its half hour when draw and let-down are counted. Beginning with nine and adding three at a time is ours.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'Thirties', drill: 'holding', sets: 1, reps: 9 },
      ...{ draw: 3, hold: 30, letDown: 3, rest: { seconds: 30 } },
      calls: 'shot-process',
      ladder: { rungs: [{ raise: 'reps', by: 3, until: 27 }], deload, layoff },
    },
  ],
  coolDown,
};

/** Programs that lead to the long ones, the gentlest first. */
export const firstHolds: readonly BuiltIn[] = [clubStarter, twentyHolds, fifteens, oneSet, thirties];
