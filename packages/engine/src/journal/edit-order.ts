import { instantMs } from '../units/instant.ts';

/**
 * Orders two instants.
 * @param a ISO 8601 with `Z` or an offset; a device's name after it does not count. @param b the same.
 * @returns below 0 if a is earlier, above 0 if later, 0 if they are the same instant. An absent or unreadable one is earlier than any.
 */
export function compareInstants(a: string | undefined, b: string | undefined): number {
  if (a === b) return 0;
  const [left, right] = [stampMs(a), stampMs(b)];
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

/** Where a stamp ends and the name of the device that made it begins. */
export const DEVICE_MARK = '~';

/**
 * Where a stamp is in time.
 * @param stamp an instant, perhaps with `~` and a device's name, which does not count.
 * @returns milliseconds from 1970-01-01 UTC; negative infinity for an absent or unreadable one.
 */
export function stampMs(stamp: string | undefined): number {
  const end = stamp?.indexOf(DEVICE_MARK) ?? -1;
  return instantMs(end < 0 ? stamp : stamp?.slice(0, end));
}
