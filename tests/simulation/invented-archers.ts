import { type Archer, builtInPrograms, type Program, programSchema } from '@larkhold/engine';

/** One invented archer: what they mean to do, and what comes of it. None of it is about a real person. */
export interface InventedArcher {
  name: string;
  /** What is special about this year, in a sentence. */
  about: string;
  program: Program;
  archer: Archer;
  /** Longest hold on the first day, and the longest that this archer can come to, seconds. */
  maxHoldSeconds: number;
  ceilingSeconds: number;
  /** Chance of a drill on a day of the year, 0 for the first. */
  drillShare(day: number): number;
  /** Arrows on a day with shooting, and how often there is one. */
  arrows: { count: number; share: number };
  /** How often the day is called heavy, a hold is let down early, and there are only so many minutes. */
  heavyShare: number;
  mishapShare: number;
  short?: { minutes: number; share: number };
  /** Days of the year on which the shoulder hurts. */
  painDays: readonly number[];
  competitionDay?: string;
  seed: number;
}

const builtIn = (title: string): Program => builtInPrograms.find((program) => program.title === title)!;

/** A file of its own, with a weekly growth limit: the dearest kind of rule to follow. */
const atticHolds = programSchema.parse({
  ...{
    format: 'larkhold/program',
    version: 1,
    id: '00000000-0000-4000-8000-0000000000a1',
    title: 'Attic holds',
    tool: 'bow',
  },
  source: 'Invented for the simulation.',
  blocks: [
    {
      ...{ title: 'Attic holds', drill: 'holding', sets: 1, reps: 6, draw: 3, hold: 20, letDown: 3 },
      ...{ rest: { timesHold: 2 }, setRest: 120 },
      ladder: {
        rungs: [
          { raise: 'reps', by: 1, until: 10 },
          { raise: 'hold', by: 2, until: 30, resets: { reps: 6 } },
          { raise: 'sets', by: 1, until: 2, resets: { reps: 6 } },
        ],
        climbAfter: { cleanSessions: 2, effortAtMost: 8 },
        deload: { everyWeeks: 4, keep: 0.6 },
        layoff: [
          { days: 14, stepsDown: 2 },
          { days: 28, stepsDown: 6 },
        ],
        weeklyGrowth: 1.1,
      },
    },
  ],
});

/** The three of the year: one who wants too much, one who comes and goes, one who was away. */
export const inventedArchers: readonly InventedArcher[] = [
  {
    name: 'Keen',
    about: 'Drills six days of seven, shoots often and much, and has a competition in June.',
    program: atticHolds,
    archer: { ageYears: 34, bow: 'recurve' },
    ...{ maxHoldSeconds: 45, ceilingSeconds: 110 },
    drillShare: () => 0.88,
    arrows: { count: 150, share: 0.2 },
    ...{ heavyShare: 0.06, mishapShare: 0.006, painDays: [], competitionDay: '2026-06-20', seed: 11 },
  },
  {
    name: 'Irregular',
    about: 'Means to drill four times a week, often has only two minutes, and loses whole weeks.',
    program: builtIn('Club starter'),
    archer: { ageYears: 15, bow: 'recurve' },
    ...{ maxHoldSeconds: 18, ceilingSeconds: 50 },
    drillShare: (day) => (Math.floor(day / 7) % 6 >= 4 ? 0.05 : 0.5),
    arrows: { count: 60, share: 0.15 },
    ...{ heavyShare: 0.15, mishapShare: 0.03, short: { minutes: 2, share: 0.4 }, painDays: [], seed: 23 },
  },
  {
    name: 'Returning',
    about: 'Drills well until April, is away for ten weeks, comes back, and has a sore shoulder twice.',
    program: builtIn('Holding'),
    archer: { ageYears: 58, bow: 'barebow' },
    ...{ maxHoldSeconds: 95, ceilingSeconds: 130 },
    drillShare: (day) => (day >= 100 && day < 170 ? 0 : 0.45),
    arrows: { count: 90, share: 0.2 },
    ...{ heavyShare: 0.08, mishapShare: 0.01, painDays: [190, 280], seed: 37 },
  },
];
