import type { lost as en } from '../en/lost.ts';

/** What is said where the browser has lost what was kept. */
export const lost: Readonly<Record<keyof typeof en, string>> = {
  'lost.title': 'Das Tagebuch auf diesem Gerät ist verloren gegangen',
  'lost.about':
    '{drills, plural, one {# Übung war} other {# Übungen waren}} hier gespeichert, die letzte am {lastDay, date, year}. Der Browser findet jetzt {found, number}. Seine Datenbank wurde beschädigt oder geleert. Was du jetzt tust, bleibt neben dem, was zurückkommt.',
  'lost.box':
    'Dieses Gerät war „{device}“ in deiner Box: Verbinde es wieder, dann kommt das Tagebuch von deinen anderen Geräten zurück.',
  'lost.openBackup': 'Eine Sicherung öffnen',
  'lost.toBox': 'Mit der Box verbinden',
  'lost.goOn': 'Mit dem weitermachen, was hier ist',
  'lost.restoreTitle': 'Das Tagebuch zurückholen',
  'lost.restoreAbout':
    'Öffne die neueste Sicherung oder die Tagebuchdatei eines anderen Geräts. Sie wird erst gezeigt, dann mit dem vereint, was hier ist, und lässt sich rückgängig machen.',
};
