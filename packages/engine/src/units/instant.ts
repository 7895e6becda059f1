import { dayNumber, dayOfNumber } from './calendar-day.ts';

const INSTANT =
  /^(?<day>\d{4}-\d{2}-\d{2})T(?<hour>\d{2}):(?<minute>\d{2})(?::(?<second>\d{2})(?:[.,](?<fraction>\d{1,9}))?)?(?<offset>Z|(?<sign>[+-])(?<offsetHour>\d{2}):?(?<offsetMinute>\d{2}))?$/;

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
 * @returns its parts; undefined where it is none, or where there is no such day, time or offset
 */
export function readInstant(text: string): ReadInstant | undefined {
  const parts = INSTANT.exec(text)?.groups;
  if (parts === undefined) return undefined;
  const { day = '', offset = '', sign } = parts;
  const [hour, minute, second] = [Number(parts.hour), Number(parts.minute), Number(parts.second ?? 0)];
  const [offsetHour, offsetMinute] = [Number(parts.offsetHour ?? 0), Number(parts.offsetMinute ?? 0)];
  const offsetMinutes = (offsetHour * 60 + offsetMinute) * (sign === '-' ? -1 : 1);
  const isReal = hour <= 23 && minute <= 59 && second <= 59 && offsetMinute <= 59;
  if (!isReal || Math.abs(offsetMinutes) > MOST_OFFSET_MINUTES || !isDay(day)) return undefined;
  const clockMs = hour * 3_600_000 + minute * 60_000 + second * 1000;
  const fractionMs = Number((parts.fraction ?? '').padEnd(3, '0').slice(0, 3));
  return { day, localMs: dayNumber(day) * DAY_MS + clockMs + fractionMs, offset, offsetMinutes };
}

/**
 * Where an instant is in time.
 * @param text ISO 8601 with `Z` or an offset
 * @returns milliseconds from 1970-01-01 UTC; negative infinity for an absent or unreadable one, and for one without an offset
 */
export function instantMs(text: string | undefined): number {
  const read = text === undefined ? undefined : readInstant(text);
  return read === undefined || read.offset === ''
    ? Number.NEGATIVE_INFINITY
    : read.localMs - read.offsetMinutes * 60_000;
}

/**
 * An instant so many milliseconds later, written with the same offset from UTC.
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

function isDay(day: string): boolean {
  try {
    dayNumber(day);
    return true;
  } catch {
    return false;
  }
}
