import { say } from '@larkhold/words';
import type { PressSource } from './press-source.ts';

/** The buttons of one gamepad that are down. */
export type ButtonsDown = ReadonlySet<number>;

/** How often gamepads are asked, milliseconds: they send no events for buttons. Where there is none, only whether one has come. */
const ASK_MS = 16;
const ASK_FOR_ONE_MS = 500;

/**
 * Which buttons went down between two looks.
 * @param before down at the look before; undefined at a gamepad's first look, when what is down is not a press
 * @param now down now
 * @returns a code for each new button
 */
export function newPresses(before: ButtonsDown | undefined, now: ButtonsDown): string[] {
  if (before === undefined) return [];
  return [...now].filter((button) => !before.has(button)).map((button) => `Gamepad:${button}`);
}

/**
 * The gamepads of this device.
 * @param gamepads asks for the gamepads as they are; the browser's where left out
 * @returns a source of codes such as 'Gamepad:0'; it tells when a gamepad that was listened to has gone, and when one is back
 */
export function gamepadPresses(
  gamepads: () => readonly (Gamepad | null)[] = () => navigator.getGamepads?.() ?? [],
): PressSource {
  return {
    listen(onPress, onTrouble) {
      const downBefore = new Map<number, ButtonsDown>();
      let isMissing = false;
      const look = () => {
        const present = new Set<number>();
        for (const gamepad of gamepads()) {
          if (!gamepad?.connected) continue;
          present.add(gamepad.index);
          const now = new Set(gamepad.buttons.flatMap((button, index) => (button.pressed ? [index] : [])));
          for (const code of newPresses(downBefore.get(gamepad.index), now)) onPress(code, gamepad.timestamp);
          downBefore.set(gamepad.index, now);
        }
        for (const index of [...downBefore.keys()].filter((known) => !present.has(known))) {
          downBefore.delete(index);
          isMissing = true;
          onTrouble?.(say('drill.gamepadGone'));
        }
        if (isMissing && present.size > 0) {
          isMissing = false;
          onTrouble?.(undefined);
        }
      };
      let timer: ReturnType<typeof setTimeout> | undefined;
      const lookOn = () => {
        clearTimeout(timer);
        look();
        timer = setTimeout(lookOn, downBefore.size > 0 || isMissing ? ASK_MS : ASK_FOR_ONE_MS);
      };
      lookOn();
      globalThis.addEventListener?.('gamepadconnected', lookOn);
      return () => {
        clearTimeout(timer);
        globalThis.removeEventListener?.('gamepadconnected', lookOn);
      };
    },
  };
}
