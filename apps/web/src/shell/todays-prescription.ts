import { type Prescription, type Program, prescribe, seasonEffects } from '@larkhold/engine';
import { archerOf } from '@larkhold/store';
import type { AppView } from './app-context.ts';

const kept = new WeakMap<AppView['journal'], Map<string, { program: Program; prescription: Prescription }>>();

/**
 * Today's numbers for a program, by what was done, the diary, the season, and the archer's age and bow. The same journal, kit and program give the
 * same object, so that a page can ask as often as it draws.
 * @param view the app as it is
 * @param program one of the rack's
 * @param minutes the time there is, whole minutes
 * @returns the prescription
 */
export function todaysPrescription(
  view: Pick<AppView, 'journal' | 'past' | 'today' | 'kit'> & {
    season?: Pick<AppView['season'], 'date' | 'season' | 'due'>;
  },
  program: Program,
  minutes?: number,
): Prescription {
  const { journal, past, today, kit, season } = view;
  const archer = archerOf(kit);
  const effects = season
    ? seasonEffects(season, program, today, kit.programDay)
    : { competitionDay: kit.plan?.competitionDay };
  const ofJournal = kept.get(journal) ?? new Map();
  kept.set(journal, ofJournal);
  const key = JSON.stringify([today, minutes, archer, effects, program.id ?? program.title]);
  const found = ofJournal.get(key);
  if (found?.program === program) return found.prescription;
  const { drills: records, days } = journal;
  const prescription = prescribe({ program, records, past, today, minutes, archer, days, ...effects });
  ofJournal.set(key, { program, prescription });
  return prescription;
}
