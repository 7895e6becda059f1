import {
  compareInstants,
  type DrillRecord,
  dayNumber,
  estimateMaxHold,
  type MaxHoldEstimate,
  type OwnHold,
  ownHold,
  type Program,
} from '@larkhold/engine';
import { say } from '@larkhold/words';
import type { AppView } from './app-context.ts';

/** The built-in program that measures the longest hold. */
export const BASELINE_ID = '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1007';
/** After how many days the test is worth taking again, and after how many its result is old (ndarchery.co 2025: every 4 to 8 weeks). */
export const RETEST_DAYS = 28;
export const OLD_DAYS = 56;

/** What the last baseline test gave. */
export interface BaselineResult {
  record: DrillRecord;
  /** Whole seconds, 1 to 600, as the kit keeps them; absent where every rep was held: nobody knows how much longer it could have been. */
  seconds?: number;
}

const estimates = new WeakMap<AppView['journal'], { key: string; estimate: MaxHoldEstimate }>();

/**
 * The archer's longest hold: as the kit says, else as the journal tells it.
 * @param view the app as it is
 * @returns what is known, with the journal's own estimate beside it
 */
export function ownHoldOf(view: Pick<AppView, 'journal' | 'programs' | 'today' | 'kit'>): OwnHold {
  return ownHold(estimateOf(view), view.kit.maxHoldSeconds);
}

function estimateOf({ journal, programs, today, kit }: Parameters<typeof ownHoldOf>[0]): MaxHoldEstimate {
  const { drawWeightLbf: onFingersLbf } = kit;
  const key = `${today} ${onFingersLbf} ${programs.map(({ id, title }) => id ?? title).join(' ')}`;
  const kept = estimates.get(journal);
  if (kept?.key === key) return kept.estimate;
  const estimate = estimateMaxHold(journal.drills, programs, today, { onFingersLbf });
  estimates.set(journal, { key, estimate });
  return estimate;
}

/**
 * The last baseline test that says something: not removed, no pain, no rep left open.
 * @param records drills in any order
 * @param programs where the test itself is looked up
 * @returns its result; undefined when there is none
 */
export function lastBaseline(
  records: readonly DrillRecord[],
  programs: readonly Program[],
): BaselineResult | undefined {
  const tests = records
    .filter(({ programId, removed, open }) => programId === BASELINE_ID && !removed && !open)
    .sort((a, b) => (a.date === b.date ? compareInstants(b.startedAt, a.startedAt) : a.date < b.date ? 1 : -1));
  for (const record of tests) {
    const found = estimateMaxHold([record], programs, record.date);
    if (found.kind === 'estimate') {
      return { record, seconds: Math.min(600, Math.max(1, Math.round(found.seconds))) };
    }
    if (found.atLeastSeconds !== undefined) return { record };
  }
  return undefined;
}

/**
 * Whether the baseline test is due, in words.
 * @param last the last test, if there was one
 * @param today ISO 8601 day
 * @returns a sentence; undefined while the last result is young
 */
export function retestWords(last: BaselineResult | undefined, today: string): string | undefined {
  if (!last) return undefined;
  const days = dayNumber(today) - dayNumber(last.record.date);
  if (days < RETEST_DAYS) return undefined;
  const weeks = Math.floor(days / 7);
  return say(days > OLD_DAYS ? 'ownHold.old' : 'ownHold.worth', { weeks });
}
