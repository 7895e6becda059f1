/** What to look at before arrows are shot at home. */
export const range = {
  'range.shooting': 'Shooting at home',
  'range.question': 'Shooting at home?',
  'range.rules': "Local rules and your club's come first. Check backstop, surroundings, bystanders, light.",
  'range.ifNot': 'If one line is not true, do not shoot.',
  'range.namePlace': 'Name the place, and this can be put away for it.',
  'range.checked': 'Checked: put this away for {place}',
  'range.backstop': 'Backstop: it stops every arrow, also one that misses the butt.',
  'range.surroundings': 'Surroundings: nothing and nobody behind, beside or above.',
  'range.bystanders': 'Bystanders: people and animals are behind the line, and know.',
  'range.light': 'Light: the butt and the ground before it are well lit.',
} as const;
