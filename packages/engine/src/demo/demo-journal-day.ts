import type { DayEntry, Work } from '../journal/journal.ts';
import { dayNumber } from '../units/calendar-day.ts';
import type { DemoChance } from './demo-journal-chance.ts';
import { feelWords, shootingNotes } from './demo-journal-words.ts';

/**
 * Invents a day's entry: shooting on most Sundays and Tuesdays, no bow on Thursdays, work without one now and then, and how the day felt.
 * @param date ISO 8601 day
 * @param day whether there was a drill, whether the archer rests from shooting, and whether the question about pain is answered with no
 * @param chance numbers to invent from
 * @returns an entry; undefined on days on which nothing was written
 */
export function inventDay(
  date: string,
  day: { hasDrilled: boolean; isOff: boolean; isAsked: boolean },
  chance: DemoChance,
): DayEntry | undefined {
  const weekday = (((dayNumber(date) + 3) % 7) + 7) % 7;
  const isShooting = !day.isOff && chance.percent([0, 75, 0, 0, 0, 0, 85][weekday] ?? 0);
  const work = weekday === 2 || weekday === 5 ? chance.percent(45) : false;
  if (!isShooting && !work && !day.hasDrilled && !day.isAsked && chance.percent(60)) return undefined;

  const feel = Math.min(5, Math.max(1, Math.round(chance.between(1.6, 5.2) - (day.isOff ? 0.8 : 0))));
  const entry: DayEntry = { date, feel };
  if (day.isAsked) entry.pain = false;
  if (chance.percent(40)) entry.feelWords = chance.one(feelWords[feel] ?? ['ordinary']);
  if (day.hasDrilled) entry.readiness = feel >= 4 ? 'fresh' : feel === 3 ? 'as usual' : 'heavy';
  if (isShooting) {
    const count = 6 * Math.round(chance.between(8, 20));
    const isScoring = weekday === 6 && chance.percent(50);
    entry.arrows = [
      { kind: 'blank bale', count: 18, distanceM: 5 },
      { kind: isScoring ? 'scoring' : 'practice', count: isScoring ? 60 : count, distanceM: 18 },
    ];
    entry.shootingMinutes = 5 * Math.round(chance.between(10, 20));
    entry.shootingEffort = Math.round(chance.between(3, 6));
    if (chance.percent(30)) entry.note = chance.one(shootingNotes);
  }
  if (work) {
    const kind = day.isOff ? 'mobility' : chance.one<Work['kind']>(['strength', 'mobility', 'fitness']);
    entry.work = [{ kind, minutes: 5 * Math.round(chance.between(3, 8)), effort: Math.round(chance.between(2, 6)) }];
  }
  return entry;
}
