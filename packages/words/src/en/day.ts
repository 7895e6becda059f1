/** Days as seen from today. */
export const day = {
  'day.today': 'Today',
  'day.yesterday': 'Yesterday',
} as const;
