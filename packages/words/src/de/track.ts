import type { track as en } from '../en/track.ts';

/** Cues as a sound file. */
export const track: Readonly<Record<keyof typeof en, string>> = {
  'track.title': 'Signale als Tondatei',
  'track.about':
    'Die heutigen Signale zu ihrer Zeit, für den gesperrten Bildschirm oder ein anderes Abspielgerät. Ein Druck hält sie nicht an, und sie trägt nichts ein.',
  'track.kind': 'Art',
  'track.webm': 'Opus in WebM, klein',
  'track.wav': 'WAV, läuft überall',
  'track.make': 'Datei anlegen',
  'track.progress': 'Bisher fertig',
  'track.cancel': 'Abbrechen',
  'track.saved': 'Gesichert: {file}, {size, number} MB.',
  'track.cancelled': 'Abgebrochen. Nichts wurde gesichert.',
  'track.cannotKind': 'Nicht angelegt: Dieser Browser kann diese Art nicht schreiben. Wähl WAV.',
  'track.failed': 'Nicht angelegt: {reason}',
};
