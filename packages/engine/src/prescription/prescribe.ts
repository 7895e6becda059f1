import { type Archer, checkArcher } from '../archer/archer.ts';
import type { Past } from '../archer/past.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import type { Program } from '../program/program.ts';
import type { RestReason } from '../season/due-today.ts';
import type { Lighter } from '../season/season-day.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { toolFor, toolReason } from './age-limits.ts';
import { cautionsFor, cautionWords } from './cautions.ts';
import { type KnownToday, knowToday } from './known-today.ts';
import { YEAR_AWAY_DAYS } from './layoff.ts';
import { prescribeDrill } from './prescribe-drill.ts';
import { prescribeTest } from './prescribe-test.ts';
import type { Prescription } from './prescription.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';
import { timelineDurationMs } from './timeline-duration.ts';
import { validProgram } from './valid-program.ts';

/** What a prescription is made from. */
export interface PrescribeInput {
  program: Program;
  /** Any order; other programs' records are read too: there is one body. */
  records: readonly DrillRecord[];
  /** The archer's local day, ISO 8601. */
  today: string;
  /** "I have this long", whole minutes. */
  minutes?: number;
  /** The archer's own word for today; without it, today's diary entry is asked. */
  readiness?: 'fresh' | 'as usual' | 'heavy';
  /** Age, bow, weight, longest hold, and what there is to draw, where known. */
  archer?: Archer;
  /** The diary: arrows shot, pain answered yes or no, and readiness. */
  days?: readonly DayEntry[];
  /** In place of the records and entries before a day, what they fold into; it must hold this program. */
  past?: Past;
  /** The day of a competition, ISO 8601: the two weeks before it are lighter, and the day before it and the day itself are for rest. */
  competitionDay?: string;
  /** What makes the day a lighter one in the archer's season, as `dueToday` gives it. */
  lighter?: Lighter;
  /** Why the archer's season has rest today, as `dueToday` gives it: what somebody should do who drills all the same is less than a full day. */
  seasonRest?: RestReason;
}

/**
 * Today's numbers for a program, and the reason for each. Pure: what is known of the archer is folded from records and diary, and nothing is stored.
 * @param input program, records, day, and what the archer says of today
 * @returns blocks in milliseconds and pounds-force, reasons, cautions, the timeline's length, and `rest` where today is better without a drill
 * @throws TypeError when the program is not valid; RangeError when the day, the minutes, the archer or the competition day are not,
 * or when the past does not hold what is asked for
 * @example prescribe({ program: builtInPrograms[0], records: [], today: '2026-11-25' })
 */
export function prescribe(input: PrescribeInput): Prescription {
  const { minutes } = input;
  const program = validProgram(input.program);
  const day = dayNumber(input.today);
  if (minutes !== undefined && !(Number.isInteger(minutes) && minutes >= 1)) {
    throw new RangeError(`minutes is ${minutes}; expected whole minutes, at least 1`);
  }
  const archer = checkArcher(input.archer);
  const competitionDay = input.competitionDay === undefined ? undefined : dayNumber(input.competitionDay);
  const { records, days, past, readiness } = input;
  const known = knowToday(program, {
    records,
    days,
    past,
    day,
    archer,
    readiness,
    competitionDay,
    lighter: input.lighter,
    seasonRest: input.seasonRest,
  });
  const tool = toolFor(program.tool, archer, known.stage);
  const made = program.kind === 'test' ? prescribeTest(known, tool, minutes) : prescribeDrill(known, tool, minutes);
  const cautions = cautionsFor({ tool, blocks: program.blocks }, archer, lately(known));
  const { title, warmUp, coolDown } = program;
  const prescription: Prescription = {
    programTitle: title,
    date: input.today,
    tool,
    warmUp,
    coolDown,
    blocks: made.blocks,
    reasons: [...made.reasons, ...toolReason(program, tool, archer), ...leftOutReasons(known)],
    cautions: cautions.map(cautionWords),
    cautionFacts: cautions,
    durationMs: timelineDurationMs(made.blocks),
  };
  if (program.kind !== undefined) prescription.kind = program.kind;
  if (made.rest !== undefined) prescription.rest = made.rest;
  return prescription;
}

function lately({ stage, body, daysAway }: KnownToday): { painOn?: string; yearAwayDays?: number } {
  return {
    ...(stage !== undefined && body.pain.painDay !== undefined ? { painOn: dayOfNumber(body.pain.painDay) } : {}),
    ...(daysAway !== undefined && daysAway >= YEAR_AWAY_DAYS ? { yearAwayDays: daysAway } : {}),
  };
}

function leftOutReasons({ laterCount, impossibleDates }: KnownToday): Reason[] {
  const reasons: Reason[] = [];
  if (impossibleDates.length > 0) {
    const dates = [...new Set(impossibleDates)].slice(0, 3).join(', ');
    reasons.push(reasonOf('impossibleDate', { records: impossibleDates.length, dates }));
  }
  if (laterCount > 0) reasons.push(reasonOf('future', { records: laterCount }));
  return reasons;
}
