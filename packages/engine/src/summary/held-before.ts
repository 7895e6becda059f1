import { isRecent } from '../archer/capacity.ts';
import type { DrillRecord, RepRecord } from '../journal/drill-record.ts';
import { isOfProgram } from '../journal/is-of-program.ts';
import { trueHeldMs, trueOutcome } from '../journal/true-held-ms.ts';
import type { PrescribedBlock, Prescription } from '../prescription/prescription.ts';
import type { Program } from '../program/program.ts';
import { dayNumber, dayNumberOf } from '../units/calendar-day.ts';

/**
 * The last drill of a program in which everything that is prescribed today was held in full, or more: what was done needs no model. Rests are the
 * program's own, so that only drills of the same program are compared.
 * @param prescription today's numbers
 * @param given `program` that they are of; `records` in any order; `onFingersLbf`, today's weight without what is added, pounds-force: drills with
 * less, or of which it is not known, are left out
 * @returns the record, of the last 56 days; undefined where there is none
 * @throws RangeError when the prescription's date is no day
 */
export function heldBefore(
  prescription: Pick<Prescription, 'blocks' | 'date' | 'tool'>,
  given: { program: Program; records: readonly DrillRecord[]; onFingersLbf?: number },
): DrillRecord | undefined {
  const { program, records, onFingersLbf } = given;
  const { blocks, date, tool = program.tool } = prescription;
  const today = dayNumber(date);
  if (blocks.length === 0) return undefined;
  const isLike = (one: DrillRecord): boolean => {
    const day = dayNumberOf(one.date);
    if (day === undefined || !isRecent(day, today)) return false;
    if (one.removed || one.open || one.pain || (one.tool ?? 'bow') !== tool) return false;
    return isAsHeavy(one, onFingersLbf) && blocks.every((block) => isHeld(block, one.reps, program));
  };
  let last: DrillRecord | undefined;
  for (const one of records) {
    const isLater = last === undefined || one.date > last.date;
    if (isLater && isOfProgram(one, program) && isLike(one)) last = one;
  }
  return last;
}

/** What is added is counted rep by rep. */
function isAsHeavy({ onFingersLbf, reps }: DrillRecord, today: number | undefined): boolean {
  if (today === undefined) return true;
  const added = Math.max(0, ...reps.map(({ addedWeightLbf }) => addedWeightLbf ?? 0));
  return onFingersLbf !== undefined && onFingersLbf - added >= today - 1e-9;
}

function isHeld(
  { block, sets, reps, holdMs, addedWeightLbf, hand }: PrescribedBlock,
  done: readonly RepRecord[],
  { blocks }: Program,
): boolean {
  const rest = blocks[block]?.rest;
  if (rest === undefined || hand === 'both') return false;
  // A rest that goes with its hold is shorter beside a shorter one.
  const isRestAlike = (rep: RepRecord): boolean => 'seconds' in rest || rep.prescribedMs === holdMs;
  const own = done.filter((rep) => rep.block === block);
  const isWhole = own.every((rep) => trueOutcome(rep) === 'held');
  const inSet = new Map<number, number>();
  for (const rep of own) {
    const isAsMuch = trueHeldMs(rep) >= holdMs && (rep.addedWeightLbf ?? 0) >= addedWeightLbf && isRestAlike(rep);
    if (isAsMuch) inSet.set(rep.set, (inSet.get(rep.set) ?? 0) + 1);
  }
  const wholeSets = [...inSet.values()].filter((count) => count >= reps).length;
  return isWhole && wholeSets >= sets;
}
