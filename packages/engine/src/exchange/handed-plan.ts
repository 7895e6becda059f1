import { z } from 'zod';
import type { Archer } from '../archer/archer.ts';
import type { Journal } from '../journal/journal.ts';
import { journalDaySchema } from '../journal/journal-day.ts';
import { prescribe } from '../prescription/prescribe.ts';
import { timeUnderTensionMs } from '../prescription/time-under-tension.ts';
import type { Program } from '../program/program.ts';
import { findProgram } from '../season/find-program.ts';
import { plannedAgainstDone } from '../season/planned-against-done.ts';
import type { ProgramRef, Season } from '../season/season.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import '../units/plain-parsers.ts';

const amount = { seconds: z.number().min(0), reps: z.number().min(0) };
const side = z.strictObject({ programs: z.array(z.string().max(120)).max(200), ...amount });
const sum = z.strictObject({ ...amount, days: z.number().min(0) });

/** What was planned in the span of a hand-over, and what was done of it: seconds at full draw, reps, days. */
export const handedPlanSchema = z.strictObject({
  planned: sum,
  done: sum,
  /** Days that were planned and had a drill of a planned program. */
  keptDays: z.number().min(0),
  days: z.array(z.strictObject({ date: journalDaySchema, planned: side, done: side })).max(400),
});
/** What was planned in the span of a hand-over, and what was done of it. */
export type HandedPlan = z.output<typeof handedPlanSchema>;

/** How many days are set side by side, the last ones of a longer span. */
const MOST_DAYS = 366;

/**
 * What a season had written for a span beside what was done, for the coach to see. What a program asked on a day is what `prescribe` said on it, from what
 * was known then.
 * @param input the archer's own season, the journal, programs, first and last day, and who the archer is
 * @returns sums and days, the last 366 at most; undefined where the season had written nothing for the span
 * @throws RangeError when a day does not exist or the span ends before it begins
 */
export function handedPlan(input: {
  season: Season;
  journal: Pick<Journal, 'drills' | 'days'>;
  programs: readonly Program[];
  from: string;
  to: string;
  archer?: Archer;
}): HandedPlan | undefined {
  const { season, journal, programs, to, archer } = input;
  const from = dayOfNumber(Math.max(dayNumber(input.from), dayNumber(to) - MOST_DAYS + 1));
  const doseOf = (ref: ProgramRef, date: string) => {
    const program = findProgram(ref, programs);
    if (!program) return undefined;
    const records = journal.drills.filter((one) => one.date < date);
    const days = journal.days.filter((one) => one.date < date);
    const today = prescribe({ program, records, days, today: date, ...(archer ? { archer } : {}) });
    const reps = today.blocks.reduce((total, block) => total + block.sets * block.reps, 0);
    return { seconds: timeUnderTensionMs(today) / 1000, reps };
  };
  const compared = plannedAgainstDone({ season, records: journal.drills, from, to, doseOf });
  if (compared.planned.days === 0) return undefined;
  const copy = (one: { programs: readonly string[]; seconds: number; reps: number }) => ({
    ...one,
    programs: [...one.programs],
  });
  const days = compared.days.map(({ date, planned, done }) => ({ date, planned: copy(planned), done: copy(done) }));
  return { ...compared, days };
}
