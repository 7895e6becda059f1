/** What is said where one program takes the place of another. */
export const swap = {
  'swap.title': '{theirs} would take the place of your {mine}',
  'swap.titleToday': '{theirs} would be today’s program in place of {mine}',
  'swap.about': 'The next sessions under both, by what you have done so far:',
  'swap.session': 'Session',
  'swap.yours': 'Yours',
  'swap.theirs': 'The new one',
  'swap.row': '{n, number}',
  'swap.held': '{reps}, {ms, number, duration} at full draw',
  'swap.none': 'none',
  'swap.replace': 'Replace mine',
  'swap.both': 'Keep both',
  'swap.replaced': '{title} was replaced on {day, date, year}. The old one is kept for a day.',
  'swap.undo': 'Bring the old one back',
} as const;
