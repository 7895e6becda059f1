import type { why as en } from '../en/why.ts';

/** Why one number is what it is. */
export const why: Readonly<Record<keyof typeof en, string>> = {
  'why.sets': 'Sätze: {value}.',
  'why.reps': 'Wiederholungen: {value}.',
  'why.draw': 'Auszug: {value}.',
  'why.hold': 'Haltezeit: {value}.',
  'why.letDown': 'Absetzen: {value}.',
  'why.rest': 'Pause zwischen den Wiederholungen: {value}.',
  'why.setRest': 'Pause nach einem Satz: {value}.',
  'why.addedWeight': 'Zusatzgewicht: {value}.',
  'why.duration': 'Dauer: {value}.',
  'why.leftOut': 'Heute weggelassen.',
  'why.asProgram': 'Wie das Programm es sagt.',
  'why.restAsReps': 'Das Programm nennt keine, darum ist es die Pause zwischen den Wiederholungen.',
  'why.restTimes':
    '{times, number}-mal ein Halt von {hold, number, seconds}: Ein kürzerer Halt verkürzt die Pause nicht.',
  'why.restLonger': '{times, number}-mal so lang, weil Halte immer wieder nicht gelangen.',
  'why.fixed': 'Das Programm sagt {value}. Es hat keine Stufen.',
  'why.begins': 'Das Programm beginnt mit {value}.',
  'why.step': 'Das Programm beginnt mit {start}; Stufe {level, number} von {top, number} ist {value}.',
  'why.getReady': '{ms, number, duration} zum Bereitmachen.',
  'why.blockTakes':
    '{title}: {sets, plural, one {# Satz} other {# Sätze}} mit {reps, plural, one {# Wiederholung} other {# Wiederholungen}}, {ms, number, duration}.',
  'why.between': 'Pause zwischen den Blöcken: {ms, number, duration}.',
};
