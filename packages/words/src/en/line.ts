/** The line: today's drill. */
export const line = {
  'line.begin': 'Begin',
  'line.inAll': '{length} in all.',
} as const;
