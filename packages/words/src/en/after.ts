/** The questions after a drill. */
export const after = {
  'after.question': 'How was it?',
  'after.hint': 'Touch, digits, or a pedal: up and down choose, forward goes on. Nothing has to be answered.',
  'after.effort': 'Effort',
  'after.pain': 'Any pain?',
  'after.note': 'Note',
  'after.reps': 'Reps',
  'after.save': 'Save',
  'after.skip': 'Skip',
  'after.no': 'No',
  'after.yes': 'Yes',
  'after.painStop': 'Stop for today. If it stays, see a doctor or physiotherapist.',
  'after.noRep': 'No rep was logged.',
  'after.painMeans': 'In a joint, or a sharp pain. Tired muscles are not meant.',
  'after.closing': 'Done',
  'after.closingCount': '{held, number} of {of, number}',
} as const;
