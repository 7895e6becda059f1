import type { swap as en } from '../en/swap.ts';

/** What is said where one program takes the place of another. */
export const swap: Readonly<Record<keyof typeof en, string>> = {
  'swap.title': '{theirs} würde dein {mine} ersetzen',
  'swap.titleToday': '{theirs} wäre dann das Programm von heute statt {mine}',
  'swap.about': 'Die nächsten Einheiten mit beiden, nach dem, was du bisher getan hast:',
  'swap.session': 'Einheit',
  'swap.yours': 'Deins',
  'swap.theirs': 'Das neue',
  'swap.row': '{n, number}',
  'swap.held': '{reps}, {ms, number, duration} im Vollauszug',
  'swap.none': 'keine',
  'swap.replace': 'Meins ersetzen',
  'swap.both': 'Beide behalten',
  'swap.replaced': '{title} wurde am {day, date, year} ersetzt. Das alte bleibt einen Tag lang aufgehoben.',
  'swap.undo': 'Das alte zurückholen',
};
