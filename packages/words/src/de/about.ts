import type { about as en } from '../en/about.ts';

/** The page that says what Larkhold is. */
export const about: Readonly<Record<keyof typeof en, string>> = {
  'about.emptyHands': 'Leere Hände',
  'about.done': 'Fertig. {held, number} von {reps, number} gehalten. In der App steht das jetzt im Tagebuch.',
};
