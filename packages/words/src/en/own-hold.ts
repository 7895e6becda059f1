/** The longest hold of the archer. */
export const ownHold = {
  'ownHold.field': 'Longest hold, s',
  'ownHold.test': 'Baseline test',
  'ownHold.result':
    'By the baseline test of {day, date, short} your longest hold is about {ms, number, seconds}: what had not come back of the holds before, and the one that you let down. Keep it as yours?',
  'ownHold.resultOther':
    'By the baseline test of {day, date, short} your longest hold is about {ms, number, seconds}: what had not come back of the holds before, and the one that you let down. The kit says {kit, number, seconds}. Use the new one?',
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
    'About {ms, number, seconds}, somewhere from {low, number, seconds} to {high, number, seconds}, {from, select, test {from your last tests} other {from holds where strength gave out}}.',
  'ownHold.tooLittle':
    'Too little data: no test, and no hold where strength gave out, in the last 8 weeks. Take the baseline test.',
  'ownHold.old':
    'Your last baseline test was {weeks, plural, one {# week} other {# weeks}} ago. Its result is old: take it again before you trust the curve.',
  'ownHold.worth':
    'Your last baseline test was {weeks, plural, one {# week} other {# weeks}} ago. It is worth taking again every 4 to 8 weeks.',
} as const;
