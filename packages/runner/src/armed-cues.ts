import type { CuePlayer, SoundCue } from '@larkhold/cues';
import type { SessionView, Timeline } from '@larkhold/engine';
import { whyCue } from './why-asked.ts';

/** Cues are not scheduled again when the origin moved by no more than this, milliseconds. */
const SAME_ORIGIN_MS = 1;

/** Keeps a drill's cues scheduled where the session is: ahead while it runs, none in a pause. */
export class ArmedCues {
  readonly #cues: CuePlayer;
  readonly #timeline: Timeline;
  readonly #asksAloud: boolean;
  #originMs: number | undefined;

  /**
   * @param cues the player
   * @param timeline the drill's
   * @param asksAloud whether a hold that was let down early is asked about
   */
  constructor(cues: CuePlayer, timeline: Timeline, asksAloud: boolean) {
    this.#cues = cues;
    this.#timeline = timeline;
    this.#asksAloud = asksAloud;
  }

  /** @param view where the session is */
  follow(view: SessionView): void {
    const { originMs } = view;
    if (view.state === 'running' && originMs !== undefined) {
      if (this.#originMs !== undefined && Math.abs(originMs - this.#originMs) <= SAME_ORIGIN_MS) return;
      this.#originMs = originMs;
      // A part of a millisecond is the binary fractions', not a cue that is over.
      const from = view.offsetMs - SAME_ORIGIN_MS;
      const cues: SoundCue[] = this.#timeline.cues.filter((cue) => cue.atMs >= from);
      const question = this.#asksAloud ? whyCue(this.#timeline, view) : undefined;
      this.#cues.arm(question === undefined ? cues : [...cues, question], originMs);
    } else if (this.#originMs !== undefined) {
      this.#originMs = undefined;
      // At the end the last word is only just beginning.
      if (view.state !== 'done') this.#cues.disarm();
    }
  }
}
