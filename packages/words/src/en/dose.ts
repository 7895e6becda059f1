/** Today's numbers as archers write them, each of which can be asked about. */
export const dose = {
  'dose.reps': '{n, plural, one {# rep} other {# reps}}',
  'dose.sets': '{n, plural, one {# set} other {# sets}}',
  'dose.rest': 'rest {rest}',
  'dose.setUp': 'let down to set-up, no rest',
  'dose.noRest': 'no rest between reps',
  'dose.setRest': '{rest} between sets',
  'dose.oneRep': 'one rep',
  'dose.added': '{weight} added',
  'dose.opposite': 'other hand',
  'dose.both': 'both hands in turn',
  'dose.why': 'Why {number}?',
  'dose.length': '{length} in all.',
  'dose.line': '{title}: {dose}',
} as const;
