import type { Cue, CueKind } from '@larkhold/engine';

/**
 * What answers a press, or asks for one. `paused`, `goesOn`, `skipped`, `moreRest`, `lessRest`: done as asked; `stopAsked`: asks whether to
 * stop; `question`: asks for an answer; `answer`: an answer was heard.
 */
export const pressSounds = [
  ...(['paused', 'goesOn', 'skipped', 'moreRest', 'lessRest'] as const),
  ...(['stopAsked', 'question', 'answer'] as const),
] as const;
/** One of `pressSounds`. */
export type PressSound = (typeof pressSounds)[number];

/** Everything that has a sound of its own. */
export type SoundKind = CueKind | PressSound;

/** A cue of a timeline, or a sound beside them, at an offset in milliseconds. */
export interface SoundCue extends Omit<Cue, 'kind'> {
  kind: SoundKind;
}
