import {
  createSession,
  type DrillRecord,
  layOut,
  type Prescription,
  type Program,
  predictSession,
} from '@larkhold/engine';

/** How an invented archer does one drill. */
export interface Living {
  /** Longest single hold, seconds. By the fatigue model, it decides where a hold fails. */
  maxHoldSeconds: number;
  /** Gives numbers from 0 up to 1. */
  chance: () => number;
  /** How often a hold is let down early for another reason. */
  mishapShare: number;
}

/** What a tired hold still reaches, as a share. Own assumption. */
const TIRED_SHARE = 0.8;

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
  const timeline = layOut(prescription);
  const { reps, failsAt } = predictSession(timeline, { maxHoldSeconds });
  const session = createSession({
    ...{ timeline, program: program.title, programId: program.id, newId: () => id },
    ...{ startedAt: `${prescription.date}T06:30:00+00:00`, gapLimitMs: Number.POSITIVE_INFINITY },
  });
  let nowMs = 0;
  let hasFailed = false;
  session.send({ type: 'begin' }, nowMs);
  for (let dueMs = session.nextDeadlineMs(); dueMs !== undefined; dueMs = session.nextDeadlineMs()) {
    const { step } = session.view();
    if (step?.kind === 'hold') {
      const { block, set, rep, durationMs } = step;
      const failsHere = failsAt?.block === block && failsAt.set === set && failsAt.rep === rep;
      const heldMs = failsHere
        ? failsAt.secondsIn * 1000
        : hasFailed
          ? durationMs * TIRED_SHARE
          : chance() < mishapShare
            ? durationMs * (0.5 + chance() / 2)
            : durationMs;
      hasFailed ||= failsHere;
      if (heldMs < durationMs) {
        nowMs += Math.round(heldMs);
        session.send({ type: 'letDownNow' }, nowMs);
        continue;
      }
    }
    nowMs = dueMs;
    session.advance(nowMs);
  }
  const least = Math.min(...reps.map(({ reserve }) => reserve));
  return { ...session.record(), effort: hasFailed ? 9 : Math.round(3 + 5 * (1 - least)) };
}
