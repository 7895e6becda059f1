import type { SessionEvent } from '@larkhold/engine';
import { type DrillAction, isDrawn, type Stand } from './action-of-key.ts';

/**
 * What a press tells the session.
 * @param action what was asked
 * @param stand where the drill was when it was pressed
 * @returns events in order; none for what the session does not answer
 */
export function eventsOf(action: DrillAction, stand: Stand): SessionEvent['type'][] {
  if (action !== 'pauseOrResume') return action === 'begin' || action === 'stop' ? [] : [action];
  if (stand.state === 'paused') return ['resume'];
  // Nobody should be left at full draw while the clock is paused.
  return isDrawn(stand) ? ['letDownNow', 'pause'] : ['pause'];
}
