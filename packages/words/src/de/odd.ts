import type { odd as en } from '../en/odd.ts';

/** What is said of an entry or a page that can't be shown. */
export const odd: Readonly<Record<keyof typeof en, string>> = {
  'odd.title': '{n, plural, one {# Eintrag lässt} other {# Einträge lassen}} sich nicht zeigen',
  'odd.about': 'Nichts wurde weggeworfen. Sichere das Gefundene als Datei, oder entferne es.',
  'odd.entry': '{thing}: {message}',
  'odd.things':
    '{table, select, opened {Programm} programs {Programm} drills {Übung} days {Tag} weeks {Wochenseite} notes {Notiz} milestones {Meilenstein} removed {Zeichen von etwas Entferntem} other {Einstellung}}',
  'odd.kitValue': 'In der Ausrüstung war ein Wert, der sich nicht lesen ließ.',
  'odd.at': '{where}: {reason}',
  'odd.save': 'Als Datei sichern',
  'odd.remove': 'Entfernen',
  'odd.surely': 'Endgültig entfernen',
  'odd.keep': 'Behalten',
  'odd.notDrawn': 'Er lässt sich nicht zeichnen ({reason}).',
  'odd.page': 'Diese Seite lässt sich nicht zeichnen',
  'odd.part': 'Dieser Teil der Seite lässt sich nicht zeichnen',
  'odd.reason':
    'Hier ist in Larkhold etwas fehlgeschlagen: {reason}. Was gespeichert ist, ist wie vorher, und die anderen Seiten gehen.',
  'odd.again': 'Noch einmal versuchen',
  'odd.toLine': 'Zur Linie',
};
