import { dayOfNumber } from '../units/calendar-day.ts';
import { compareInstants, DEVICE_MARK, stampMs } from './edit-order.ts';

const DAY_MS = 86_400_000;
/** 9999-12-31T23:59:59.999Z, the last instant whose year has four digits; milliseconds from 1970. */
const LAST_MS = 253_402_300_799_999;

/**
 * Orders two stamps: by their instants, then by their text, in which the device's name comes last.
 * @param a ISO 8601, perhaps with `~` and a device's name. @param b the same.
 * @returns below 0 if a comes first, above 0 if b does, 0 if they are one text. An absent or unreadable one comes before any other.
 * @source own; the total order of Lamport 1978, Time, clocks, and the ordering of events in a distributed system, Communications of the ACM 21(7).
 */
export function compareStamps(a: string | undefined, b: string | undefined): number {
  return compareInstants(a, b) || compareText(a ?? '', b ?? '');
}

/**
 * The later of two stamps.
 * @param a one stamp. @param b another.
 * @returns the one that `compareStamps` puts last.
 */
export function laterStamp(a: string | undefined, b: string | undefined): string | undefined {
  const order = compareStamps(a, b);
  return order === 0 ? (a ?? b) : order > 0 ? a : b;
}

/**
 * Makes the stamp of an edit: the wall clock's instant, but always after what is edited, so that a clock that was set back undoes nothing.
 * @param instant the wall clock, ISO 8601 UTC.
 * @param before the latest stamp of what is edited; undefined where there is none.
 * @param device the device's name, which orders edits of one instant; left out where a device has none.
 * @returns the stamp: the instant, or a millisecond after `before` where the clock is not later than that.
 * @source own; a hybrid clock as in Kulkarni et al. 2014, Logical physical clocks, OPODIS, with the counter in the milliseconds.
 */
export function stampAfter(instant: string, before: string | undefined, device?: string): string {
  const beforeMs = stampMs(before);
  const isLater = !Number.isFinite(beforeMs) || compareInstants(instant, before) > 0;
  const text = isLater ? instant : isoOf(Math.min(beforeMs + 1, LAST_MS));
  return device === undefined ? text : `${withoutDevice(text)}${DEVICE_MARK}${device}`;
}

/**
 * The instant of a stamp, without the device's name.
 * @param stamp a stamp.
 * @returns its instant, ISO 8601, as it was written.
 */
export function withoutDevice(stamp: string): string {
  const end = stamp.indexOf(DEVICE_MARK);
  return end < 0 ? stamp : stamp.slice(0, end);
}

/**
 * Orders two texts by their code units, as every device does alike.
 * @param a one text. @param b another.
 * @returns -1, 0 or 1.
 */
export function compareText(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}

function isoOf(ms: number): string {
  const day = Math.floor(ms / DAY_MS);
  const ofDay = ms - day * DAY_MS;
  const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');
  const clock = [ofDay / 3_600_000, (ofDay / 60_000) % 60, (ofDay / 1000) % 60].map(two).join(':');
  return `${dayOfNumber(day)}T${clock}.${String(ofDay % 1000).padStart(3, '0')}Z`;
}
