import { type DrillRecord, type Prescription, type Program, shiftDay } from '@larkhold/engine';
import type { AppView } from '../shell/app-context.ts';
import { todaysPrescription } from '../shell/todays-prescription.ts';

/**
 * Tomorrow's numbers, with one more drill in the journal.
 * @param view the app's
 * @param record of that drill
 * @param program what is drilled tomorrow
 * @returns tomorrow's prescription
 */
export function numbersAfter(view: AppView, record: DrillRecord, program: Program): Prescription {
  const drills = [...view.journal.drills.filter(({ id }) => id !== record.id), record];
  return todaysPrescription({ ...view, journal: { ...view.journal, drills }, today: shiftDay(view.today, 1) }, program);
}

/**
 * The same for the program that is chosen, worked out once for a journal.
 * @returns what gives it
 */
export function createNextTime(): (view: AppView, record: DrillRecord) => Prescription {
  let kept: { view: AppView; next: Prescription } | undefined;
  return (view, record) => {
    const before = kept?.view;
    const isSame = before?.journal === view.journal && before.chosen === view.chosen && before.kit === view.kit;
    if (!kept || !isSame) kept = { view, next: numbersAfter(view, record, view.chosen) };
    return kept.next;
  };
}
