import type { DrillRecord, RepRecord } from '../journal/drill-record.ts';
import { dayNumber, dayOfNumber, isoWeek, mondayNumber } from '../units/calendar-day.ts';
import { type PrescribeInput, prescribe } from './prescribe.ts';
import type { PrescribedBlock, Prescription } from './prescription.ts';
import { sessionsOf } from './program-sessions.ts';
import { validProgram } from './valid-program.ts';

/** What a plan is made from. */
export interface PlanInput extends Pick<PrescribeInput, 'program' | 'records' | 'today' | 'archer' | 'competitionDay'> {
  /** Whole ISO weeks, this one the first, 1 to 52. */
  weeks: number;
  /** Days with a drill in each week, 1 to 7. */
  daysPerWeek: number;
}

/** One drill of a planned day. Times are milliseconds, weights pounds-force. */
export type PlannedDrill = Pick<PrescribedBlock, 'block' | 'title' | 'sets' | 'reps' | 'holdMs' | 'addedWeightLbf'>;

/** One planned day: a row of the plan's table. */
export interface PlanRow {
  /** ISO 8601 week, '2026-W48'. */
  week: string;
  /** ISO 8601 day. */
  date: string;
  kind: 'usual' | 'deload' | 'taper' | 'competition';
  drills: readonly PlannedDrill[];
  /** Time at full draw, milliseconds. */
  heldMs: number;
  /** Length of the timeline, milliseconds. */
  durationMs: number;
  /** The day in words: 'Holds 2 × 5, hold 30 s'. */
  words: string;
  /** Where the numbers come from and what changed them, in words. */
  why: readonly string[];
}

/**
 * The coming weeks, projected by the rules as if every session went clean. It is a forecast: what is really held changes it. Days spread evenly
 * over the week from Monday; the day of a competition and the day before it have no drill (common practice, no source).
 * @param input program, records, the first day, how many weeks and days
 * @returns a row per planned day in order, and one for the competition if it lies in these weeks
 * @throws TypeError when the program is not valid; RangeError when days or counts are not
 * @example planWeeks({ program: builtInPrograms[0], records: [], today: '2026-11-25', weeks: 6, daysPerWeek: 3 })
 */
export function planWeeks(input: PlanInput): PlanRow[] {
  checkCount('weeks', input.weeks, 52);
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

function rowOf({ date, blocks, durationMs, reasons }: Prescription): PlanRow {
  const drills = blocks.map(({ block, title, sets, reps, holdMs, addedWeightLbf }) => {
    return { block, title, sets, reps, holdMs, addedWeightLbf };
  });
  const rules = reasons.map(({ rule }) => rule);
  return {
    ...{ week: isoWeek(date), date, drills, durationMs },
    kind: rules.includes('taper') ? 'taper' : rules.includes('deload') ? 'deload' : 'usual',
    heldMs: drills.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0),
    words: drills.map(drillWords).join('; '),
    why: reasons.filter(({ rule }) => rule !== 'impossibleDate').map(({ change }) => change),
  };
}

function drillWords({ title, sets, reps, holdMs, addedWeightLbf }: PlannedDrill): string {
  const weight = addedWeightLbf > 0 ? `, ${addedWeightLbf} lb added` : '';
  return `${title} ${sets} × ${reps}, hold ${holdMs / 1000} s${weight}`;
}

function competitionRow(date: string): PlanRow {
  return {
    ...{ week: isoWeek(date), date, kind: 'competition', drills: [], heldMs: 0, durationMs: 0 },
    ...{ words: 'Competition', why: ['No drill today nor the day before.'] },
  };
}

/** What the journal would hold if the day went as planned. */
function cleanRecord(prescription: Prescription, programId: string | undefined, number: number): DrillRecord {
  const { programTitle, date, blocks } = prescription;
  const reps = blocks.flatMap(({ block, sets, reps: count, holdMs }) =>
    Array.from({ length: sets * count }, (_, at): RepRecord => {
      const place = { block, set: Math.floor(at / count), rep: at % count, hand: 'usual' as const };
      return { ...place, prescribedMs: holdMs, heldMs: holdMs, outcome: 'held' };
    }),
  );
  const noon = `${date}T12:00:00Z`;
  return {
    ...{ id: `planned ${number}`, program: programTitle, programId, date, startedAt: noon, endedAt: noon },
    ...{ reps, prescribedReps: reps.length },
  };
}
