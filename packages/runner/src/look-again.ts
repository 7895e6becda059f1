import type { RunnerEnvironment } from './runner-environment.ts';

/** A look that comes this much too late found the page busy: presses that wait are handled before the drill walks on, milliseconds. */
const BUSY_MS = 300;

/** Looks at a drill again when something can have changed, one look at a time. */
export class LookAgain {
  readonly #environment: RunnerEnvironment;
  readonly #look: () => void;
  #frame: number | undefined;
  #isClosed = false;

  /**
   * @param environment the drill's
   * @param look what is done then
   */
  constructor(environment: RunnerEnvironment, look: () => void) {
    this.#environment = environment;
    this.#look = look;
  }

  /** @param afterMs when to look, in place of the earlier request; infinity for never */
  after(afterMs: number): void {
    const environment = this.#environment;
    this.#cancel();
    if (this.#isClosed || afterMs === Number.POSITIVE_INFINITY) return;
    const nowMs = environment.nowMs();
    this.#frame = environment.requestFrame(() => {
      this.#frame = undefined;
      const isBusy = environment.nowMs() - nowMs - afterMs > BUSY_MS;
      if (!isBusy || !environment.afterPresses) this.#look();
      // A let-down that was pressed while the page was busy comes before the end of the hold that it cut short.
      else environment.afterPresses(() => this.#isClosed || this.#look());
    }, afterMs);
  }

  /** Looks no more. */
  close(): void {
    this.#cancel();
    this.#isClosed = true;
  }

  #cancel(): void {
    if (this.#frame !== undefined) this.#environment.cancelFrame(this.#frame);
    this.#frame = undefined;
  }
}
