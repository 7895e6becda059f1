import type { SessionView } from '@larkhold/engine';
import type { RunnerEnvironment } from './runner-environment.ts';

/** A pause longer than this lets the screen go dark, milliseconds. */
const AWAKE_IN_PAUSE_MS = 10 * 60_000;

/** Keeps the screen on while a drill runs, and for a while in a pause. */
export class ScreenAwake {
  readonly #environment: RunnerEnvironment;
  readonly #tell: (message: string | undefined) => void;
  #letSleep: (() => void) | undefined;
  #pausedAtMs: number | undefined;

  /**
   * @param environment the drill's
   * @param tell hears where the screen can't be kept on
   */
  constructor(environment: RunnerEnvironment, tell: (message: string | undefined) => void) {
    this.#environment = environment;
    this.#tell = tell;
  }

  /** When the screen may go dark in this pause, milliseconds on the environment's clock; undefined while nothing is to be let go. */
  get darkAtMs(): number | undefined {
    return this.#letSleep && this.#pausedAtMs !== undefined ? this.#pausedAtMs + AWAKE_IN_PAUSE_MS : undefined;
  }

  /** @param view where the drill is */
  follow({ state }: Pick<SessionView, 'state'>): void {
    if (state === 'running') {
      this.#pausedAtMs = undefined;
      this.#letSleep ??= this.#environment.keepAwake?.(this.#tell);
    } else if (state === 'paused') {
      this.#pausedAtMs ??= this.#environment.nowMs();
      if (this.#environment.nowMs() - this.#pausedAtMs >= AWAKE_IN_PAUSE_MS) this.rest();
    }
  }

  /** Lets the screen go. */
  rest(): void {
    this.#letSleep?.();
    this.#letSleep = undefined;
  }
}
