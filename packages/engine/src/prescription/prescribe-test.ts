import type { Tool } from '../archer/capacity-state.ts';
import { YOUNG_UNTIL_YEARS } from '../season/due-today.ts';
import { dayOfNumber } from '../units/calendar-day.ts';
import { blockOf } from './block-dose.ts';
import { rulesOf } from './block-rules.ts';
import type { KnownToday } from './known-today.ts';
import type { PrescribedBlock } from './prescription.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';
import { restDay } from './rest-day.ts';
import { timelineDurationMs } from './timeline-duration.ts';

/** In how many days before a competition there is no test. Own, careful: no source. */
const DAYS_BEFORE_COMPETITION = 2;

/**
 * A test as its file says, or a rest: it is never eased and never cut.
 * @param known everything that is known today
 * @param tool what would be drawn
 * @param minutes the time there is
 * @returns the file's own numbers; no block on a day that is no day for a test
 */
export function prescribeTest(
  known: KnownToday,
  tool: Tool,
  minutes: number | undefined,
): { blocks: PrescribedBlock[]; reasons: Reason[]; rest?: Reason } {
  const { program } = known;
  const blocks = rulesOf(program).map((rules) => blockOf(rules, rules.path[0]!, rules.path[0]!.hold));
  const rest = restDay(known, tool)?.reason ?? unfit(known, timelineDurationMs(blocks), minutes);
  const reasons = [reasonOf('test', { title: program.title })];
  return rest ? { blocks: [], reasons, rest } : { blocks, reasons };
}

function unfit(known: KnownToday, durationMs: number, minutes: number | undefined): Reason | undefined {
  const { program, stage, body, day, competitionDay, archer } = known;
  const { title } = program;
  if (stage !== undefined) return reasonOf('testPain', { title, on: dayOfNumber(body.pain.painDay ?? day) });
  if (archer.ageYears !== undefined && archer.ageYears < YOUNG_UNTIL_YEARS) {
    return reasonOf('testAge', { title, ageYears: archer.ageYears });
  }
  const daysLeft = (competitionDay ?? Number.NEGATIVE_INFINITY) - day;
  if (daysLeft >= 0 && daysLeft <= DAYS_BEFORE_COMPETITION) {
    return reasonOf('testCompetition', { title, daysLeft, competition: dayOfNumber(competitionDay ?? day) });
  }
  if (minutes === undefined || durationMs <= minutes * 60_000) return undefined;
  return reasonOf('testMinutes', { title, minutes, needed: Math.ceil(durationMs / 60_000) });
}
