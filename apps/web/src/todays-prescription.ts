import { type Prescription, type Program, prescribe } from '@larkhold/engine';
import type { AppView } from './app-context.ts';

const kept = new WeakMap<AppView['journal'], Map<string, { program: Program; prescription: Prescription }>>();

/**
 * Today's numbers for a program. The same journal and program give the same object, so that a page can ask as often as it draws.
 * @param view the app as it stands
 * @param program one of the rack's
 * @param minutes the time there is, whole minutes
 * @returns the prescription
 */
export function todaysPrescription(view: AppView, program: Program, minutes?: number): Prescription {
  const { journal, today } = view;
  const readiness = journal.days.find(({ date }) => date === today)?.readiness;
  const ofJournal = kept.get(journal) ?? new Map();
  kept.set(journal, ofJournal);
  const key = `${today} ${minutes} ${readiness} ${program.id ?? program.title}`;
  const found = ofJournal.get(key);
  if (found?.program === program) return found.prescription;
  const prescription = prescribe({ program, records: journal.drills, today, minutes, readiness });
  ofJournal.set(key, { program, prescription });
  return prescription;
}
