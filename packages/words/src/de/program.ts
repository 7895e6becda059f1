import type { program as en } from '../en/program.ts';

/** A program read aloud. */
export const program: Readonly<Record<keyof typeof en, string>> = {
  'program.bow': 'Bogen',
  'program.lightBow': 'Leichter Bogen',
  'program.band': 'Zugband',
  'program.strap': 'Gurt',
  'program.block':
    '{reps, plural, one {# Wiederholung} other {# Wiederholungen}}: {draw, number, seconds} ziehen, {hold, number, seconds} halten, {letDown, number, seconds} absetzen.',
  'program.blockOfSets':
    '{sets, plural, one {# Satz} other {# Sätze}} mit je {reps, plural, one {# Wiederholung} other {# Wiederholungen}}: {draw, number, seconds} ziehen, {hold, number, seconds} halten, {letDown, number, seconds} absetzen.',
  'program.countFromAnchor': 'Das Halten ab dem Anker zählen, wo eine Kamera ihn sieht',
  'program.fromAnchor': 'Das Halten zählt ab dem Anker, wo eine Kamera ihn sieht.',
  'program.toSetUp': 'Nur bis ins Set-up absetzen.',
  'program.rest': '{rest, number, seconds} Pause zwischen den Wiederholungen.',
  'program.noRest': 'Keine Pause zwischen den Wiederholungen.',
  'program.setRest': '{rest, number, seconds} zwischen den Sätzen.',
  'program.opposite': 'Mit der anderen Hand.',
  'program.both': 'Beide Hände im Wechsel.',
  'program.added': '{weight} zusätzlich.',
  'program.noLadder': 'Bleibt, wie es ist.',
  'program.climb':
    'Eine Stufe höher nach {clean, plural, one {# sauberen Einheit} other {# sauberen Einheiten}}, wenn die Anstrengung höchstens {effort, number} von 10 war.',
  'program.rung':
    '{order, select, first {Zuerst} other {Dann}} {lever, select, hold {die Haltezeit} reps {die Wiederholungen} sets {die Sätze} other {das Zusatzgewicht}} um {by}, bis {until}.',
  'program.rungWithResets':
    '{order, select, first {Zuerst} other {Dann}} {lever, select, hold {die Haltezeit} reps {die Wiederholungen} sets {die Sätze} other {das Zusatzgewicht}} um {by}, bis {until}, dabei {resets}.',
  'program.reset':
    '{lever, select, hold {die Haltezeit} reps {die Wiederholungen} sets {die Sätze} other {das Zusatzgewicht}} zurück auf {value}',
  'program.stepDown':
    'Eine Stufe tiefer, wenn {share, number, share} der Wiederholungen oder mehr zu früh abgesetzt oder ausgelassen werden.',
  'program.stepDownAny': 'Eine Stufe tiefer, wenn auch nur eine Wiederholung zu früh abgesetzt oder ausgelassen wird.',
  'program.stepDownRunning':
    'Eine Stufe tiefer, wenn in {sessions, plural, one {# Einheit} other {# Einheiten}} hintereinander {share, number, share} der Wiederholungen oder mehr zu früh abgesetzt oder ausgelassen werden.',
  'program.stepDownAnyRunning':
    'Eine Stufe tiefer, wenn in {sessions, plural, one {# Einheit} other {# Einheiten}} hintereinander auch nur eine Wiederholung zu früh abgesetzt oder ausgelassen wird.',
  'program.deload': 'Alle {weeks, number} Trainingswochen eine leichtere: {keep, number, share} der Wiederholungen.',
  'program.layoff':
    'Nach {days, plural, one {# Tag} other {# Tagen}} ohne Übung {steps, plural, one {# Stufe} other {# Stufen}} tiefer.',
  'program.growth': 'Höchstens {growth, number, share} der mittleren Haltezeit der letzten vier Wochen.',
};
