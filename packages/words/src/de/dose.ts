import type { dose as en } from '../en/dose.ts';

/** Today's numbers as archers write them, each of which can be asked about. */
export const dose: Readonly<Record<keyof typeof en, string>> = {
  'dose.reps': '{n, plural, one {# Wiederholung} other {# Wiederholungen}}',
  'dose.sets': '{n, plural, one {# Satz} other {# Sätze}}',
  'dose.rest': 'Pause {rest}',
  'dose.setUp': 'absetzen bis ins Set-up, keine Pause',
  'dose.noRest': 'keine Pause zwischen den Wiederholungen',
  'dose.setRest': '{rest} zwischen den Sätzen',
  'dose.oneRep': 'eine Wiederholung',
  'dose.added': '{weight} zusätzlich',
  'dose.opposite': 'andere Hand',
  'dose.both': 'beide Hände im Wechsel',
  'dose.why': 'Warum {number}?',
  'dose.length': 'Insgesamt {length}.',
  'dose.line': '{title}: {dose}',
};
