import { dayNumber, dayOfNumber } from './calendar-day.ts';

const INSTANT =
  /^(?<year>\d{4})-(?<month>\d{2})-(?<day>\d{2})T(?<hour>\d{2}):(?<minute>\d{2})(?::(?<second>\d{2})(?:[.,](?<fraction>\d+))?)?(?<offset>Z|[+-]\d{2}:?\d{2})?$/;

const DAY_MS = 86_400_000;

/**
 * An instant so many milliseconds later, written with the same offset from UTC.
 * @param instant ISO 8601 date and time, with offset: '2026-11-25T06:30:00+01:00'
 * @param spanMs milliseconds to add; parts of a millisecond are dropped
 * @returns ISO 8601 with the offset as given and milliseconds written
 * @throws RangeError when the instant is not of this form or the span is not finite
 */
export function addToInstant(instant: string, spanMs: number): string {
  if (!Number.isFinite(spanMs)) throw new RangeError(`spanMs is ${spanMs}; expected a finite number`);
  const { localMs, offset } = readInstant(instant);
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
  readInstant(instant);
  return instant.slice(0, 10);
}

function readInstant(instant: string): { localMs: number; offset: string } {
  const parts = INSTANT.exec(instant)?.groups;
  if (parts === undefined)
    throw new RangeError(`instant is '${instant}'; expected ISO 8601 such as 2026-11-25T06:30:00Z`);
  const days = dayNumber(instant.slice(0, 10));
  const [hour, minute, second] = [Number(parts.hour), Number(parts.minute), Number(parts.second ?? 0)];
  const isReal = hour <= 24 && minute <= 59 && second <= 60;
  if (!isReal) throw new RangeError(`instant is '${instant}'; there is no such day or time`);
  const fractionMs = Number((parts.fraction ?? '').padEnd(3, '0').slice(0, 3));
  const localMs = days * DAY_MS + hour * 3_600_000 + minute * 60_000 + second * 1000 + fractionMs;
  return { localMs, offset: parts.offset ?? '' };
}
