import type { PressSource } from './press-source.ts';

/** The buttons of a headset, by the names that browsers give them. Play and pause are one button on most. */
const BUTTONS = [
  ['play', 'Headset:playpause'],
  ['pause', 'Headset:playpause'],
  ['nexttrack', 'Headset:next'],
  ['previoustrack', 'Headset:previous'],
] as const;

const PRESSES = ['pointerdown', 'keydown'] as const;

/** Browsers hand headset buttons only to a page that plays something of at least five seconds. */
const SILENCE_SECONDS = 10;
const SILENCE_HZ = 8000;

/**
 * The buttons of a headset or an earphone's cable, as far as the browser hands them over.
 * @param title what the device's own controls show meanwhile
 * @returns a source of codes such as 'Headset:playpause'; silent where the browser has no media session
 */
export function headsetPresses(title: string): PressSource {
  return {
    listen(onPress) {
      const session = globalThis.navigator?.mediaSession;
      if (!session) return () => undefined;
      const silence = document.createElement('audio');
      const url = URL.createObjectURL(silentSound());
      silence.src = url;
      silence.loop = true;
      const play = () => silence.play().then(waitNoMore, () => undefined);
      const waitNoMore = () => {
        for (const press of PRESSES) window.removeEventListener(press, play, { capture: true });
      };
      // Refused without a press; the next press lets it through.
      for (const press of PRESSES) window.addEventListener(press, play, { capture: true });
      void play();
      if ('MediaMetadata' in globalThis) session.metadata = new MediaMetadata({ title });
      for (const [action, code] of BUTTONS) setHandler(session, action, () => onPress(code));
      return () => {
        for (const [action] of BUTTONS) setHandler(session, action, null);
        session.metadata = null;
        waitNoMore();
        silence.pause();
        silence.removeAttribute('src');
        URL.revokeObjectURL(url);
      };
    },
  };
}

/** A browser that does not know an action throws. */
function setHandler(session: MediaSession, action: MediaSessionAction, handler: (() => void) | null): void {
  try {
    session.setActionHandler(action, handler);
  } catch {
    return;
  }
}

/** Silence as a WAV: a header, and samples in the middle. */
function silentSound(): Blob {
  const count = SILENCE_SECONDS * SILENCE_HZ;
  const view = new DataView(new ArrayBuffer(44 + count));
  const text = (at: number, words: string) => {
    for (const [index, sign] of [...words].entries()) view.setUint8(at + index, sign.charCodeAt(0));
  };
  text(0, 'RIFF');
  view.setUint32(4, 36 + count, true);
  text(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, SILENCE_HZ, true);
  view.setUint32(28, SILENCE_HZ, true);
  view.setUint16(32, 1, true);
  view.setUint16(34, 8, true);
  text(36, 'data');
  view.setUint32(40, count, true);
  new Uint8Array(view.buffer, 44).fill(128);
  return new Blob([view.buffer], { type: 'audio/wav' });
}
