import type { DrillRecord } from '../journal/drill-record.ts';
import { isTestProgram, type Program } from '../program/program.ts';
import { dayNumber, dayNumberOf } from '../units/calendar-day.ts';
import { type Archer, checkArcher } from './archer.ts';
import { capacityOf, isRecent, OWN_NOISE_SHARE } from './capacity.ts';
import { type CapacityState, stepCapacity } from './capacity-state.ts';
import { logDays } from './logged-days.ts';

/** The archer's longest hold with their own bow as the journal shows it, or that it is unknown. */
export type MaxHoldEstimate = {
  /** Pounds-force on the fingers that it is for; absent where no weight is known. */
  atLbf?: number;
  /** Ids of the drills that were read. */
  evidence: readonly string[];
  /** The same in English. */
  words: string;
} & (
  | {
      kind: 'estimate';
      /** Longest single hold with good form, seconds. */
      seconds: number;
      /** What was held, or one person's noise below the estimate, whichever is more. Seconds. */
      lowSeconds: number;
      /** More than this would be news. Seconds. */
      highSeconds: number;
      from: 'test' | 'failures';
    }
  | {
      kind: 'too little data';
      /** The least that the archer can hold; absent when nothing is known. Seconds. */
      atLeastSeconds?: number;
    }
);

/**
 * The longest single hold with the archer's own bow, as far as the journal tells it. It is what `knowArcher` knows as capacity, of the bow alone and
 * without the archer's own word: tests first, else holds that strength gave up; full holds and let-downs for form are least values; an
 * interruption, and a let-down that nobody explained, say nothing. Every hold counts at the weight of its day.
 * @param records drills in any order; removed and painful ones, and those of other tools, say nothing
 * @param programs tests among them: a record of one that is not marked as a test counts as one
 * @param today ISO 8601 day; only the 56 days up to it count
 * @param archer the weight on the fingers that is asked about, pounds-force; absent: the last that is known
 * @returns an estimate with a range, or that there is too little data, with words to show
 * @throws RangeError when there is no such day or no such weight
 * @source own, on capacity's sources: noise, J Exerc Sci Fitness 2012; weight, Frey Law & Avin 2010, Ergonomics 53:109
 * @example estimateMaxHold([], builtInPrograms, '2026-11-25').kind // 'too little data'
 */
export function estimateMaxHold(
  records: readonly DrillRecord[],
  programs: readonly Program[],
  today: string,
  archer: Pick<Archer, 'onFingersLbf'> = {},
): MaxHoldEstimate {
  const last = dayNumber(today);
  const { onFingersLbf } = checkArcher(archer);
  const tests = new Set(programs.filter(isTestProgram).map(({ id }) => id));
  const recent = records.filter(({ date }) => {
    const day = dayNumberOf(date);
    return day !== undefined && isRecent(day, last);
  });
  const state = logDays(recent.map((record) => marked(record, tests))).days.reduce<CapacityState>(stepCapacity, []);
  const own = onFingersLbf === undefined ? {} : { onFingersLbf };
  const { likelySeconds, likelyFrom, atMostSeconds, atLeastSeconds, atLbf, evidence } = capacityOf(
    state,
    'bow',
    last,
    own,
  );
  const known = { evidence, ...(atLbf === undefined ? {} : { atLbf }) };
  if (
    likelySeconds === undefined ||
    atMostSeconds === undefined ||
    likelyFrom === undefined ||
    likelyFrom === 'answer'
  ) {
    const words =
      'Too little data: no test, and no hold that strength gave up, in the last 8 weeks. Take the baseline test.';
    return { kind: 'too little data', ...known, words, ...(atLeastSeconds === undefined ? {} : { atLeastSeconds }) };
  }
  const lowSeconds = Math.max(atLeastSeconds ?? 0, likelySeconds * (1 - OWN_NOISE_SHARE));
  const words = `About ${Math.round(likelySeconds)} s, somewhere from ${Math.floor(lowSeconds)} to ${Math.ceil(atMostSeconds)} s.`;
  return {
    kind: 'estimate',
    ...known,
    words,
    seconds: likelySeconds,
    lowSeconds,
    highSeconds: atMostSeconds,
    from: likelyFrom,
  };
}

/** Records from before tests were marked are known by their program's id. */
function marked(record: DrillRecord, tests: ReadonlySet<string | undefined>): DrillRecord {
  const isTest = record.kind === undefined && record.programId !== undefined && tests.has(record.programId);
  return isTest ? { ...record, kind: 'test' } : record;
}
