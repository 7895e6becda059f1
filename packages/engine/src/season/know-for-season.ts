import type { Archer } from '../archer/archer.ts';
import { bodyAfter } from '../archer/body-state.ts';
import { countUntil, logDays } from '../archer/logged-days.ts';
import { painOn } from '../archer/pain-state.ts';
import { dayOfPast, type Past } from '../archer/past.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import type { SeasonArcher } from './due-today.ts';

/**
 * What a season reads of an archer, from the journal.
 * @param input drill records and diary in any order, the day, and what is known of the archer; in place of older records and entries the past
 * that they fold into, whose tests are too old to matter
 * @returns days in a row with a bow, arrows counted; pain and its stage; the tests that were done
 * @throws RangeError when there is no such day
 */
export function knowForSeason(input: {
  records: readonly DrillRecord[];
  days?: readonly DayEntry[];
  today: string;
  archer?: Archer;
  past?: Past;
}): SeasonArcher {
  const day = dayNumber(input.today);
  const logged = logDays(input.records, input.days, dayOfPast(input.past)).days;
  const count = countUntil(logged, day);
  const body = bodyAfter(logged, count);
  const { stage } = painOn(body.pain, day);
  const { painDay } = body.pain;
  const ageYears = input.archer?.ageYears;
  return {
    ...(ageYears === undefined ? {} : { ageYears }),
    ...(body.lastDay === undefined ? {} : { lastDrawDay: dayOfNumber(body.lastDay) }),
    rowDays: body.rowDays,
    ...(stage === undefined || painDay === undefined ? {} : { pain: { day: dayOfNumber(painDay), stage } }),
    tests: input.records.filter(({ kind, removed }) => kind === 'test' && !removed),
  };
}
