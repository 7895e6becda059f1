import { type Archer, foldAhead, type Journal, type Program } from '@larkhold/engine';
import { nextTask } from '@larkhold/store';

/** How many drills are folded without a pause that anybody could notice. */
const LONG_JOURNAL = 500;
/** How long the page waits for its turn, milliseconds: with the processor slowed four times it is still less than a tenth of a second. */
const TURN_MS = 12;

/**
 * Whether a journal is so long that the page must get turns while it is read.
 * @param journal any
 * @returns true from some hundred drills on
 */
export function isLong({ drills }: Journal): boolean {
  return drills.length > LONG_JOURNAL;
}

/**
 * Folds a long journal while the page gets turns in between, so that what is asked of it afterwards is there at once. No answer depends on it.
 * @param journal what is shown
 * @param archer their age
 * @param program whose state is wanted; where left out, what is known of the archer
 */
export async function foldInTurns(journal: Journal, archer: Archer, program?: Program): Promise<void> {
  if (!isLong(journal)) return;
  const { drills: records, days } = journal;
  const { ageYears } = archer;
  let sinceMs = performance.now();
  try {
    for (const _ of foldAhead({ records, days, program, ageYears })) {
      if (performance.now() - sinceMs < TURN_MS) continue;
      await nextTask();
      sinceMs = performance.now();
    }
  } catch {
    // What cannot be folded fails again when it is drawn, and is looked for there.
  }
}
