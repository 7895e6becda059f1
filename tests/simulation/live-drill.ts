import { createSession, type DrillRecord, layOut, type Prescription, type Program } from '@larkhold/engine';
import { createTiredness } from './tiredness.ts';

/** How an invented archer does one drill. */
export interface Living {
  /** Longest single hold, seconds. */
  maxHoldSeconds: number;
  /** Gives numbers from 0 up to 1. */
  chance: () => number;
  /** How often a hold is let down early for another reason. */
  mishapShare: number;
}

/** A drill that failed costs so much; one with nothing left at its end nearly as much. Own assumption. */
const FAILED_EFFORT = 9;

/**
 * Does a drill as the app does: lays it out, walks the session by its own deadlines, lets down where the archer can't hold on, and takes
 * the record that the session leaves.
 * @param program the program that is drilled
 * @param prescription its numbers of the day
 * @param living how the archer does it
 * @param id of the record
 * @returns the record, with the effort it cost
 */
export function liveDrill(program: Program, prescription: Prescription, living: Living, id: string): DrillRecord {
  const { maxHoldSeconds, chance, mishapShare } = living;
  const session = createSession({
    ...{ timeline: layOut(prescription), program: program.title, programId: program.id, newId: () => id },
    ...{ startedAt: `${prescription.date}T06:30:00+00:00`, gapLimitMs: Number.POSITIVE_INFINITY },
  });
  const tired = createTiredness();
  let nowMs = 0;
  let hasFailed = false;
  let least = 1;
  session.send({ type: 'begin' }, nowMs);
  for (let dueMs = session.nextDeadlineMs(); dueMs !== undefined; dueMs = session.nextDeadlineMs()) {
    const { step } = session.view();
    if (step?.kind !== 'hold') {
      tired.rest((dueMs - nowMs) / 1000);
      nowMs = dueMs;
      session.advance(nowMs);
      continue;
    }
    const ableMs = Math.max(200, Math.round(tired.left() * maxHoldSeconds * 1000));
    const isMishap = chance() < mishapShare;
    const heldMs = Math.min(ableMs, isMishap ? Math.round(step.durationMs * (0.5 + chance() / 2)) : step.durationMs);
    hasFailed ||= ableMs < step.durationMs;
    tired.hold(heldMs / 1000 / maxHoldSeconds);
    least = Math.min(least, tired.left());
    nowMs += heldMs;
    if (heldMs < step.durationMs) session.send({ type: 'letDownNow' }, nowMs);
    else session.advance(nowMs);
  }
  const record = { ...session.record(), effort: hasFailed ? FAILED_EFFORT : Math.round(3 + 5 * (1 - least)) };
  return prescription.tool === undefined ? record : { ...record, tool: prescription.tool };
}
