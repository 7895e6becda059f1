import type { effort as en } from '../en/effort.ts';

/** Own words for the effort of a drill, 0 to 10; the numbers are what is kept. */
export const effort: Readonly<Record<keyof typeof en, string>> = {
  'effort.0': 'Keine Anstrengung',
  'effort.1': 'Kaum spürbar',
  'effort.2': 'Leicht',
  'effort.3': 'Gut durchzuhalten',
  'effort.4': 'Etwas Anstrengung',
  'effort.5': 'Deutliche Anstrengung',
  'effort.6': 'Ermüdend',
  'effort.7': 'Hart',
  'effort.8': 'Sehr hart',
  'effort.9': 'Fast alles gegeben',
  'effort.10': 'Alles gegeben',
};
