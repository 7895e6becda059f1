import { dayNumber } from '../units/calendar-day.ts';

/**
 * Orders two instants.
 * @param a ISO 8601 with `Z` or an offset; a device's name after it does not count. @param b the same.
 * @returns below 0 if a is earlier, above 0 if later, 0 if they are the same instant. An absent or unreadable one is earlier than any.
 */
export function compareInstants(a: string | undefined, b: string | undefined): number {
  if (a === b) return 0;
  const [left, right] = [instantSeconds(a), instantSeconds(b)];
  return left === right ? 0 : left < right ? -1 : 1;
}

/**
 * Tells whether two JSON values are the same, whatever the order of their keys. A key that holds `undefined` is absent.
 * @param a one value. @param b another.
 * @returns true if they are the same.
 */
export function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
    return a.every((item, index) => isSame(item, b[index]));
  }
  const left = a as Record<string, unknown>;
  const right = b as Record<string, unknown>;
  for (const key in left) if (left[key] !== undefined && !isSame(left[key], right[key])) return false;
  for (const key in right) if (right[key] !== undefined && left[key] === undefined) return false;
  return true;
}

/**
 * Writes a JSON value with its keys in order, so that equal values give equal text.
 * @param value a JSON value.
 * @returns its text, on one line.
 */
export function canonicalText(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

const instantPattern =
  /^(\d{4}-\d\d-\d\d)T(\d\d):(\d\d)(?::(\d\d)(\.\d+)?)?(?:Z|([+-])(\d\d):?(\d\d))(?:~[a-z0-9]{1,16})?$/;

/**
 * Where an instant stands in time.
 * @param text ISO 8601 with `Z` or an offset.
 * @returns seconds from 1970-01-01 UTC, parts of a second included; negative infinity for an absent or unreadable one.
 */
export function instantSeconds(text: string | undefined): number {
  const match = text === undefined ? null : instantPattern.exec(text);
  if (match === null) return Number.NEGATIVE_INFINITY;
  const [, day = '', hour, minute, second = 0, fraction = 0, sign, offsetHours = 0, offsetMinutes = 0] = match;
  const offset = (Number(offsetHours) * 60 + Number(offsetMinutes)) * (sign === '-' ? -60 : 60);
  const clock = Number(hour) * 3600 + Number(minute) * 60 + Number(second);
  try {
    return dayNumber(day) * 86_400 + clock - offset + Number(fraction);
  } catch {
    return Number.NEGATIVE_INFINITY; // there is no such day
  }
}
