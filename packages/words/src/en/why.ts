/** Why one number is what it is. */
export const why = {
  'why.sets': 'Sets: {value}.',
  'why.reps': 'Reps: {value}.',
  'why.draw': 'Draw: {value}.',
  'why.hold': 'Hold: {value}.',
  'why.letDown': 'Let-down: {value}.',
  'why.rest': 'Rest between reps: {value}.',
  'why.setRest': 'Rest after a set: {value}.',
  'why.addedWeight': 'Added weight: {value}.',
  'why.duration': 'Length: {value}.',
  'why.leftOut': 'Left out today.',
  'why.asProgram': 'As the program says.',
  'why.restAsReps': 'The program gives none, so it is the rest between reps.',
  'why.restTimes': '{times, number} times a hold of {hold, number, seconds}: a shorter hold does not shorten the rest.',
  'why.restLonger': '{times, number} times as long, because holds failed again and again.',
  'why.fixed': 'The program says {value}. It has no ladder.',
  'why.begins': 'The program begins with {value}.',
  'why.step': 'The program begins with {start}; step {level, number} of {top, number} on its ladder is {value}.',
  'why.getReady': '{ms, number, duration} to get ready.',
  'why.blockTakes':
    '{title}: {sets, plural, one {# set} other {# sets}} of {reps, plural, one {# rep} other {# reps}}, {ms, number, duration}.',
  'why.between': 'Rest between blocks: {ms, number, duration}.',
} as const;
