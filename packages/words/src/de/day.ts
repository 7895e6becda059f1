import type { day as en } from '../en/day.ts';

/** Days as seen from today. */
export const day: Readonly<Record<keyof typeof en, string>> = {
  'day.today': 'Heute',
  'day.yesterday': 'Gestern',
};
