/** The page that says what Larkhold is. */
export const about = {
  'about.emptyHands': 'Empty hands',
  'about.done': 'Done. {held, number} of {reps, number} held. In the app this is in the journal by now.',
} as const;
