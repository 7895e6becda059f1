/** The longest hold of the archer. */
export const ownHold = {
  'ownHold.field': 'Longest hold, s',
  'ownHold.test': 'Baseline test',
  'ownHold.result':
    'By the baseline test of {day, date, short} your longest hold is {sure, select, atLeast {at least} other {about}} {ms, number, seconds}. A model worked it out from the rep where you let down. Keep it as yours?',
  'ownHold.resultOther':
    'By the baseline test of {day, date, short} your longest hold is {sure, select, atLeast {at least} other {about}} {ms, number, seconds}. A model worked it out from the rep where you let down. The kit says {kit, number, seconds}. Use the new one?',
  'ownHold.take': 'Take {ms, number, seconds}',
  'ownHold.leave': 'Leave it',
  'ownHold.disagree': 'Your drills disagree',
  'ownHold.disagreeWith': 'Your drills disagree with the kit. They say: {estimate}',
  'ownHold.testToday': "The baseline test is today's program.",
  'ownHold.takeTest': 'Take the baseline test today',
  'ownHold.outOfRange': 'Not changed: expected {least, number} to {most, number} seconds.',
  'ownHold.asKit': 'Your longest hold: {ms, number, seconds}, as the kit says.',
  'ownHold.fromJournal': 'Your longest hold, from the journal: {estimate}',
  'ownHold.estimate':
    'About {ms, number, seconds}, somewhere from {low, number, seconds} to {high, number, seconds}, from {drills, plural, one {# drill} other {# drills}}. A model, not a measurement: the baseline test knows better.',
  'ownHold.tooLittle':
    'Too little data: {drills, plural, one {# drill} other {# drills}} of the last 8 weeks ended a hold early, and {needed, number} are needed. Take the baseline test.',
  'ownHold.old':
    'Your last baseline test was {weeks, plural, one {# week} other {# weeks}} ago. Its result is old: take it again before you trust the curve.',
  'ownHold.worth':
    'Your last baseline test was {weeks, plural, one {# week} other {# weeks}} ago. It is worth taking again every 4 to 8 weeks.',
} as const;
