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
  /** How often the day is called heavy, a hold is let down early, and there are few minutes. */
  heavyShare: number;
  mishapShare: number;
  short?: { minutes: number; share: number };
  /** Days of the year on which the shoulder hurts. */
  painDays: readonly number[];
  /** Whether rest days are kept, and the diary's question about pain is answered on every day. */
  isHeedful: boolean;
  competitionDays?: readonly string[];
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

const weekdays =
  (...days: number[]) =>
  (day: number): number =>
    days.includes(day % 7) ? 0.95 : 0;

/** The archers of the year. Days of the week are counted from Monday, 0. */
export const inventedArchers: readonly InventedArcher[] = [
  {
    name: 'Keen',
    about: 'Drills six days of seven, shoots often and much, and has a competition in June.',
    program: atticHolds,
    archer: { ageYears: 34, bow: 'recurve' },
    ...{ maxHoldSeconds: 45, ceilingSeconds: 110 },
    drillShare: () => 0.88,
    arrows: { count: 150, share: 0.2 },
    ...{
      heavyShare: 0.06,
      mishapShare: 0.006,
      painDays: [],
      isHeedful: false,
      competitionDays: ['2026-06-20'],
      seed: 11,
    },
  },
  {
    name: 'Irregular',
    about: 'Means to drill four times a week, often has only two minutes, and loses whole weeks.',
    program: builtIn('Club starter'),
    archer: { ageYears: 15, bow: 'recurve' },
    ...{ maxHoldSeconds: 18, ceilingSeconds: 50 },
    drillShare: (day) => (Math.floor(day / 7) % 6 >= 4 ? 0.05 : 0.5),
    arrows: { count: 60, share: 0.15 },
    ...{
      heavyShare: 0.15,
      mishapShare: 0.03,
      short: { minutes: 2, share: 0.4 },
      painDays: [],
      isHeedful: false,
      seed: 23,
    },
  },
  {
    name: 'Returning',
    about: 'Drills well until April, is away for ten weeks, comes back, and has a sore shoulder twice.',
    program: builtIn('Holding'),
    archer: { ageYears: 58, bow: 'barebow' },
    ...{ maxHoldSeconds: 95, ceilingSeconds: 130 },
    drillShare: (day) => (day >= 100 && day < 170 ? 0 : 0.45),
    arrows: { count: 90, share: 0.2 },
    ...{ heavyShare: 0.08, mishapShare: 0.01, painDays: [190, 280], isHeedful: true, seed: 37 },
  },
  {
    name: 'Newcomer',
    about: 'Can hold 18 s once, and nobody asked; fifteen minutes on three mornings a week.',
    program: builtIn('Holding'),
    archer: { ageYears: 27, bow: 'recurve' },
    ...{ maxHoldSeconds: 18, ceilingSeconds: 45 },
    drillShare: weekdays(0, 2, 4),
    arrows: { count: 50, share: 0.1 },
    ...{
      heavyShare: 0.05,
      mishapShare: 0.01,
      short: { minutes: 15, share: 1 },
      painDays: [],
      isHeedful: true,
      seed: 41,
    },
  },
  {
    name: 'Young',
    about: 'Is 13, can hold 25 s, and drills on three mornings a week with a light bow.',
    program: builtIn('Twenty holds'),
    archer: { ageYears: 13, bow: 'recurve', longestHoldSeconds: 25 },
    ...{ maxHoldSeconds: 25, ceilingSeconds: 50 },
    drillShare: weekdays(0, 2, 4),
    arrows: { count: 60, share: 0.2 },
    ...{ heavyShare: 0.05, mishapShare: 0.02, painDays: [], isHeedful: true, seed: 43 },
  },
  {
    name: 'Plateau',
    about: 'Is 60, holds 50 s and will never hold more; thirty minutes on four mornings a week.',
    program: builtIn('Half an hour of thirties'),
    archer: { ageYears: 60, bow: 'longbow', longestHoldSeconds: 50 },
    ...{ maxHoldSeconds: 50, ceilingSeconds: 50 },
    drillShare: weekdays(0, 1, 3, 5),
    arrows: { count: 70, share: 0.2 },
    ...{
      heavyShare: 0.08,
      mishapShare: 0.01,
      short: { minutes: 30, share: 1 },
      painDays: [],
      isHeedful: true,
      seed: 47,
    },
  },
  {
    name: 'Strong',
    about: 'Holds 90 s, has 45 minutes on five mornings a week, and two competitions.',
    program: builtIn('Laddered holding'),
    archer: { ageYears: 24, bow: 'recurve', onFingersLbf: 42, longestHoldSeconds: 90 },
    ...{ maxHoldSeconds: 90, ceilingSeconds: 140 },
    drillShare: weekdays(0, 1, 2, 3, 4),
    arrows: { count: 140, share: 0.35 },
    ...{ heavyShare: 0.05, mishapShare: 0.005, short: { minutes: 45, share: 1 }, painDays: [] },
    ...{ isHeedful: true, competitionDays: ['2026-05-16', '2026-09-12'], seed: 53 },
  },
  {
    name: 'Sore',
    about: 'Holds 40 s, two mornings a week, and a shoulder that hurts in February, March and October.',
    program: builtIn('Holding'),
    archer: { ageYears: 38, bow: 'barebow', longestHoldSeconds: 40 },
    ...{ maxHoldSeconds: 40, ceilingSeconds: 70 },
    drillShare: weekdays(1, 4),
    arrows: { count: 60, share: 0.15 },
    ...{ heavyShare: 0.1, mishapShare: 0.01, painDays: [46, 74, 291], isHeedful: true, seed: 59 },
  },
  {
    name: 'Daily',
    about: 'Drills seven mornings a week, rest days too, with a let-down now and then; three weeks away in August.',
    program: builtIn('Club starter'),
    archer: { ageYears: 45, bow: 'recurve' },
    ...{ maxHoldSeconds: 30, ceilingSeconds: 60 },
    drillShare: (day) => (day >= 217 && day < 238 ? 0 : 1),
    arrows: { count: 40, share: 0.1 },
    ...{ heavyShare: 0.05, mishapShare: 0.03, painDays: [], isHeedful: false, seed: 61 },
  },
];
