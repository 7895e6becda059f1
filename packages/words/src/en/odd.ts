/** What is said of an entry or a page that can't be shown. */
export const odd = {
  'odd.title': '{n, plural, one {# entry} other {# entries}} can’t be shown',
  'odd.about': 'Nothing was thrown away. Save what was found as a file, or remove it.',
  'odd.entry': '{thing}: {message}',
  'odd.things':
    '{table, select, opened {Program} programs {Program} drills {Drill} days {Day} weeks {Week page} notes {Note} milestones {Milestone} removed {Mark of something removed} other {Setting}}',
  'odd.kitValue': 'The kit had a value that could not be read.',
  'odd.at': '{where}: {reason}',
  'odd.save': 'Save as a file',
  'odd.remove': 'Remove',
  'odd.surely': 'Remove for good',
  'odd.keep': 'Keep it',
  'odd.notDrawn': 'It can’t be drawn ({reason}).',
  'odd.page': 'This page can’t be drawn',
  'odd.part': 'This part of the page can’t be drawn',
  'odd.reason': 'Something in Larkhold failed here: {reason}. What is kept is as it was, and the other pages work.',
  'odd.again': 'Try again',
  'odd.toLine': 'To the line',
} as const;
