import { foldPast, type Journal, type Program, pastEnd, pastPrograms, type SeasonToday } from '@larkhold/engine';
import { archerOf, type Kit, nextTask, type Store } from '@larkhold/store';
import { foldInTurns, isLong } from './fold-in-turns.ts';

/** A browser that is never idle is not waited for, milliseconds. */
const PATIENCE_MS = 2000;

/** What a past is folded from. */
export interface Foldable {
  /** The very journal that the store gave, and as it is shown. */
  stored: Journal;
  visible: Journal;
  programs: readonly Program[];
  chosen: Program;
  season: SeasonToday;
  kit: Kit;
  today: string;
  /** The first day that is not in the past that this start went on from, ISO 8601; undefined where it had none. */
  before?: string;
}

/**
 * Folds all but the last weeks of a long journal while the page is idle, and keeps that for the next start.
 * @param store where it is kept
 * @returns what keeps one, and does nothing for a short journal; whether it is kept. Never rejects: without it the next start reads everything
 */
export function createPastKeeper(store: Pick<Store, 'keepPast'>): (from: Foldable) => Promise<boolean> {
  let before: string | undefined;
  let latest: Foldable | undefined;
  let running: Promise<boolean> | undefined;

  async function keepLatest(): Promise<boolean> {
    let isKept = false;
    while (latest) {
      const from = latest;
      latest = undefined;
      isKept = await keep(from);
    }
    return isKept;
  }

  async function keep(from: Foldable): Promise<boolean> {
    const { stored, visible, kit, today } = from;
    const { drills: records, days } = visible;
    before = pastEnd(records, today, before ?? from.before);
    const archer = archerOf(kit);
    const programs = pastPrograms({ ...from, drills: records });
    for (const program of programs) {
      await whenIdle();
      await foldInTurns(visible, archer, program);
    }
    await whenIdle();
    const past = foldPast({ records, days, before, programs, ageYears: archer.ageYears });
    await nextTask();
    return past !== undefined && (await store.keepPast(past, stored));
  }

  return async (from) => {
    if (!isLong(from.visible)) return false;
    latest = from; // what is asked for while one is folded comes next
    running ??= keepLatest().finally(() => {
      running = undefined;
    });
    return running;
  };
}

/**
 * Waits until the page has nothing else to do.
 * @returns when it is idle, or when it has not been for two seconds
 */
export function whenIdle(): Promise<void> {
  return new Promise((resolve) => {
    if (typeof requestIdleCallback === 'undefined') setTimeout(resolve);
    else requestIdleCallback(() => resolve(), { timeout: PATIENCE_MS });
  });
}
