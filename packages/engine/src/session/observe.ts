import type { Seen } from '../journal/drill-record.ts';
import type { Timeline } from '../timeline/timeline.ts';
import type { SeenForm } from './session-view.ts';
import { enter, isRep, type Walk } from './walk.ts';

/**
 * Full draw was seen. Until a let-down is seen too, nothing of it is written.
 * @param timeline what is walked
 * @param walk where it is
 * @param seenAtMs when full draw was reached, the caller's clock
 * @param nowMs the caller's clock
 * @param fromAnchor whether the hold counts from there: it then ends as much later, or earlier
 * @returns the next walk; the same where no rep is under way
 */
export function noteDrawn(timeline: Timeline, walk: Walk, seenAtMs: number, nowMs: number, fromAnchor: boolean): Walk {
  const { step } = walk;
  if (!isRep(walk) || step === undefined) return walk;
  const noted = { ...walk, drawnAtMs: seenAtMs };
  if (!fromAnchor) return noted;
  const beganAtMs = walk.dueAtMs - walk.stepMs;
  // Full draw before the call is not this rep's: it counts from the call on.
  if (step.kind === 'draw')
    return { ...enter(timeline, noted, walk.nextIndex, Math.max(seenAtMs, beganAtMs)), drawnAtMs: seenAtMs };
  const dueAtMs = Math.max(nowMs, seenAtMs + walk.stepMs);
  return { ...noted, dueAtMs, holdAtMs: dueAtMs - walk.stepMs };
}

/**
 * Writes beside the last rep what was seen of it, once its let-down was seen.
 * @param walk where it is, after that rep
 * @param seenAtMs when the draw gave way, the caller's clock
 * @param form what had moved in the hold, where it could be judged
 * @returns the next walk; the same where full draw was not seen, or the clock's hold is not known
 */
export function noteLetDown(walk: Walk, seenAtMs: number, form?: SeenForm): Walk {
  const { drawnAtMs, holdAtMs, reps } = walk;
  const last = reps.at(-1);
  const rest: Walk = { ...walk, drawnAtMs: undefined };
  if (drawnAtMs === undefined || holdAtMs === undefined || last === undefined || seenAtMs < drawnAtMs) return rest;
  const seen = { fromMs: Math.round(drawnAtMs - holdAtMs), toMs: Math.round(seenAtMs - holdAtMs), ...formOf(form) };
  // A let-down by a press says itself why, or leaves it to what was seen.
  const isForm =
    last.outcome === 'short' && last.why === undefined && seen.moved !== undefined && seen.moved.length > 0;
  return { ...rest, reps: [...reps.slice(0, -1), { ...last, ...(isForm ? { why: 'form' as const } : {}), seen }] };
}

function formOf(form: SeenForm | undefined): Pick<Seen, 'moved' | 'wholeMs'> {
  return form === undefined ? {} : { moved: [...form.moved], wholeMs: Math.max(0, Math.round(form.wholeMs)) };
}
