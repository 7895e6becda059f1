import { gamepadPresses, type PressSource } from '@larkhold/runner';
import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Begins a drill from the line by a gamepad's button that the archer has learned for it. Claps and headsets are heard in a drill only. */
export class GamepadToBegin implements ReactiveController {
  readonly #codes: () => readonly string[];
  readonly #begin: () => void;
  readonly #source: PressSource;
  #end: (() => void) | undefined;

  /**
   * @param host the line
   * @param codes the codes that begin now; none while nothing can begin
   * @param begin called at a press
   * @param source the gamepads; this device's where left out
   */
  constructor(
    host: ReactiveControllerHost,
    codes: () => readonly string[],
    begin: () => void,
    source: PressSource = gamepadPresses(),
  ) {
    this.#codes = codes;
    this.#begin = begin;
    this.#source = source;
    host.addController(this);
  }

  hostUpdated(): void {
    const isWanted = this.#codes().some((code) => code.startsWith('Gamepad:'));
    if (!isWanted) this.hostDisconnected();
    else
      this.#end ??= this.#source.listen((code) => {
        if (this.#codes().includes(code)) this.#begin();
      });
  }

  hostDisconnected(): void {
    this.#end?.();
    this.#end = undefined;
  }
}
