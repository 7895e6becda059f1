/** Own words for the effort of a drill, 0 to 10; the numbers are what is kept. */
export const effort = {
  'effort.0': 'No effort',
  'effort.1': 'Hardly any',
  'effort.2': 'Light',
  'effort.3': 'Easy to keep up',
  'effort.4': 'Some effort',
  'effort.5': 'Clear effort',
  'effort.6': 'Tiring',
  'effort.7': 'Hard',
  'effort.8': 'Very hard',
  'effort.9': 'Nearly all I had',
  'effort.10': 'All I had',
} as const;
