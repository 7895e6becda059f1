import { builtInPrograms } from '../program/built-in-programs.ts';
import type { Program } from '../program/program.ts';
import { dayNumber, dayOfNumber, mondayNumber } from '../units/calendar-day.ts';
import { YOUNG_UNTIL_YEARS } from './due-today.ts';
import { type ProgramRef, type Season, type SeasonBlock, seasonSchema, weekdays } from './season.ts';

/** What a season without set-up is made from. */
export interface SensibleSeasonInput {
  /** ISO 8601 day that lies in the season. */
  today: string;
  /** The day on which the archer began; the weeks are counted from its Monday. Default: today. */
  firstDay?: string;
  /** Whole or part years. */
  ageYears?: number;
  /** Minutes that a drill usually takes. Default: a quarter of an hour. */
  usualMinutes?: number;
  /** Days a week on which the archer usually drills. */
  usualDays?: number;
  /** One hold, as long as the form is good, seconds: as known or as said. */
  longestHoldSeconds?: number;
  /** What there is to draw; absent: everything. */
  tools?: readonly Program['tool'][];
  /** The program that the archer is on; absent: one that fits is found. Nobody is moved on to another unasked. */
  program?: ProgramRef;
  /** Days with a drill, ISO 8601, in any order: a morning that was missed stays due until it is done, and the weekdays follow it. */
  drilledDays?: readonly string[];
  /** The weekdays that the archer has planned, 1 for Monday to 7 for Sunday; they go before all else. */
  plannedDays?: readonly number[];
}

const WEEKS = 6; // blocks of 4 to 8 weeks: usarchery.org, 2020
const LIGHTER_WEEK = 4; // every 4 to 6 weeks: from memory
const USUAL_MINUTES = 15;
const CHILD_UNTIL_YEARS = 12;
/** Seconds that a draw and a let-down add to a hold and its rest are in the programs themselves; those of the get-ready are left out. */
const SECONDS = 60;

/** The programs to begin with, the hardest first, and the longest hold that each is for: twice its own. Own: no source. */
const firstPrograms: readonly [title: string, longestHoldSeconds: number][] = [
  ['Holding', 60],
  ['One set of ten', 60],
  ['Twenty holds', 30],
  ['Club starter', 0],
];

/**
 * A season for somebody who set up none: two or three mornings a week, never on two days running, of the program that the archer is on, else of the
 * hardest that the archer can hold and that fits the usual minutes. A morning that was missed stays due until it is done. The same input always gives
 * the same season.
 * @param input the day, and what is known of the archer
 * @returns two blocks of six weeks, this one and the next, the fourth week of each lighter
 * @throws RangeError when a day does not exist
 * @source two or three non-consecutive days for the young: Lloyd et al. 2014, Br J Sports Med, doi 10.1136/bjsports-2013-092952; two to three for novices: ACSM,
 * Ratamess et al. 2009, Med Sci Sports Exerc 41(3):687; which program and which weekdays are ours
 * @example sensibleSeason({ today: '2026-11-23' }).blocks[0]!.days.monday // [{ id, title: 'Club starter' }]
 */
export function sensibleSeason(input: SensibleSeasonInput): Season {
  const { ageYears, usualDays = 2, plannedDays = [] } = input;
  const today = dayNumber(input.today);
  const first = mondayNumber(Math.min(today, dayNumber(input.firstDay ?? input.today)));
  const from = today - ((mondayNumber(today) - first) % (7 * WEEKS)) - (today - mondayNumber(today));
  const isYoung = ageYears !== undefined && ageYears < YOUNG_UNTIL_YEARS;
  const count = usualDays >= 3 && !isYoung ? 3 : 2;
  const { id, title } = input.program ?? fittingProgram(input);
  const programs = [id === undefined ? { title } : { id, title }];
  const mornings =
    plannedDays.length > 0 ? plannedDays.map((day) => day - 1) : spreadFrom(anchorDay(input, count), count);
  const days = Object.fromEntries(mornings.map((at) => [weekdays[at]!, programs])) as SeasonBlock['days'];
  const block = (at: number) => ({
    ...{ title: 'Mornings', from: dayOfNumber(from + at * 7 * WEEKS), weeks: WEEKS },
    ...{ days, lighterWeeks: [LIGHTER_WEEK] },
  });
  return seasonSchema.parse({
    ...{ format: 'larkhold/season', version: 1 },
    title:
      mornings.length === 2
        ? 'Two mornings a week'
        : mornings.length === 3
          ? 'Three mornings a week'
          : 'Mornings as planned',
    about: 'Made without set-up, from what is known of the archer. A season of your own takes its place.',
    blocks: [block(0), block(1)],
  });
}

/** Weekdays, 0 for Monday, spread evenly from a day on: never two running. */
function spreadFrom(day: number, count: 2 | 3): number[] {
  const first = day - mondayNumber(day);
  return (count === 3 ? [0, 2, 4] : [0, 3]).map((after) => (first + after) % 7);
}

/**
 * The next morning that is due, or today where it is due already: some days after the last drill, and no more drills in seven days than there should be.
 */
function anchorDay({ drilledDays, firstDay, today }: SensibleSeasonInput, count: 2 | 3): number {
  const now = dayNumber(today);
  const done = [...new Set((drilledDays ?? []).map(dayNumber))].filter((day) => day < now).sort((a, b) => a - b);
  const last = done.at(-1);
  if (last === undefined) return drilledDays ? now : dayNumber(firstDay ?? today);
  const full = done.at(-count);
  return Math.max(now, last + (count === 3 ? 2 : 3), full === undefined ? 0 : full + 7);
}

function fittingProgram({
  ageYears,
  usualMinutes = USUAL_MINUTES,
  longestHoldSeconds = 0,
  tools,
}: SensibleSeasonInput): Program {
  const called = (name: string) => builtInPrograms.find(({ title }) => title === name)!;
  const starter = called('Club starter');
  if (ageYears !== undefined && ageYears < CHILD_UNTIL_YEARS) return starter;
  if (tools && !tools.includes('bow') && !tools.includes('light-bow')) return called('Travel band');
  const fits = ([title, seconds]: (typeof firstPrograms)[number]) => {
    const program = called(title);
    const hasTool = tools === undefined || tools.includes(program.tool);
    return hasTool && longestHoldSeconds >= seconds && lengthSeconds(program) <= usualMinutes * SECONDS;
  };
  const found = firstPrograms.find(fits);
  return found ? called(found[0]) : starter;
}

/** A program's length at the foot of its ladder, seconds. */
function lengthSeconds({ blocks }: Program): number {
  return blocks.reduce((sum, { sets, reps, draw, hold, letDown, rest, setRest = 0 }) => {
    const between = 'seconds' in rest ? rest.seconds : rest.timesHold * hold;
    return sum + sets * (reps * (draw + hold + letDown) + (reps - 1) * between) + (sets - 1) * setRest;
  }, 0);
}
