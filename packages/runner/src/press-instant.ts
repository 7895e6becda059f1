import { GAP_LIMIT_MS } from '@larkhold/engine';

/**
 * When a press happened, by the stamp that the browser gave it.
 * @param stampMs `Event.timeStamp` or `Gamepad.timestamp`; undefined where there is none
 * @param nowMs the page clock now (`performance.now`), milliseconds
 * @param originMs the page clock's zero (`performance.timeOrigin`), milliseconds since 1970
 * @returns milliseconds on the page clock: never in the future, and now where the stamp is of another clock. A press that waited for longer
 *   than the gap limit is of no use to a session, so an older stamp counts as one of another clock.
 * @source High Resolution Time and DOM: stamps count from the time origin; older engines counted from 1970 or from when the device started
 */
export function pressInstant(stampMs: number | undefined, nowMs: number, originMs: number): number {
  if (stampMs === undefined || !(stampMs > 0)) return nowMs;
  const sinceOrigin = [stampMs, stampMs - originMs].find((ms) => ms <= nowMs && nowMs - ms <= GAP_LIMIT_MS);
  return sinceOrigin ?? nowMs;
}
