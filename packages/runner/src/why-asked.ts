import { phrases, type SoundCue } from '@larkhold/cues';
import type { RepRecord, SessionView, Timeline } from '@larkhold/engine';
import type { Said } from './press-sound.ts';

const reasons = ['form', 'tired', 'interrupted'] as const;

/** From the rest's beginning to the question, so that its own word is over, milliseconds. */
const AFTER_REST_MS = 1_500;
/** Shortest rest in which there is room for the question, the answer and the call for the next draw, milliseconds. Own, tried. */
const LEAST_REST_MS = 15_000;

/**
 * The question that a rest begins with when the hold before it was let down early.
 * @param timeline of the drill
 * @param view where the drill is: in that let-down
 * @returns the question at its offset; undefined where there is nothing to ask, or no room
 */
export function whyCue(timeline: Timeline, { step, next, lastRep }: SessionView): SoundCue | undefined {
  if (step?.kind !== 'letDown' || !isUnexplained(lastRep)) return undefined;
  const isRest = next?.kind === 'rest' || next?.kind === 'setRest';
  if (!isRest || next.durationMs < LEAST_REST_MS) return undefined;
  const atMs = next.startMs + AFTER_REST_MS;
  const isFree = timeline.cues.every((cue) => cue.kind !== 'mark' || Math.abs(cue.atMs - atMs) > AFTER_REST_MS);
  return isFree ? { atMs, kind: 'question', words: phrases.whyAsked } : undefined;
}

/**
 * The answer that a press of the let-down key means in a rest: each press gives the next reason, and at last none.
 * @param view where the drill is
 * @returns the reason with what is said of it; undefined where a press means nothing of the kind
 */
export function nextWhy({ state, step, lastRep }: SessionView): { why: RepRecord['why']; said: Said } | undefined {
  const isRest = step?.kind === 'rest' || step?.kind === 'setRest';
  if (state !== 'running' || !isRest || lastRep?.outcome !== 'short') return undefined;
  const why = reasons[lastRep.why === undefined ? 0 : reasons.indexOf(lastRep.why) + 1];
  return { why, said: { kind: 'answer', words: why === undefined ? phrases.noAnswer : phrases.reasons[why] } };
}

function isUnexplained(rep: RepRecord | undefined): boolean {
  return rep?.outcome === 'short' && rep.why === undefined;
}
