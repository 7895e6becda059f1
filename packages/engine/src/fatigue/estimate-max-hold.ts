import type { DrillRecord } from '../journal/drill-record.ts';
import type { Program } from '../program/program.ts';
import { dayNumber, dayNumberOf } from '../units/calendar-day.ts';
import { leastFraction, longestHoldSeconds } from './hold-fraction.ts';
import { failsBeforeEnd, type PastDrill, retrace } from './past-drill.ts';
import { MOST_HOLD_SECONDS } from './predict-session.ts';

/** Only drills of this many days back count: an archer changes. The baseline test is to be taken again every 4 to 8 weeks. */
export const CALIBRATION_DAYS = 56;
/** Fewer drills with an early let-down than this say nothing. */
export const LEAST_LET_DOWNS = 3;
/**
 * No range is narrower than this either way: one person's own noise is up to 28 % (J Exerc Sci Fitness 2012, n = 21, smallest real difference of
 * shoulder strength), and the model adds to it. That it is also the narrowest interval between people (Frey Law & Avin 2010) is chance.
 */
const LEAST_SPREAD = 0.29;

/** The archer's longest hold as the journal tells it, or why it can't be told. */
export type MaxHoldEstimate =
  | {
      kind: 'estimate';
      /** Longest single hold with good form, seconds. */
      seconds: number;
      /** The range it lies in, as far as can be told: at least 29 % either way. Seconds. */
      lowSeconds: number;
      highSeconds: number;
      /** Drills that ended a hold early, and drills that held everything. */
      letDownDrillsCount: number;
      heldDrillsCount: number;
      words: string;
    }
  | {
      kind: 'too little data';
      /** How long the archer held at least; absent when nothing is known. Seconds. */
      atLeastSeconds?: number;
      letDownDrillsCount: number;
      heldDrillsCount: number;
      words: string;
    };

/**
 * Works back from what was logged to the longest single hold that would explain it by the fatigue model.
 *
 * A drill with an early let-down gives one value: the longest hold of an archer who, by the model, could go no further at that moment. A
 * drill that held everything gives a least value, which counts only where it is above the middle of the others. The estimate is the middle
 * (median) of these. A let-down for form gives a least value too, and an interruption none. One that nobody explained counts as tiredness; where it
 * was none it makes the estimate too low, which is why one drill alone moves it little.
 * @param records drills in any order; those with another tool than a bow, removed ones, painful ones, and those with a rep that nobody can vouch for are left out
 * @param programs for the times of draws and rests, which records don't hold; drills of programs that are not among them are left out
 * @param today ISO 8601 day; only the 56 days up to it count
 * @returns an estimate with a range, or that there is too little data, with words to show
 * @throws RangeError when there is no such day
 * @source own, by the model of Xia & Frey-Law 2008, J Biomech 41:3046; range: see LEAST_SPREAD. Not calibrated on archers.
 */
export function estimateMaxHold(
  records: readonly DrillRecord[],
  programs: readonly Program[],
  today: string,
): MaxHoldEstimate {
  const last = dayNumber(today);
  const drills = records
    .filter(({ removed, pain, tool = 'bow' }) => !removed && !pain && tool === 'bow')
    .filter(({ date }) => isWithin(dayNumberOf(date), last))
    .map((record) => retrace(record, programs))
    .filter((drill) => drill !== undefined);
  const explained = explainer();
  const letDown = drills.filter((drill) => drill.endsEarly).map(explained);
  const held = drills.filter((drill) => !drill.endsEarly).map(explained);
  const counts = { letDownDrillsCount: letDown.length, heldDrillsCount: held.length };

  if (letDown.length < LEAST_LET_DOWNS) {
    const known = [...letDown, ...held];
    const words = `Too little data: ${letDown.length} of the last 8 weeks' drills ended a hold early, ${LEAST_LET_DOWNS} are needed. Take the baseline test.`;
    return {
      kind: 'too little data',
      ...counts,
      words,
      ...(known.length > 0 && { atLeastSeconds: Math.max(...known) }),
    };
  }
  const firstMiddle = median(letDown);
  const values = [...letDown, ...held.filter((seconds) => seconds > firstMiddle)].sort((a, b) => a - b);
  const seconds = median(values);
  // Nine tenths of the values lie within; of a few values, all.
  const outside = Math.floor(values.length * 0.05);
  const lowSeconds = Math.min(values[outside] ?? seconds, seconds * (1 - LEAST_SPREAD));
  const highSeconds = Math.max(values[values.length - 1 - outside] ?? seconds, seconds * (1 + LEAST_SPREAD));
  const words = `About ${Math.round(seconds)} s, somewhere from ${Math.floor(lowSeconds)} to ${Math.ceil(highSeconds)} s, from ${values.length} drills. A model, not a measurement: the baseline test knows better.`;
  return { kind: 'estimate', seconds, lowSeconds, highSeconds, ...counts, words };
}

function isWithin(day: number | undefined, last: number): boolean {
  return day !== undefined && day <= last && day > last - CALIBRATION_DAYS;
}

/** The same drill done again has the same answer, which takes some thousand steps to find. */
function explainer(): (drill: PastDrill) => number {
  const known = new Map<string, number>();
  return (drill) => {
    const key = JSON.stringify([drill.drawSeconds, ...drill.stretches.map(({ share, seconds }) => [share, seconds])]);
    const hold = known.get(key) ?? explainingHold(drill);
    known.set(key, hold);
    return hold;
  };
}

/** The longest single hold of the archer who only just could do this drill. */
function explainingHold(drill: PastDrill): number {
  const fraction = leastFraction((tried) => failsBeforeEnd(drill, tried), 1e-6);
  return longestHoldSeconds(fraction, drill.drawSeconds, MOST_HOLD_SECONDS);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
  return (lower + upper) / 2;
}
