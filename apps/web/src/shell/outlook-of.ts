import {
  carefulLimit,
  heldBefore,
  type Prescription,
  predictSession,
  type SessionPrediction,
  type Timeline,
} from '@larkhold/engine';
import type { KnownOfDrill } from '@larkhold/words';
import type { AppView } from './app-context.ts';
import { ownHoldOf } from './own-hold.ts';

/** What is known of a drill before it is done. */
export interface Outlook extends KnownOfDrill {
  /** By the model; absent where no longest hold is known. */
  prediction?: SessionPrediction;
  /** The ends of what the longest hold may be, seconds; none where it was said. */
  ends: readonly number[];
}

/** An hour is more than anybody holds; the least hold that explains a drill is sought to a part of a second below it. */
const MOST_SECONDS = 3600;
const TURNS = 16;

/**
 * What a drill will do to the archer. Where they held as much before, and the longest hold that is known would not have been enough for it, the
 * model is asked with the least that is.
 * @param view the app as it is
 * @param prescription the drill
 * @param timeline of the drill
 * @returns what the model says, and what is known besides
 */
export function outlookOf(view: AppView, prescription: Prescription, timeline: Timeline): Outlook {
  const { programs, chosen, journal, kit } = view;
  const { programTitle } = prescription;
  const program = [chosen, ...programs].find(({ title }) => title === programTitle);
  const given = {
    records: journal.drills,
    ...(kit.drawWeightLbf === undefined ? {} : { onFingersLbf: kit.drawWeightLbf }),
  };
  const heldOn = program && heldBefore(prescription, { program, ...given })?.date;
  const own = ownHoldOf(view);
  if (own.kind === 'unknown') return { heldOn, ends: [] };
  const predict = (maxHoldSeconds: number) => predictSession(timeline, { maxHoldSeconds });
  const isTooShort = heldOn !== undefined && predict(own.seconds).failsAt !== undefined;
  const seconds = isTooShort ? leastSeconds((tried) => predict(tried).failsAt === undefined, own.seconds) : own.seconds;
  return {
    prediction: predict(seconds),
    ends:
      own.kind === 'estimated' ? [own.lowSeconds, own.highSeconds].filter((end) => !isTooShort || end > seconds) : [],
    limit: carefulLimit(timeline.steps, seconds),
    heldOn,
  };
}

function leastSeconds(isEnough: (seconds: number) => boolean, from: number): number {
  let [low, high] = [from, MOST_SECONDS];
  for (let turn = 0; turn < TURNS; turn++) {
    const middle = Math.sqrt(low * high);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
