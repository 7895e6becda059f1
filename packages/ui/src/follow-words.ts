import { onWordsChange } from '@larkhold/words';
import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Draws an element again when the language changes. For elements that another page may hold: the app draws its places anew by itself. */
export class FollowWords implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #end: (() => void) | undefined;

  /** @param host the element */
  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#end = onWordsChange(() => this.#host.requestUpdate());
  }

  hostDisconnected(): void {
    this.#end?.();
  }
}
