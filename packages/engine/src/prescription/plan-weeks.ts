import { dayNumber, dayOfNumber, mondayNumber } from '../units/calendar-day.ts';
import { cleanRecord, competitionRow, type PlanRow, rowOf } from './plan-row.ts';
import { planSeason, type SeasonPlanInput } from './plan-season.ts';
import { type PrescribeInput, prescribe } from './prescribe.ts';
import { sessionsOf } from './program-sessions.ts';
import { validProgram } from './valid-program.ts';

/** What a plan is made from. */
export interface PlanInput extends Pick<PrescribeInput, 'program' | 'records' | 'today' | 'archer' | 'competitionDay'> {
  /** Whole ISO weeks, this one the first, 1 to 52. */
  weeks: number;
  /** Days with a drill in each week, 1 to 7. */
  daysPerWeek: number;
}

/**
 * The coming weeks, projected by the rules as if every session went clean. It is a forecast: what is really held changes it. With a season, its days,
 * tests, competitions and lighter weeks are the plan's. With one program, days spread evenly over the week from Monday; the day of a competition
 * and the day before it have no drill (common practice, no source).
 * @param input a season with the archer's programs, or a program and days a week; records, the first day, how many weeks
 * @returns a row per planned day in order, and one for the competition if it lies in these weeks
 * @throws TypeError when the program is not valid; RangeError when days or counts are not
 * @example planWeeks({ program: builtInPrograms[0], records: [], today: '2026-11-25', weeks: 6, daysPerWeek: 3 })
 */
export function planWeeks(input: PlanInput | SeasonPlanInput): PlanRow[] {
  checkCount('weeks', input.weeks, 52);
  return 'season' in input ? planSeason(input) : planProgram(input);
}

function planProgram(input: PlanInput): PlanRow[] {
  checkCount('daysPerWeek', input.daysPerWeek, 7);
  const program = validProgram(input.program);
  const today = dayNumber(input.today);
  const competitionDay = input.competitionDay === undefined ? undefined : dayNumber(input.competitionDay);
  const past = sessionsOf(program, input.records, today).sessions;
  const records = past.map(({ record }) => record);
  const thisMonday = mondayNumber(today);
  const drilledDays = new Set(past.filter(({ monday }) => monday === thisMonday).map(({ day }) => day));
  const rows: PlanRow[] = [];
  for (let week = 0; week < input.weeks; week++) {
    for (const day of daysOfWeek(thisMonday + 7 * week, input.daysPerWeek, today, drilledDays)) {
      if (competitionDay === day || competitionDay === day + 1) continue;
      const prescription = prescribe({ ...input, minutes: undefined, program, records, today: dayOfNumber(day) });
      rows.push(rowOf(prescription));
      records.push(cleanRecord(prescription, program.id, rows.length));
    }
  }
  const endDay = thisMonday + 7 * input.weeks;
  if (competitionDay !== undefined && competitionDay >= today && competitionDay < endDay) {
    rows.push(competitionRow(dayOfNumber(competitionDay)));
  }
  return rows.sort((a, b) => (a.date < b.date ? -1 : 1));
}

function checkCount(name: string, value: number, most: number): void {
  if (!Number.isInteger(value) || value < 1 || value > most) {
    throw new RangeError(`${name} is ${value}; expected a whole number, 1 to ${most}`);
  }
}

/** The planned days of a week that are still to come; a day already drilled this week takes the place of one. */
function daysOfWeek(monday: number, count: number, today: number, drilledDays: ReadonlySet<number>): number[] {
  const spread = Array.from({ length: count }, (_, index) => monday + Math.floor((index * 7) / count));
  const isThisWeek = monday === mondayNumber(today);
  const left = isThisWeek ? Math.max(0, count - drilledDays.size) : count;
  return spread.filter((day) => day >= today && !drilledDays.has(day)).slice(0, left);
}
