import { dayNumberAtStart, dayNumberOf, dayOfNumber, digits } from './calendar-day.ts';

/** Day, hour, minute, second, fraction; offset, its sign, hour and minute. */
const INSTANT = /^(\d{4}-\d{2}-\d{2})T(\d{2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?(Z|([+-])(\d{2}):?(\d{2}))?$/;

const DAY_MS = 86_400_000;
/** No clock on earth is further from UTC. */
const MOST_OFFSET_MINUTES = 14 * 60;

/** An instant, taken apart. */
export interface ReadInstant {
  /** The local calendar day, ISO 8601. */
  day: string;
  /** Milliseconds from 1970-01-01 by the local clock; parts of a millisecond are dropped. */
  localMs: number;
  /** As it is written: 'Z', '+01:00', or empty where there is none. */
  offset: string;
  /** East of UTC; 0 where there is none. */
  offsetMinutes: number;
}

/**
 * Reads an instant strictly: only a real day, time and offset is one.
 * @param text ISO 8601 date and time, with or without an offset: '2026-11-25T06:30:00+01:00'
 * @returns its parts; undefined where it is invalid, or where there is no such day, time or offset
 */
export function readInstant(text: string): ReadInstant | undefined {
  const parts = INSTANT.exec(text);
  if (parts === null) return undefined;
  const [, day = '', hours, minutes, seconds = 0, fraction = '', offset = '', sign, eastHours = 0, eastMinutes = 0] =
    parts;
  const [hour, minute, second, offsetMinute] = [Number(hours), Number(minutes), Number(seconds), Number(eastMinutes)];
  const offsetMinutes = (Number(eastHours) * 60 + offsetMinute) * (sign === '-' ? -1 : 1);
  const dayCount = dayNumberOf(day);
  const isReal = hour <= 23 && minute <= 59 && second <= 59 && offsetMinute <= 59;
  if (!isReal || Math.abs(offsetMinutes) > MOST_OFFSET_MINUTES || dayCount === undefined) return undefined;
  const clockMs = hour * 3_600_000 + minute * 60_000 + second * 1000;
  const fractionMs = fraction === '' ? 0 : Number(fraction.padEnd(3, '0').slice(0, 3));
  return { day, localMs: dayCount * DAY_MS + clockMs + fractionMs, offset, offsetMinutes };
}

/**
 * Where an instant is in time.
 * @param text ISO 8601 with `Z` or an offset
 * @returns milliseconds from 1970-01-01 UTC; negative infinity for an absent or unreadable one, and for one without an offset
 */
export function instantMs(text: string | undefined): number {
  if (text === undefined) return Number.NEGATIVE_INFINITY;
  const usualMs = usualInstantMs(text);
  if (usualMs !== undefined) return usualMs;
  const read = readInstant(text);
  return read === undefined || read.offset === ''
    ? Number.NEGATIVE_INFINITY
    : read.localMs - read.offsetMinutes * 60_000;
}

const [DOT, COLON, PLUS, MINUS, T, Z] = [...'.:+-TZ'].map((sign) => sign.charCodeAt(0));

/**
 * The same for the form in which nearly all are written, digit by digit: lists of ten years are compared by their instants.
 * @returns undefined where it is another form, or no instant: that is for the whole pattern to say
 */
function usualInstantMs(text: string): number | undefined {
  if (text.charCodeAt(10) !== T || text.charCodeAt(13) !== COLON || text.charCodeAt(16) !== COLON) return undefined;
  const hasFraction = text.charCodeAt(19) === DOT;
  const end = hasFraction ? 23 : 19;
  const sign = text.charCodeAt(end);
  const isUtc = sign === Z && text.length === end + 1;
  const isEast = (sign === PLUS || sign === MINUS) && text.length === end + 6 && text.charCodeAt(end + 3) === COLON;
  if (!isUtc && !isEast) return undefined;
  const dayCount = dayNumberAtStart(text);
  const [hour, minute, second] = [digits(text, 11, 13), digits(text, 14, 16), digits(text, 17, 19)];
  const fractionMs = hasFraction ? digits(text, 20, 23) : 0;
  if (dayCount === undefined || !(hour <= 23 && minute <= 59 && second <= 59 && fractionMs >= 0)) return undefined;
  const localMs = dayCount * DAY_MS + hour * 3_600_000 + minute * 60_000 + second * 1000 + fractionMs;
  if (isUtc) return localMs;
  const [eastHours, eastMinutes] = [digits(text, end + 1, end + 3), digits(text, end + 4, end + 6)];
  const offsetMinutes = eastHours * 60 + eastMinutes;
  if (!(eastMinutes <= 59 && offsetMinutes <= MOST_OFFSET_MINUTES)) return undefined;
  return localMs - (sign === MINUS ? -offsetMinutes : offsetMinutes) * 60_000;
}

/**
 * An instant some milliseconds later, written with the same offset from UTC.
 * @param instant ISO 8601 date and time, with offset: '2026-11-25T06:30:00+01:00'
 * @param spanMs milliseconds to add; parts of a millisecond are dropped
 * @returns ISO 8601 with the offset as given and milliseconds written
 * @throws RangeError when the instant is not of this form or the span is not finite
 */
export function addToInstant(instant: string, spanMs: number): string {
  if (!Number.isFinite(spanMs)) throw new RangeError(`spanMs is ${spanMs}; expected a finite number`);
  const { localMs, offset } = checked(instant);
  const sumMs = localMs + Math.floor(spanMs);
  const days = Math.floor(sumMs / DAY_MS);
  const restMs = sumMs - days * DAY_MS;
  const pad = (value: number, length = 2) => String(Math.floor(value)).padStart(length, '0');
  const clock = `${pad(restMs / 3_600_000)}:${pad((restMs / 60_000) % 60)}:${pad((restMs / 1000) % 60)}`;
  return `${dayOfNumber(days)}T${clock}.${pad(restMs % 1000, 3)}${offset}`;
}

/**
 * The local calendar day of an instant, at its own offset.
 * @param instant ISO 8601 date and time, with offset
 * @returns ISO 8601 day
 * @throws RangeError when the instant is not of this form
 */
export function dayOfInstant(instant: string): string {
  return checked(instant).day;
}

function checked(instant: string): ReadInstant {
  const read = readInstant(instant);
  if (read === undefined)
    throw new RangeError(`instant is '${instant}'; expected ISO 8601 such as 2026-11-25T06:30:00Z`);
  return read;
}
