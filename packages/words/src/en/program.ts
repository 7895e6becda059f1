/** A program read aloud. */
export const program = {
  'program.bow': 'Bow',
  'program.lightBow': 'Light bow',
  'program.band': 'Stretch band',
  'program.strap': 'Strap',
  'program.block':
    '{reps, plural, one {# rep} other {# reps}}: draw {draw, number, seconds}, hold {hold, number, seconds}, let down {letDown, number, seconds}.',
  'program.blockOfSets':
    '{sets, plural, one {# set} other {# sets}} of {reps, plural, one {# rep} other {# reps}}: draw {draw, number, seconds}, hold {hold, number, seconds}, let down {letDown, number, seconds}.',
  'program.countFromAnchor': 'Count the hold from the anchor, where a camera sees it',
  'program.fromAnchor': 'The hold counts from the anchor where a camera sees it.',
  'program.toSetUp': 'Let down to set-up only.',
  'program.rest': 'Rest {rest, number, seconds} between reps.',
  'program.noRest': 'No rest between reps.',
  'program.setRest': '{rest, number, seconds} between sets.',
  'program.opposite': 'With the other hand.',
  'program.both': 'Both hands in turn.',
  'program.added': '{weight} added.',
  'program.noLadder': 'Stays as it is.',
  'program.climb':
    'One step up after {clean, plural, one {# clean session} other {# clean sessions}}, if the effort was {effort, number} of 10 or less.',
  'program.rung':
    '{order, select, first {First} other {Then}} {lever, select, hold {the hold} reps {the reps} sets {the sets} other {the added weight}} by {by}, up to {until}.',
  'program.rungWithResets':
    '{order, select, first {First} other {Then}} {lever, select, hold {the hold} reps {the reps} sets {the sets} other {the added weight}} by {by}, up to {until}, with {resets}.',
  'program.reset':
    '{lever, select, hold {the hold} reps {the reps} sets {the sets} other {the added weight}} back to {value}',
  'program.stepDown': 'One step down when {share, number, share} of the reps or more are let down early or skipped.',
  'program.stepDownAny': 'One step down when any rep is let down early or skipped.',
  'program.stepDownRunning':
    'One step down when {share, number, share} of the reps or more are let down early or skipped in {sessions, plural, one {# session} other {# sessions}} running.',
  'program.stepDownAnyRunning':
    'One step down when any rep is let down early or skipped in {sessions, plural, one {# session} other {# sessions}} running.',
  'program.deload': 'Every {weeks, number} training weeks a lighter one: {keep, number, share} of the reps.',
  'program.layoff':
    'After {days, plural, one {# day} other {# days}} away, {steps, plural, one {# step} other {# steps}} down.',
  'program.growth': "No more than {growth, number, share} of the hold time of the last four weeks' mean.",
} as const;
