import type { phase as en } from '../en/phase.ts';

/** What the archer does now, and what comes next. */
export const phase: Readonly<Record<keyof typeof en, string>> = {
  'phase.waiting': 'Bereit',
  'phase.ready': 'Bereit',
  'phase.draw': 'Ziehen',
  'phase.hold': 'Halten',
  'phase.letDown': 'Absetzen',
  'phase.toSetUp': 'Ins Set-up',
  'phase.rest': 'Pause',
  'phase.setRest': 'Pause',
  'phase.paused': 'Uhr steht',
  'phase.done': 'Fertig',
  'phase.stopped': 'Beendet',
  'phase.lastOne': 'Die letzte',
  'phase.nextBlock': 'Danach: {title}',
  'phase.nextBlockUnnamed': 'Danach: ein anderer Block',
  'phase.nextSet': 'Danach: Satz {set, number} von {sets, number}',
  'phase.nextDraw': 'Danach: ziehen',
  'phase.nextHold': 'Danach: {ms, number, seconds} halten',
  'phase.nextLetDown': 'Danach: absetzen',
  'phase.nextToSetUp': 'Danach: bis ins Set-up absetzen',
  'phase.nextRest': 'Danach: {ms, number, seconds} Pause',
  'phase.oppositeHand': '{next}, andere Hand',
  'phase.place': 'Satz {set, number} von {sets, number} · Wdh. {rep, number} von {reps, number}',
  'phase.inAll': '{clock} insgesamt',
  'phase.left': 'noch {clock}',
  'phase.blockLine': '{title}: {reps, number} × {hold, number, seconds}',
  'phase.blockLineOfSets':
    '{title}: {sets, plural, one {# Satz} other {# Sätze}} mit {reps, number} × {hold, number, seconds}',
};
