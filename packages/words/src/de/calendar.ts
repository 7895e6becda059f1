import type { calendar as en } from '../en/calendar.ts';

/** What a calendar file says of a day: what was done, and what is planned. */
export const calendar: Readonly<Record<keyof typeof en, string>> = {
  'calendar.drill': '{program}: {held, number} von {reps, number} gehalten',
  'calendar.drillAbout': '{ms, number, duration} im Vollauszug.',
  'calendar.drillEffort': '{ms, number, duration} im Vollauszug. Anstrengung {effort, number} von 10.',
  'calendar.drillSeen': 'Davon, wie die Kamera es sah: {ms, number, duration}.',
  'calendar.arrows':
    '{n, plural, one {# Pfeil} other {# Pfeile}}, {kind, select, blankBale {leere Scheibe} practice {Training} other {Wertung}}',
  'calendar.work': '{kind, select, strength {Kraft} mobility {Beweglichkeit} other {Ausdauer}}, {ms, number, minutes}',
  'calendar.dayDrill': '{title} {sets, number} × {reps, number}, {hold, number, seconds} halten',
  'calendar.dayDrillAdded':
    '{title} {sets, number} × {reps, number}, {hold, number, seconds} halten, {weight} zusätzlich',
  'calendar.planned': '{program}: {drills}',
  'calendar.plannedAbout':
    '{drills}. {held, number, duration} im Vollauszug, insgesamt {all, number, minutes}.{kind, select, deload { Leichtere Woche.} taper { Leichter vor dem Wettkampf.} test { Ein Test.} other {}} Eine Vorhersage: Was du wirklich hältst, ändert sie.',
  'calendar.competition': 'Wettkampf',
  'calendar.competitionAbout': 'An diesem Tag und am Tag davor keine Übung.',
};
