import type { day as en } from '../en/day.ts';

/** Days as seen from today. */
export const day: Readonly<Record<keyof typeof en, string>> = {
  'day.today': 'Heute',
  'day.yesterday': 'Gestern',
  'day.arrows': 'Geschossene Pfeile',
  'day.addDistance': 'Entfernung hinzufügen',
  'day.rangeCheck': 'Prüfung des Schießplatzes zu Hause',
  'day.place': 'Ort',
  'day.distanceOf': '{name}, Entfernung in {unit, select, yards {Yards} other {Metern}}',
  'day.minutes': 'Minuten',
  'day.shooting': 'Schießen',
  'day.felt': 'Wie es sich anfühlte',
  'day.ownWords': 'In deinen Worten',
  'day.pain': 'Heute Schmerzen',
  'day.painStop': 'Für heute ist Schluss. Wenn es bleibt, geh zur Ärztin, zum Arzt oder in die Physiotherapie.',
  'day.otherWork': 'Anderes Training, Minuten',
  'day.note': 'Notiz',
  'day.effortOf': '{name}, Anstrengung von 0 bis 10',
  'day.effort': 'Anstrengung',
  'day.effortStep': 'Anstrengung {step}',
};
