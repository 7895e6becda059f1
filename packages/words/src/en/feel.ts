/** How the archer felt, 1 to 5. */
export const feel = {
  'feel.poor': 'Poor',
  'feel.flat': 'Flat',
  'feel.allRight': 'All right',
  'feel.good': 'Good',
  'feel.veryGood': 'Very good',
  'feel.felt':
    '{step, select, poor {felt poor} flat {felt flat} allRight {felt all right} good {felt good} veryGood {felt very good} other {}}',
} as const;
