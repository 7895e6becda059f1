/** How long the question whether to stop is shown, milliseconds. */
const STOP_QUESTION_MS = 3_000;

/** The question whether a drill should stop: asked by one press, answered by a second one while it is on the screen. */
export class StopQuestion {
  #untilMs: number | undefined;

  /** Until when it is shown; undefined where it is not. */
  get untilMs(): number | undefined {
    return this.#untilMs;
  }

  /**
   * A press that asks, or answers.
   * @param atMs when it was pressed
   * @param nowMs when it is handled
   * @returns whether it answers: yes, stop. A press from before the question was shown is no answer to it
   */
  press(atMs: number, nowMs: number): boolean {
    const untilMs = this.#untilMs;
    const isAnswer = untilMs !== undefined && atMs >= untilMs - STOP_QUESTION_MS && atMs <= untilMs;
    this.#untilMs = isAnswer ? undefined : nowMs + STOP_QUESTION_MS;
    return isAnswer;
  }

  /** Takes it back. */
  close(): void {
    this.#untilMs = undefined;
  }
}
