import type { load as en } from '../en/load.ts';

/** What the training cost. */
export const load: Readonly<Record<keyof typeof en, string>> = {
  'load.costThisWeek': 'Was es gekostet hat: {ms, number, duration} im Vollauszug in dieser Woche',
  'load.cost': 'Was es gekostet hat',
  'load.today': 'Heute',
  'load.thisWeek': 'Diese Woche',
  'load.weekBefore': 'Woche davor',
  'load.about':
    'Zugimpuls ist Zuggewicht auf den Fingern mal Zeit im Vollauszug. Belastung ist Anstrengung mal Minuten, aus Übungen, Schießen und anderem Training. {leftOut}',
  'load.fullDraw': 'Im Vollauszug',
  'load.asSeen': 'Davon, wie die Kamera es sah',
  'load.impulse': 'Zugimpuls',
  'load.load': 'Belastung',
  'load.sevenDays': 'Letzte sieben Tage: Belastung {load, number}. {rest}',
  'load.alike': 'Alle sieben Tage gleichen sich, darum sind Gleichförmigkeit und Beanspruchung nicht bestimmt.',
  'load.monotony':
    'Gleichförmigkeit {monotony, number, ratio}: ihr Mittel geteilt durch ihre Streuung. Beanspruchung {strain, number}: ihre Belastung mal Gleichförmigkeit.',
  'load.needs28': 'Das Verhältnis akut zu chronisch braucht 28 Tage mit Belastung. So viele sind es noch nicht.',
  'load.ratios':
    'Verhältnis akut zu chronisch, 7 Tage zu 28: {rolling, number, ratio} mit einfachen Mittelwerten, {fading, number, ratio}, wenn ältere Tage verblassen.',
  'load.unrated':
    '{n, plural, one {# Eintrag ohne Anstrengung oder Minuten zählt} other {# Einträge ohne Anstrengung oder Minuten zählen}} nicht als Belastung.',
  'load.unweighed':
    '{n, plural, one {# Übung ohne bekanntes Zuggewicht zählt} other {# Übungen ohne bekanntes Zuggewicht zählen}} nicht als Impuls.',
  'load.inKit': 'Trag es in der Ausrüstung ein',
  'load.noLength':
    'In der Ausrüstung steht nicht, was du auf den Fingern hältst. {link}, oder deine Auszugslänge für eine Schätzung.',
  'load.noWeight': 'In der Ausrüstung steht nicht, was du auf den Fingern hältst. {link}, oder schätz es:',
  'load.marked': 'Aufschrift des Bogens, lb bei 28 in',
  'load.take': '{weight} übernehmen',
  'load.about70': 'Etwa {weight} bei {length}. {caution}',
  'load.fingersCaution': 'Eine Schätzung. Eine Bogenwaage bei deiner eigenen Auszugslänge ist besser.',
};
