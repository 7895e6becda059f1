import type { DrillRecord, Outcome } from '@larkhold/engine';

/** What the archer knows of a rep. */
export interface KnownRep {
  outcome: Outcome;
  prescribedMs: number;
  heldMs: number;
}

/**
 * Puts a rep right, as the journal's page does it.
 * @param rep the rep, changed in place
 * @param outcome how it really ended
 * @source own: the sentence beside `correctOutcome` in the engine, written down a second time
 */
export function correctKnown(rep: KnownRep, outcome: Outcome): void {
  if (rep.outcome === outcome) return;
  rep.outcome = outcome;
  if (outcome === 'held') rep.heldMs = rep.prescribedMs;
  if (outcome === 'skipped') rep.heldMs = 0;
  if (outcome === 'short') rep.heldMs = Math.min(rep.heldMs, rep.prescribedMs - 100);
}

/**
 * Compares the journal with what was done.
 * @param known the reps of each drill, the oldest drill first
 * @param stored the records on the disk, the oldest first, without removed ones
 * @returns a sentence for each difference
 */
export function differences(known: readonly (readonly KnownRep[])[], stored: readonly DrillRecord[]): string[] {
  const found: string[] = [];
  if (known.length !== stored.length) {
    found.push(`${known.length} drills were done, ${stored.length} are in the journal`);
  }
  for (const [index, reps] of known.entries()) {
    const record = stored[index];
    if (record?.open) found.push(`drill ${index} is still open`);
    if (record?.reps.length !== reps.length) {
      found.push(`drill ${index}: ${reps.length} reps were done, ${record?.reps.length} are kept`);
    }
    for (const [place, rep] of reps.entries()) {
      const kept = record?.reps[place];
      const isSame =
        kept?.outcome === rep.outcome && kept.prescribedMs === rep.prescribedMs && kept.heldMs === rep.heldMs;
      if (!isSame) found.push(`drill ${index} rep ${place}: ${JSON.stringify(rep)}, kept ${JSON.stringify(kept)}`);
    }
  }
  return found;
}

/** How many reps there are in all. */
export function countReps(drills: readonly (readonly KnownRep[])[]): number {
  return drills.reduce((sum, reps) => sum + reps.length, 0);
}
