import type { learn as en } from '../en/learn.ts';

/** Learning which key or pedal does what. */
export const learn: Readonly<Record<keyof typeof en, string>> = {
  'learn.take': '{press} nicht mehr für {action}',
  'learn.learn': 'Lernen',
  'learn.try': 'Probieren',
  'learn.done': 'Fertig',
  'learn.noneSet': 'nichts eingestellt',
  'learn.isSet': 'Dafür eingestellt.',
  'learn.notSet': 'Nicht dafür eingestellt.',
  'learn.pressNow': 'Drück jetzt die Taste oder das Pedal. Escape beendet das.',
  'learn.heard': 'Gehört: {press}.',
  'learn.heardTimes': 'Gehört: {press}, {times, plural, one {# Mal} other {# Mal}}.',
};
