import type { CuePlayer } from '@larkhold/cues';
import type { Said } from './press-sound.ts';
import type { RunnerEnvironment } from './runner-environment.ts';
import type { RunnerSettings } from './runner-settings.ts';
import { spokenQuestion } from './spoken-questions.ts';

/** How a drill sounded. */
export type DrillSound = Pick<RunnerSettings, 'soundLevel' | 'voice' | 'quiet' | 'spoken'>;

/** From the drill's end to the first question, so that its last word is over, milliseconds. */
const ASKED_AFTER_MS = 3_000;

/** Asks the questions after a drill aloud, and says the answers back. */
export class AskedAloud {
  #cues: CuePlayer | undefined;
  #cancel: (() => void) | undefined;

  /**
   * Asks the first question once the drill's last word is over. Whatever was asked before falls silent.
   * @param environment sound and frames
   * @param sound how the drill sounded
   */
  begin(environment: RunnerEnvironment, { soundLevel, voice, quiet, spoken }: DrillSound): void {
    this.end();
    this.#cues = environment.createCues({ level: soundLevel, voice, quiet });
    const frame = environment.requestFrame(() => this.say(spokenQuestion('effort', spoken === 'most')), ASKED_AFTER_MS);
    this.#cancel = () => environment.cancelFrame(frame);
  }

  /** Says something now; says nothing unless `begin` was called. */
  say({ kind, words }: Said): void {
    this.#cues?.say(kind, words);
  }

  /** Falls silent and frees the sound. */
  end(): void {
    this.#cancel?.();
    this.#cancel = undefined;
    this.#cues?.close();
    this.#cues = undefined;
  }
}
