import type { RunnerEnvironment } from './runner-environment.ts';
import type { Look } from './time-watch.ts';

/**
 * What is known at a look at a drill.
 * @param environment the drill's
 * @param nowMs the moment looked at, which may be that of a press that is handled late
 * @param isHeard whether cues are heard
 * @returns clocks, and whether the drill is seen and heard
 */
export function lookOf(environment: RunnerEnvironment, nowMs: number, isHeard: boolean): Look {
  const wallNowMs = environment.wallMs?.();
  const wallMs = wallNowMs === undefined ? undefined : wallNowMs - (environment.nowMs() - nowMs);
  return { nowMs, wallMs, isSeen: environment.isSeen?.() ?? true, isHeard };
}
