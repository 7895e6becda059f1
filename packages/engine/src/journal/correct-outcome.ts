import type { DrillRecord, Outcome } from './drill-record.ts';
import { trueHeldMs, trueOutcome } from './true-held-ms.ts';

/**
 * Corrects how one rep ended, in one press.
 * @param record the record as it is.
 * @param index the rep's place in `record.reps`, 0-based.
 * @param outcome how it really ended.
 * @param editedAt the instant of the correction, ISO 8601 UTC.
 * @returns a new record. Time at full draw: all of it for `held`; none for `skipped`; for `short` and `unsure` what was logged, but for a
 * `short` less than what was prescribed, by a tenth of a second at least, since a full hold isn't short. What a camera saw of it is dropped.
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
  // A person's word counts for more than what a camera saw.
  const { seen: _, why, ...said } = rep;
  const corrected = { ...said, outcome, heldMs, ...(why !== undefined && outcome === 'short' ? { why } : {}) };
  return { ...record, reps: record.reps.with(index, corrected), editedAt };
}

/**
 * Settles one rep on which clock and camera are apart, in one press.
 * @param record the record as it is.
 * @param index the rep's place in `record.reps`, 0-based.
 * @param kept `clock`: what was seen is dropped, the camera was wrong; `seen`: what was seen becomes the rep's own time, and the rep is short if
 * it was let down before the end, and unsure if it began late.
 * @param editedAt the instant of the correction, ISO 8601 UTC.
 * @returns a new record.
 * @throws RangeError if there is no such rep.
 */
export function settleSeen(record: DrillRecord, index: number, kept: 'clock' | 'seen', editedAt: string): DrillRecord {
  const rep = record.reps[index];
  if (rep === undefined) {
    throw new RangeError(`index: expected 0 to ${record.reps.length - 1}, got ${index}`);
  }
  const { seen: _, ...byClock } = rep;
  if (kept === 'clock' || rep.seen === undefined)
    return { ...record, reps: record.reps.with(index, byClock), editedAt };
  const heldMs = trueHeldMs(rep);
  const isFull = heldMs >= rep.prescribedMs && rep.outcome === 'short';
  const isShort = rep.outcome === 'short' || trueOutcome(rep) === 'short';
  const { why, ...seen } = rep;
  // Of a hold that began late nobody can say that it was held in full: the rep says what the rules make of it.
  if (isFull || !isShort) {
    const outcome = isFull ? 'held' : trueOutcome(rep);
    return { ...record, reps: record.reps.with(index, { ...seen, heldMs, outcome }), editedAt };
  }
  const short = { ...seen, heldMs, outcome: 'short' as const, ...(why === undefined ? {} : { why }) };
  return { ...record, reps: record.reps.with(index, short), editedAt };
}
