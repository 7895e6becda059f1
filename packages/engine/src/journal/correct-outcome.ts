import type { DrillRecord, Outcome } from './drill-record.ts';

/**
 * Corrects how one rep ended, in one press.
 * @param record the record as it stands.
 * @param index the rep's place in `record.reps`, 0-based.
 * @param outcome how it really ended.
 * @param editedAt the instant of the correction, ISO 8601 UTC.
 * @returns a new record. Time at full draw: all of it for `held`; none for `skipped`; for `short` and `unsure` what was logged, but for a
 * `short` less than what was prescribed, by a tenth of a second at least, since a full hold isn't short.
 * @throws RangeError if there is no such rep.
 */
export function correctOutcome(record: DrillRecord, index: number, outcome: Outcome, editedAt: string): DrillRecord {
  const rep = record.reps[index];
  if (rep === undefined) {
    throw new RangeError(`index: expected 0 to ${record.reps.length - 1}, got ${index}`);
  }
  const heldMs = {
    held: rep.prescribedMs,
    skipped: 0,
    short: Math.min(rep.heldMs, Math.max(0, rep.prescribedMs - 100)),
    unsure: rep.heldMs,
  }[outcome];
  return { ...record, reps: record.reps.with(index, { ...rep, outcome, heldMs }), editedAt };
}
