/** Learning which key or pedal does what. */
export const learn = {
  'learn.take': 'Take {press} away from {action}',
  'learn.learn': 'Learn',
  'learn.try': 'Try',
  'learn.done': 'Done',
  'learn.noneSet': 'nothing set',
  'learn.isSet': 'Set for this.',
  'learn.notSet': 'Not set for this.',
  'learn.pressNow': 'Press the key or pedal now. Escape ends this.',
  'learn.heard': 'Heard: {press}.',
  'learn.heardTimes': 'Heard: {press}, {times, plural, one {# time} other {# times}}.',
} as const;
