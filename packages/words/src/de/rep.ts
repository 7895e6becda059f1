import type { rep as en } from '../en/rep.ts';

/** Reps as they were logged. */
export const rep: Readonly<Record<keyof typeof en, string>> = {
  'rep.early': '{early, number, seconds} zu früh abgesetzt: als {held, number, seconds} eingetragen.',
  'rep.skipped': 'Ausgelassen: ohne Haltezeit eingetragen.',
  'rep.unsure': 'Hier fehlt Zeit: als unsicher eingetragen. Im Tagebuch kannst du es berichtigen.',
};
