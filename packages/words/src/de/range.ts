import type { range as en } from '../en/range.ts';

/** What to look at before arrows are shot at home. */
export const range: Readonly<Record<keyof typeof en, string>> = {
  'range.shooting': 'Schießen zu Hause',
  'range.question': 'Schießt du zu Hause?',
  'range.rules': 'Örtliche Regeln und die des Vereins gehen vor. Prüf Pfeilfang, Umgebung, Unbeteiligte, Licht.',
  'range.ifNot': 'Trifft eine Zeile nicht zu, schieß nicht.',
  'range.namePlace': 'Gib dem Ort einen Namen, dann kannst du das für ihn wegräumen.',
  'range.checked': 'Geprüft: für {place} wegräumen',
  'range.backstop': 'Pfeilfang: Er hält jeden Pfeil auf, auch einen, der die Scheibe verfehlt.',
  'range.surroundings': 'Umgebung: nichts und niemand dahinter, daneben oder darüber.',
  'range.bystanders': 'Unbeteiligte: Menschen und Tiere sind hinter der Linie und wissen Bescheid.',
  'range.light': 'Licht: Scheibe und Boden davor sind gut beleuchtet.',
};
