import { createSession, type DrillRecord, drillRecordSchema, layOut, sessionSnapshotSchema } from '@larkhold/engine';
import type { RunningDrill } from '@larkhold/store';

/**
 * The record of a drill that was cut off, closed: every rep that ended, and the one that ran as `unsure`.
 * @param running what was kept of the drill
 * @param stored its record as far as it was written, if a rep had ended
 * @returns the closed record; undefined where nothing had begun
 */
export function closeInterrupted(running: RunningDrill, stored: DrillRecord | undefined): DrillRecord | undefined {
  const lived = livedRecord(running);
  if (!lived || lived.reps.length < (stored?.reps.length ?? 0)) return stored && { ...stored, open: undefined };
  if (lived.reps.length === 0) return undefined;
  // Reps that were written stay as they are: the archer may have put one right.
  const reps = lived.reps.map((rep, index) => stored?.reps[index] ?? rep);
  return { ...lived, ...stored, reps, open: undefined, endedAt: lived.endedAt, durationMs: lived.durationMs };
}

/** What the session itself says when it is told that time was lost; undefined where its snapshot can't be read. */
function livedRecord({ snapshot, prescription, program, programId }: RunningDrill): DrillRecord | undefined {
  const read = sessionSnapshotSchema.safeParse(snapshot);
  if (!read.success) return undefined;
  try {
    const session = createSession({
      timeline: layOut(prescription),
      program,
      programId,
      startedAt: read.data.startedAt,
      newId: () => read.data.id,
      resumeFrom: read.data,
    });
    const nowMs = read.data.ledger.seenMs ?? 0;
    session.send({ type: 'gap' }, nowMs);
    session.send({ type: 'stop' }, nowMs);
    // A snapshot that was damaged may tell of a drill that no journal takes.
    const record = drillRecordSchema.safeParse(session.record());
    return record.success ? record.data : undefined;
  } catch {
    return undefined; // a prescription of another version: what was written is all there is
  }
}
