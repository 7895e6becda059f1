/** Own words for the five steps of feel, 1 to 5. */
export const feelWords = ['Poor', 'Flat', 'All right', 'Good', 'Very good'] as const;
