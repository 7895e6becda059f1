import type { rep as en } from '../en/rep.ts';

/** Reps as they were logged. */
export const rep: Readonly<Record<keyof typeof en, string>> = {
  'rep.early': '{early, number, seconds} zu früh abgesetzt: als {held, number, seconds} eingetragen.',
  'rep.skipped': 'Ausgelassen: ohne Haltezeit eingetragen.',
  'rep.unsure': 'Hier fehlt Zeit: als unsicher eingetragen. Im Tagebuch kannst du es berichtigen.',
  'rep.drill':
    '{held, number} von {reps, plural, one {# Wiederholung} other {# Wiederholungen}} gehalten. {ms, number, duration} im Vollauszug.',
  'rep.drillSeen':
    '{held, number} von {reps, plural, one {# Wiederholung} other {# Wiederholungen}} gehalten. {ms, number, duration} im Vollauszug, nach der Kamera, wo sie den Halt sah.',
  'rep.place': 'Wiederholung {rep, number}',
  'rep.placeInSet': 'Satz {set, number}, Wiederholung {rep, number}',
  'rep.placeInBlock': 'Block {block, number}, Wiederholung {rep, number}',
  'rep.placeInBlockAndSet': 'Block {block, number}, Satz {set, number}, Wiederholung {rep, number}',
  'rep.otherHand': '{place}, andere Hand',
};
