import type { calls as en } from '../en/calls.ts';

/** What may be said at full draw. */
export const calls: Readonly<Record<keyof typeof en, string>> = {
  'calls.asks': 'Dieses Programm sagt diese Sätze, während du im Vollauszug stehst',
  'calls.readThem':
    'Lies jeden Satz bis zum Ende. Es liegt kein Pfeil auf: Kein Satz darf dich auffordern, die Sehne loszulassen. Bis du sie erlaubst, wird keiner gesagt.',
  'calls.allow': 'Sagen',
  'calls.refuse': 'Nicht sagen',
  'calls.count': 'Sätze im Vollauszug: {said, number} gesagt, {unsaid, number} nicht',
  'calls.allowed': 'Gesagt, weil du sie erlaubt hast:',
  'calls.refused': 'Nicht gesagt, weil du es so gewählt hast:',
  'calls.askAgain': 'Noch einmal fragen',
  'calls.neverSaid': 'Sätze, die nie gesagt werden',
  'calls.order': 'Nicht gesagt: „{found}“ kann man als Aufforderung hören, die Sehne loszulassen.',
  'calls.unseen': 'Nicht gesagt: Darin stehen Zeichen, die niemand sehen kann.',
  'calls.mixed':
    'Nicht gesagt: „{found}“ mischt Buchstaben zweier Alphabete. Was du liest, ist dann vielleicht nicht, was du hörst.',
};
