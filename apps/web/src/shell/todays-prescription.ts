import {
  dayNumber,
  lighterOn,
  type Prescription,
  type Program,
  prescribe,
  type Season,
  TEST_FREE_DAYS,
} from '@larkhold/engine';
import { archerOf } from '@larkhold/store';
import type { AppView } from './app-context.ts';

const kept = new WeakMap<AppView['journal'], Map<string, { program: Program; prescription: Prescription }>>();

/**
 * Today's numbers for a program, by what was done, the diary, the season, and the archer's age and bow. The same journal, kit and program give the
 * same object, so that a page can ask as often as it draws.
 * @param view the app as it stands
 * @param program one of the rack's
 * @param minutes the time there is, whole minutes
 * @returns the prescription
 */
export function todaysPrescription(
  view: Pick<AppView, 'journal' | 'today' | 'kit'> & { season?: Pick<AppView['season'], 'season'> },
  program: Program,
  minutes?: number,
): Prescription {
  const { journal, today, kit, season } = view;
  const archer = archerOf(kit);
  const lighter = season && lighterOn(season.season, dayNumber(today));
  const competitionDay = season ? competitionNear(season.season, today, program) : kit.plan?.competitionDay;
  const ofJournal = kept.get(journal) ?? new Map();
  kept.set(journal, ofJournal);
  const key = JSON.stringify([today, minutes, archer, competitionDay, lighter, program.id ?? program.title]);
  const found = ofJournal.get(key);
  if (found?.program === program) return found.prescription;
  const { drills: records, days } = journal;
  const prescription = prescribe({ program, records, today, minutes, archer, days, competitionDay, lighter });
  ofJournal.set(key, { program, prescription });
  return prescription;
}

/** The day of a competition for which today is better without a drill, or without a test: on all of its days, and on the days before. */
function competitionNear({ competitions }: Season, today: string, { kind }: Program): string | undefined {
  const now = dayNumber(today);
  const before = kind === 'test' ? TEST_FREE_DAYS : 1;
  const near = competitions.find(
    ({ day, lastDay = day }) => dayNumber(day) - before <= now && now <= dayNumber(lastDay),
  );
  return near && (near.day <= today ? today : near.day);
}
