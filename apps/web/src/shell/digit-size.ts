import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { measureDigitPx } from './measured-digits.ts';

/** How large the digits of a hold get on this screen, measured again when it is turned or resized. */
export class DigitSize implements ReactiveController {
  /** Their font size, CSS pixels; undefined before it is known. */
  digitPx: number | undefined;
  readonly #host: ReactiveControllerHost;
  readonly #layout: () => 'bow' | 'numbers' | undefined;
  #measured: 'bow' | 'numbers' | undefined;

  /**
   * @param host the element that shows the result
   * @param layout what the display gives its room to, as it is set now
   */
  constructor(host: ReactiveControllerHost, layout: () => 'bow' | 'numbers' | undefined) {
    this.#host = host;
    this.#layout = layout;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('resize', this.#measure);
    void this.#measure();
  }

  hostDisconnected(): void {
    window.removeEventListener('resize', this.#measure);
  }

  hostUpdated(): void {
    if (this.#measured !== this.#layout()) void this.#measure();
  }

  readonly #measure = async (): Promise<void> => {
    this.#measured = this.#layout();
    this.digitPx = await measureDigitPx(window.innerWidth, window.innerHeight, this.#measured);
    this.#host.requestUpdate();
  };
}
