/** The line, beside the numbers: what it is done with, how long, what was done and what comes. */
export const today = {
  'today.firstRun':
    'A short draw-and-hold drill at home, led by ear. Every hold is logged here on this device, and tomorrow’s drill follows from it.',
  'today.tool': '{tool, select, bow {Your bow} light {A light bow} band {A stretch band} strap {A strap} other {}}',
  'today.toolWeight':
    '{tool, select, bow {Your bow} light {A light bow} band {A stretch band} strap {A strap} other {}}, {weight}',
  'today.toolAdded':
    '{tool, select, bow {Your bow} light {A light bow} band {A stretch band} strap {A strap} other {}}, {weight} + {added}',
  'today.press': 'Press a stroke to correct that rep.',
  'today.whole': 'A whole drill in this time:',
  'today.length': '{ms, number, minutes}',
  'today.done': 'Done today',
  'today.again': 'Begin again',
  'today.last': 'Your last drills',
  'today.day': '{day, date, short}',
  'then.title': 'Then and now',
  'then.seconds': '{ms, number, seconds}',
  'then.sentence': 'In the four weeks to {day, date, short} you held {past}. Now it is {now}.',
  'then.brings': 'One more clean morning brings {next}.',
  'rest.day': 'A rest day',
  'rest.still': 'If you drill all the same, this is the most you should do:',
  'rest.none': 'Nothing is offered today. Rest it.',
  'rest.pain': 'Any pain today?',
  'rest.drill': 'Drill all the same',
  'today.restore': 'Restore from a file',
} as const;
