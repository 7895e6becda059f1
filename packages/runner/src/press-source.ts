/**
 * Something that the archer presses without a hand on the screen. Its codes are listed beside key codes in the archer's keys:
 * 'Gamepad:0' is a gamepad's first button, 'Headset:playpause' a headset's, 'Clap' a clap or a loud click.
 */
export interface PressSource {
  /**
   * Begins to listen.
   * @param onPress hears the code of each press, once a press, and when it happened on the page's clock (`performance.now`), milliseconds,
   *   where the device tells
   * @param onTrouble hears in plain words when presses may go unheard, and undefined once they are heard (again)
   * @returns a function that ends the listening and lets go of the device
   */
  listen(
    onPress: (code: string, stampMs?: number) => void,
    onTrouble?: (message: string | undefined) => void,
  ): () => void;
}

/** Within this time the same press is heard as one, milliseconds. */
export const SAME_PRESS_MS = 300;

/**
 * Lets each code through once, however often a worn switch or an echo repeats it.
 * @param nowMs the page clock, milliseconds
 * @returns a function that tells whether a press counts; it takes the code, and when it was pressed if that is not now
 */
export function createPressGuard(nowMs: () => number): (code: string, atMs?: number) => boolean {
  const heardAtMs = new Map<string, number>();
  return (code, atMs = nowMs()) => {
    const beforeMs = heardAtMs.get(code);
    if (beforeMs !== undefined && atMs - beforeMs < SAME_PRESS_MS) return false;
    heardAtMs.set(code, atMs);
    return true;
  };
}
