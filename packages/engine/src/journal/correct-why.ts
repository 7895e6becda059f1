import type { DrillRecord } from './drill-record.ts';
import type { Why } from './rep-record.ts';

/**
 * Says afterwards why a hold was let down early, or takes it back.
 * @param record the record as it is.
 * @param index the rep's place in `record.reps`, 0-based.
 * @param why the reason; undefined where nobody knows any more.
 * @param editedAt the instant of the correction, ISO 8601 UTC.
 * @returns a new record.
 * @throws RangeError if there is no such rep, or it was not let down early.
 * @example correctWhy(record, 3, 'form', '2026-11-25T06:50:00Z')
 */
export function correctWhy(record: DrillRecord, index: number, why: Why | undefined, editedAt: string): DrillRecord {
  const rep = record.reps[index];
  if (rep?.outcome !== 'short') {
    const found = rep === undefined ? `${index} of ${record.reps.length}` : `${index}, which is ${rep.outcome}`;
    throw new RangeError(`index is ${found}; expected a rep that was let down early`);
  }
  const { why: _before, ...rest } = rep;
  return { ...record, reps: record.reps.with(index, why === undefined ? rest : { ...rest, why }), editedAt };
}
