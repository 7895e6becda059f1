import { phrases, type SoundKind } from '@larkhold/cues';
import type { SessionView } from '@larkhold/engine';
import { type DrillAction, isDrawn } from './action-of-key.ts';

/** What is heard at once. */
export interface Said {
  kind: SoundKind;
  /** In English, as cues bring their words. */
  words: string;
}

/**
 * What a press of the archer is answered with, so that nobody has to look whether it counted. A let-down, and a rep given up, are answered by
 * the timeline's own cue.
 * @param action what was asked
 * @param before where the drill was
 * @param after where it is now
 * @returns the sound, or undefined where the press did nothing or a cue answers it
 */
export function pressSound(action: DrillAction, before: SessionView, after: SessionView): Said | undefined {
  if (before.state === 'running' && after.state === 'paused')
    return isDrawn(before)
      ? { kind: 'letDown', words: `${phrases.letDown}. ${phrases.paused}` }
      : { kind: 'paused', words: phrases.paused };
  if (before.state === 'paused' && after.state === 'running') return { kind: 'goesOn', words: goesOnWords(after) };
  if (after.state === 'stopped') return { kind: 'done', words: phrases.stopped };
  const isChanged = before.msLeft !== after.msLeft || before.stepMs !== after.stepMs || before.step !== after.step;
  if (action === 'moreRest' && after.stepMs > before.stepMs) return { kind: 'moreRest', words: phrases.moreRest };
  if (action === 'lessRest' && after.stepMs < before.stepMs) return { kind: 'lessRest', words: phrases.restCut };
  const hasSkipped = action === 'skipRep' && !isDrawn(before) && isChanged && after.state !== 'done';
  return hasSkipped ? { kind: 'skipped', words: phrases.skipped } : undefined;
}

function goesOnWords({ step }: SessionView): string {
  return step === undefined ? phrases.resumed : `${phrases.resumed}. ${phrases.steps[step.kind]}`;
}
