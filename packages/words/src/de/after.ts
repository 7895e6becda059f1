import type { after as en } from '../en/after.ts';

/** The questions after a drill. */
export const after: Readonly<Record<keyof typeof en, string>> = {
  'after.question': 'Wie war es?',
  'after.hint': 'Tippen, Ziffern oder Pedal: auf und ab wählen, vor geht weiter. Nichts muss beantwortet werden.',
  'after.effort': 'Anstrengung',
  'after.pain': 'Schmerzen?',
  'after.note': 'Notiz',
  'after.reps': 'Wiederholungen',
  'after.save': 'Speichern',
  'after.skip': 'Überspringen',
  'after.no': 'Nein',
  'after.yes': 'Ja',
  'after.painStop': 'Für heute ist Schluss. Wenn es bleibt, geh zur Ärztin, zum Arzt oder in die Physiotherapie.',
  'after.noRep': 'Es wurde keine Wiederholung eingetragen.',
  'after.painMeans': 'Im Gelenk oder stechend. Müde Muskeln zählen nicht.',
  'after.closing': 'Fertig',
  'after.closingCount': '{held, number} von {of, number}',
};
