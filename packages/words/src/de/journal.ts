import type { journal as en } from '../en/journal.ts';

/** The journal, and a drill in it. */
export const journal: Readonly<Record<keyof typeof en, string>> = {
  'journal.effortOf': 'Anstrengung {effort, number} von 10',
  'journal.notClosed': 'nicht abgeschlossen',
  'journal.effort': 'Anstrengung',
  'journal.effortScale': 'Anstrengung, 0 bis 10',
  'journal.notSaid': 'nicht angegeben',
  'journal.note': 'Notiz',
  'journal.removeDrill': 'Diese Übung entfernen',
  'journal.corrected': 'Berichtigt.',
  'journal.undo': 'Rückgängig',
  'journal.onFingers': 'Auf den Fingern: {weight}',
  'journal.journal': 'Tagebuch',
  'journal.thisWeek': 'Diese Woche',
  'journal.trends': 'Verläufe',
  'journal.milestones': 'Meilensteine',
  'journal.demoIn': 'Das Demo-Tagebuch ist hier drin: ein halbes Jahr einer erfundenen Person.',
  'journal.removeDemo': 'Demo-Tagebuch entfernen',
  'journal.empty':
    'Noch nichts. Jeder Halt wird hier von selbst eingetragen, und daraus entstehen die Zahlen von morgen.',
  'journal.toLine': 'Zur Linie',
  'journal.writeDay': 'Einen Tag eintragen',
  'journal.loadDemo': 'Demo-Tagebuch laden',
  'journal.demoAbout': 'Die Demo ist ein halbes Jahr einer erfundenen Person. Sie lässt sich wieder entfernen.',
  'journal.pain': 'Schmerzen',
  'journal.last': 'Letzte Übung, {day, date, short}',
  'removed.thing': 'Heute entfernt: {title}.',
  'removed.undo': 'Rückgängig',
  'removed.until': 'Rückgängig geht bis morgen.',
  'removed.drawing': 'eine Zeichnung',
};
