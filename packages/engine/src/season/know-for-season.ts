import type { Archer } from '../archer/archer.ts';
import { bodyAfter } from '../archer/body-state.ts';
import { logDays } from '../archer/logged-days.ts';
import { painOn } from '../archer/pain-state.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import type { SeasonArcher } from './due-today.ts';

/**
 * What a season reads of an archer, from the journal.
 * @param input drill records and diary in any order, the day, and what is known of the archer
 * @returns days in a row with a bow, arrows counted; pain and its stage; the tests that were done
 * @throws RangeError when there is no such day
 */
export function knowForSeason(input: {
  records: readonly DrillRecord[];
  days?: readonly DayEntry[];
  today: string;
  archer?: Archer;
}): SeasonArcher {
  const day = dayNumber(input.today);
  const logged = logDays(input.records, input.days).days;
  let count = logged.length;
  while (count > 0 && logged[count - 1]!.day > day) count--;
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
