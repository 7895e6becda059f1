import { carefulLimit } from '../archer/careful-reserve.ts';
import { MOST_HOLD_SECONDS, predictSession, type SessionPrediction } from '../fatigue/predict-session.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { Prescription } from '../prescription/prescription.ts';
import type { Program } from '../program/program.ts';
import type { Timeline } from '../timeline/timeline.ts';
import { heldBefore } from './held-before.ts';

/** What is known of a drill before it is done. */
export interface DrillOutlook {
  /** By the model; absent where no longest hold is known. */
  prediction?: SessionPrediction;
  /** The ends of what the longest hold may be, seconds; none where it was said. */
  ends: readonly number[];
  /** Where the careful reading sees the limit; see `carefulLimit`. */
  limit?: ReturnType<typeof carefulLimit>;
  /** The day on which as much was held, ISO 8601; see `heldBefore`. */
  heldOn?: string | undefined;
}

/** What an outlook is made from. */
export interface DrillOutlookInput {
  prescription: Prescription;
  /** As `layOut` makes it of the prescription. */
  timeline: Timeline;
  /** That the prescription is of; where it is not known, nobody can say what was held before. */
  program?: Program | undefined;
  records: readonly DrillRecord[];
  /** The weight on the fingers without what is added, pounds-force. */
  onFingersLbf?: number | undefined;
  /** The longest hold, seconds, and the ends of what it may be; absent where it is not known. */
  longest?: { seconds: number; ends: readonly number[] } | undefined;
}

const TURNS = 16;

/**
 * What a drill will do to the archer. Where they held as much before, and the longest hold that is known would not have been enough for it, the
 * model is asked with the least that is.
 * @param input the drill, what was done, and the longest hold
 * @returns what the model says, and what is known besides
 * @throws RangeError when the prescription's date is no day, or the longest hold cannot be
 */
export function drillOutlook(input: DrillOutlookInput): DrillOutlook {
  const { prescription, timeline, program, longest } = input;
  const heldOn = program && heldBefore(prescription, { ...input, program })?.date;
  if (!longest) return { heldOn, ends: [] };
  const predict = (maxHoldSeconds: number) => predictSession(timeline, { maxHoldSeconds });
  const known = predict(longest.seconds);
  const isTooShort = heldOn !== undefined && known.failsAt !== undefined;
  const seconds = isTooShort ? leastSeconds((tried) => !predict(tried).failsAt, longest.seconds) : longest.seconds;
  return {
    prediction: isTooShort ? predict(seconds) : known,
    ends: isTooShort ? longest.ends.filter((end) => end > seconds) : longest.ends,
    limit: carefulLimit(timeline.steps, seconds),
    heldOn,
  };
}

/** The least that is enough, to a part of a second above it. */
function leastSeconds(isEnough: (seconds: number) => boolean, from: number): number {
  let [low, high] = [from, MOST_HOLD_SECONDS];
  for (let turn = 0; turn < TURNS; turn++) {
    const middle = Math.sqrt(low * high);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
