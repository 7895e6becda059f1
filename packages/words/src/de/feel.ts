import type { feel as en } from '../en/feel.ts';

/** How the archer felt, 1 to 5. */
export const feel: Readonly<Record<keyof typeof en, string>> = {
  'feel.poor': 'Schlecht',
  'feel.flat': 'Matt',
  'feel.allRight': 'Okay',
  'feel.good': 'Gut',
  'feel.veryGood': 'Sehr gut',
  'feel.felt':
    '{step, select, poor {fühlte sich schlecht an} flat {fühlte sich matt an} allRight {fühlte sich in Ordnung an} good {fühlte sich gut an} veryGood {fühlte sich sehr gut an} other {}}',
};
