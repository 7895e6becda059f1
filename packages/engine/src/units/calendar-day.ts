/**
 * Days from 1970-01-01 to a calendar day, in the proleptic Gregorian calendar.
 * @param day ISO 8601 calendar day, '2026-11-25'
 * @returns a whole number, negative before 1970
 * @throws RangeError when there is no such day
 */
export function dayNumber(day: string): number {
  const number = dayNumberOf(day);
  if (number === undefined) throw new RangeError(`day is '${day}'; expected a calendar day such as 2026-11-25`);
  return number;
}

const ZERO = 48;
const HYPHEN = 45;

/**
 * The same for a day that may be none. Digit by digit: ten years of records are read before every first prescription.
 * @param day what should be an ISO 8601 calendar day
 * @returns days from 1970-01-01; undefined if no calendar has such a day
 */
export function dayNumberOf(day: unknown): number | undefined {
  return typeof day === 'string' && day.length === 10 ? dayNumberAtStart(day) : undefined;
}

/**
 * The day with which a text begins.
 * @param text of which only the first ten characters are read
 * @returns days from 1970-01-01; undefined if they are no calendar day
 */
export function dayNumberAtStart(text: string): number | undefined {
  if (text.charCodeAt(4) !== HYPHEN || text.charCodeAt(7) !== HYPHEN) return undefined;
  const [year, month, ofMonth] = [digits(text, 0, 4), digits(text, 5, 7), digits(text, 8, 10)];
  if (!(year >= 0 && month >= 1 && month <= 12 && ofMonth >= 1 && ofMonth <= daysIn(year, month))) return undefined;
  return daysFromCivil(year, month, ofMonth);
}

/**
 * The number in a part of a text.
 * @param text any
 * @param from where it begins
 * @param to where it is over
 * @returns a whole number; not a number where anything in it is no digit
 */
export function digits(text: string, from: number, to: number): number {
  let value = 0;
  for (let at = from; at < to; at++) {
    const digit = text.charCodeAt(at) - ZERO;
    if (digit < 0 || digit > 9) return Number.NaN;
    value = value * 10 + digit;
  }
  return value;
}

function daysIn(year: number, month: number): number {
  if (month !== 2) return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
}

/**
 * Days from 1970-01-01. Years begin in March here, so that the leap day comes last.
 * @param year Gregorian year
 * @param month 1 to 12
 * @param day of the month, from 1
 * @returns a whole number
 * @source the era method: 400 Gregorian years are 146097 days
 */
function daysFromCivil(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

/**
 * The calendar day that is a number of days from 1970-01-01.
 * @param number whole days
 * @returns ISO 8601 calendar day
 */
export function dayOfNumber(number: number): string {
  const { year, month, ofMonth } = civilFromDays(number);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(ofMonth).padStart(2, '0')}`;
}

/** The way back from `daysFromCivil`, by the same method. */
function civilFromDays(number: number): { year: number; month: number; ofMonth: number } {
  const z = number + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const leapDays = Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const ofMonth = dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1;
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, ofMonth };
}

/**
 * The Monday of a day's week.
 * @param number days from 1970-01-01, which was a Thursday
 * @returns days from 1970-01-01
 */
export function mondayNumber(number: number): number {
  return number - ((((number + 3) % 7) + 7) % 7);
}

/**
 * The ISO week of a day: that of its Thursday.
 * @param day ISO 8601 calendar day
 * @returns '2026-W48'
 * @throws RangeError when there is no such day
 * @source ISO 8601:2004, 2.2.10 and 3.2.2
 */
export function isoWeek(day: string): string {
  const thursday = mondayNumber(dayNumber(day)) + 3;
  const year = dayOfNumber(thursday).slice(0, 4);
  const week = Math.floor((thursday - dayNumber(`${year}-01-01`)) / 7) + 1;
  return `${year}-W${String(week).padStart(2, '0')}`;
}
