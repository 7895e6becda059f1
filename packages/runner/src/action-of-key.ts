import type { SessionView } from '@larkhold/engine';
import type { RunnerSettings } from './runner-settings.ts';

/** What a press asks of a drill. */
export type DrillAction = 'begin' | 'pauseOrResume' | 'letDownNow' | 'skipRep' | 'moreRest' | 'lessRest' | 'stop';

/** As much of a view as a press needs to mean something. */
export type Stand = Pick<SessionView, 'state' | 'step'>;

const FIXED: Readonly<Record<string, DrillAction>> = {
  KeyP: 'pauseOrResume',
  KeyL: 'letDownNow',
  KeyN: 'skipRep',
  KeyR: 'moreRest',
  KeyC: 'lessRest',
  Escape: 'stop',
};

/**
 * What a key means at this moment.
 * @param code `KeyboardEvent.code`
 * @param keys the archer's keys; those come first, then P, L, N, R and Escape
 * @param view where the drill was when it was pressed; undefined before it begins
 * @returns the action, or undefined when the key means nothing now
 */
export function actionOfKey(
  code: string,
  keys: RunnerSettings['keys'],
  view: Stand | undefined,
): DrillAction | undefined {
  if (code === 'Escape' || keys.stop?.includes(code)) return view ? 'stop' : undefined;
  if (view === undefined || view.state === 'waiting') return keys.begin.includes(code) ? 'begin' : undefined;
  if (view.state === 'done' || view.state === 'stopped') return undefined;
  // One key for everything (a pedal, the space bar) has to mean the safe thing while the bow is drawn.
  const steersAlone = code === 'Space' || (keys.begin.includes(code) && keys.pause.includes(code));
  if (steersAlone && isDrawn(view)) return 'letDownNow';
  if (code === 'Space' || keys.pause.includes(code)) return 'pauseOrResume';
  if (keys.letDownNow.includes(code)) return 'letDownNow';
  if (keys.skipRep.includes(code)) return 'skipRep';
  if (keys.moreRest.includes(code)) return 'moreRest';
  if (keys.lessRest?.includes(code)) return 'lessRest';
  return FIXED[code];
}

/**
 * Whether the bow is being drawn or held.
 * @param view where the drill is
 * @returns true in a running draw or hold
 */
export function isDrawn(view: Stand): boolean {
  return view.state === 'running' && (view.step?.kind === 'draw' || view.step?.kind === 'hold');
}

/**
 * Whether a drill has begun and is not over.
 * @param view where the drill is
 * @returns true also in a pause
 */
export function isUnderWay({ state }: Stand): boolean {
  return state === 'running' || state === 'paused';
}
