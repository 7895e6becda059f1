import type { Tool } from '../archer/capacity-state.ts';
import { ANSWERS_A_STAGE, isResting, PAINFUL_DRILLS } from '../archer/pain-state.ts';
import { MOST_DAYS_IN_ROW, YOUNG_UNTIL_YEARS } from '../season/due-today.ts';
import { dayOfNumber } from '../units/calendar-day.ts';
import type { KnownToday } from './known-today.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';

/**
 * Whether today is better without a drill.
 * @param known everything that is known today
 * @param tool what would be drawn
 * @returns why, the gravest first; undefined where a drill is fine. `isEmpty`: not even less is offered
 */
export function restDay(known: KnownToday, tool: Tool): { reason: Reason; isEmpty: boolean } | undefined {
  const { day, body, isPainful, stage, painAnswers, archer, competitionDay } = known;
  const { pain } = body;
  const on = dayOfNumber(pain.painDay ?? day);
  if (isPainful) return { reason: reasonOf('pain', { on: dayOfNumber(day) }), isEmpty: true };
  if (stage !== undefined && isResting(pain, day)) {
    const drills = Math.max(PAINFUL_DRILLS, pain.painfulDrillDays.length);
    const until = dayOfNumber(pain.restUntilDay ?? day);
    return { reason: reasonOf('painAgain', { on, drills, until }), isEmpty: true };
  }
  const answers = { on, answers: painAnswers, needed: ANSWERS_A_STAGE };
  if (stage === 'mimed') return { reason: reasonOf('painMimed', answers), isEmpty: false };
  if (stage !== undefined && archer.tools && !archer.tools.includes(tool)) {
    return { reason: reasonOf('painTool', { stage, tool, ...answers }), isEmpty: false };
  }
  const reason = young(known) ?? inARow(known) ?? competition(day, competitionDay) ?? season(known);
  return reason && { reason, isEmpty: false };
}

function season({ seasonRest }: KnownToday): Reason | undefined {
  if (seasonRest === undefined) return undefined;
  const nextDay = 'nextDay' in seasonRest ? seasonRest.nextDay : undefined;
  return reasonOf('seasonRest', { because: seasonRest.rule, ...(nextDay === undefined ? {} : { nextDay }) });
}

function young({ archer, body, day }: KnownToday): Reason | undefined {
  const { ageYears } = archer;
  const hasDrilledYesterday = [body.drillDay, body.drillDayBefore].includes(day - 1);
  if (ageYears === undefined || ageYears >= YOUNG_UNTIL_YEARS || !hasDrilledYesterday) return undefined;
  return reasonOf('youthDay', { ageYears, on: dayOfNumber(day - 1) });
}

function inARow({ body, day }: KnownToday): Reason | undefined {
  const { rowDays, rowDay: lastDay } = body;
  // A drill of today is one of the days already.
  const daysBefore = lastDay === day ? rowDays - 1 : lastDay === day - 1 ? rowDays : 0;
  if (daysBefore < MOST_DAYS_IN_ROW) return undefined;
  return reasonOf('daysInRow', { days: daysBefore, most: MOST_DAYS_IN_ROW });
}

function competition(day: number, competitionDay: number | undefined): Reason | undefined {
  if (competitionDay === undefined) return undefined;
  const daysLeft = competitionDay - day;
  if (daysLeft !== 0 && daysLeft !== 1) return undefined;
  return reasonOf('competition', { daysLeft, competition: dayOfNumber(competitionDay) });
}
