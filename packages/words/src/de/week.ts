import type { week as en } from '../en/week.ts';

/** A week in words. */
export const week: Readonly<Record<keyof typeof en, string>> = {
  'week.title': 'Woche {week, number}',
  'week.span': '{first, date, short} bis {last, date, short}',
  'week.spanInYear': '{first, date, short} bis {last, date, shortYear}',
  'week.spanOverYears': '{first, date, shortYear} bis {last, date, shortYear}',
  'week.drills':
    '{drills, plural, one {# Übung} other {# Übungen}}, {held, number} von {reps, plural, one {# Wiederholung} other {# Wiederholungen}} gehalten, {ms, number, duration} im Vollauszug',
  'week.arrows': '{n, plural, one {# Pfeil} other {# Pfeile}}',
  'week.otherWork': '{ms, number, minutes} anderes Training',
  'week.note': 'Eine Notiz',
  'week.nothing': 'Nichts eingetragen',
  'week.totalHold': 'Zeit im Vollauszug',
  'week.totalDrills': 'Übungen',
  'week.totalReps': 'Gehaltene Wiederholungen',
  'week.totalArrows': 'Pfeile',
  'week.totalWork': 'Anderes Training',
  'week.totalFeel': 'Gefühl, 1 bis 5',
  'week.ofReps': '{held, number} von {reps, number}',
  'week.planned': 'An {done, number} von {planned, plural, one {# geplanten Tag} other {# geplanten Tagen}} geübt.',
};
