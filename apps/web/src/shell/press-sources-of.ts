import { gamepadPresses, headsetPresses, microphoneClaps, type PressSource } from '@larkhold/runner';
import type { Kit } from '@larkhold/store';

let made: { key: string; sources: readonly PressSource[] } | undefined;

/**
 * What is listened to beside keys and screen. The same wishes give the same sources, so that a redrawn page does not ask for the microphone
 * again.
 * @param listens what the archer has switched on
 * @param title what a headset's own controls show
 * @returns the sources; nothing is opened before somebody listens
 */
export function pressSourcesOf(listens: Kit['listens'], title: string): readonly PressSource[] {
  const key = JSON.stringify([listens, title]);
  if (made?.key === key) return made.sources;
  const sources: PressSource[] = [];
  if (listens.gamepad) sources.push(gamepadPresses());
  if (listens.headset) sources.push(headsetPresses(title));
  if (listens.microphone) sources.push(microphoneClaps());
  made = { key, sources };
  return sources;
}
