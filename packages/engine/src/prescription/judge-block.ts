import type { DrillRecord } from '../journal/drill-record.ts';
import type { Ladder } from '../program/program.ts';
import type { LeverValues } from './ladder-path.ts';

/** What one session says of one block: `neutral` neither helps a climb nor breaks a row of clean sessions. */
export type Verdict = 'absent' | 'clean' | 'missed' | 'broken' | 'neutral';

/**
 * Judges one block of one session.
 *
 * Clean: every rep in full, the whole dose of the place on the ladder, effort within the limit and no pain. Missed: at least `missedShare` of
 * the reps short or skipped. Broken: fewer short or skipped, or pain, or more effort than the limit; pain breaks the row of every block of its
 * program, begun or not. Neutral: reps nobody can vouch for, a dose cut for time or a deload, a drill stopped early without a miss.
 * @param record the session
 * @param block the block's index in the program
 * @param place where on the ladder the session stood
 * @param ladder the block's ladder
 * @returns the verdict
 */
export function judgeBlock(record: DrillRecord, block: number, place: LeverValues, ladder: Ladder): Verdict {
  let done = 0;
  let missed = 0;
  let doubtful = 0;
  let lastBlock = 0;
  const placeMs = Math.round(place.hold * 1000);
  for (const rep of record.reps) {
    const of = rep.block; // each key is read once: over ten years of reps that is what takes the time
    if (of > lastBlock) lastBlock = of;
    if (of !== block) continue;
    done++;
    const outcome = rep.outcome;
    if (outcome === 'short' || outcome === 'skipped') missed++;
    else if (outcome === 'unsure' || rep.prescribedMs < placeMs) doubtful++;
  }
  if (done === 0) return record.pain ? 'broken' : 'absent';
  const notBegun = block === lastBlock ? Math.max(0, (record.prescribedReps ?? 0) - record.reps.length) : 0;
  if (missed > 0 && missed / (done + notBegun) >= ladder.stepDownAfter.missedShare) return 'missed';
  if (missed > 0 || record.pain || (record.effort ?? 0) > ladder.climbAfter.effortAtMost) return 'broken';
  return doubtful === 0 && notBegun === 0 && done >= place.reps * place.sets ? 'clean' : 'neutral';
}
