import { createCuePlayer } from '@larkhold/cues';
import { callHidden } from './hidden-timer.ts';
import { pressInstant } from './press-instant.ts';
import type { RunnerEnvironment } from './runner-environment.ts';
import { keepScreenOn } from './wake-lock.ts';

/** A hidden page draws no frames; a timer walks the drill on then. */
const HIDDEN_FRAME_MS = 200;

/**
 * The real clock, sound and screen.
 * @returns an environment for a drill in a browser
 */
export function browserEnvironment(): RunnerEnvironment {
  const frames = new Map<number, () => void>();
  let handles = 0;

  function cancelFrame(handle: number): void {
    frames.get(handle)?.();
    frames.delete(handle);
  }

  return {
    nowMs: () => performance.now(),
    wallMs: () => Date.now(),
    pressedAtMs: (stampMs) => pressInstant(stampMs, performance.now(), performance.timeOrigin),
    afterPresses: callAfterPresses,
    wallNow: () => formatLocalInstant(new Date()),
    newId: newIdentity,
    requestFrame(fn, afterMs = 0) {
      handles += 1;
      const handle = handles;
      const run = () => {
        cancelFrame(handle);
        fn();
      };
      frames.set(handle, afterMs > 0 ? callAfter(afterMs, run) : callBeforePicture(run));
      return handle;
    },
    cancelFrame,
    isSeen: () => document.visibilityState === 'visible',
    createCues: (settings) => createCuePlayer(settings),
    keepAwake: keepScreenOn,
  };
}

/** A hidden page's own timers are slowed, so there the Worker is asked, and often: nobody sees such a page hang. */
function callAfter(ms: number, fn: () => void): () => void {
  if (document.visibilityState === 'hidden') return callHidden(Math.min(ms, HIDDEN_FRAME_MS), fn);
  const timer = setTimeout(fn, ms);
  return () => clearTimeout(timer);
}

/** By the picture or by a timer, whichever comes first; the other is taken back. */
function callBeforePicture(fn: () => void): () => void {
  if (document.visibilityState === 'hidden') return callHidden(HIDDEN_FRAME_MS, fn);
  const frame = requestAnimationFrame(fn);
  const timer = setTimeout(fn, HIDDEN_FRAME_MS);
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}

/** Browsers run waiting presses before messages, and don't hold messages back in a hidden page as they do timers. */
function callAfterPresses(fn: () => void): void {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => {
    port1.close();
    fn();
  };
  port2.postMessage(undefined);
}

/** `randomUUID` is missing where the origin is not secure (a tablet that opens a laptop's address); `getRandomValues` is not. */
function newIdentity(): string {
  if (typeof crypto.randomUUID === 'function') return crypto.randomUUID();
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * An instant as the wall clock shows it.
 * @param date the instant
 * @returns ISO 8601 to the millisecond, with the local offset
 */
export function formatLocalInstant(date: Date): string {
  const offsetMinutes = -date.getTimezoneOffset();
  const two = (value: number) => String(Math.floor(Math.abs(value))).padStart(2, '0');
  const local = new Date(date.getTime() + offsetMinutes * 60_000).toISOString().slice(0, -1);
  const sign = offsetMinutes < 0 ? '-' : '+';
  return `${local}${sign}${two(offsetMinutes / 60)}:${two(Math.abs(offsetMinutes) % 60)}`;
}
