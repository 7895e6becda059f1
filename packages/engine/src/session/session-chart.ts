import { type ActorScope, createActor, type EventObject, type SnapshotFrom } from 'xstate';
import type { Timeline } from '../timeline/timeline.ts';
import { type ChartEvent, sessionMachine } from './session-machine.ts';
import type { SessionView } from './session-view.ts';
import type { Walk } from './walk.ts';

export type { ChartEvent };

/** The statechart in one of its states, with its walk. Plain data: every event gives the next. */
export type Chart = SnapshotFrom<typeof sessionMachine>;

/**
 * The chart in a state.
 * @param value the state
 * @param timeline what is walked
 * @param walk where on it
 * @returns the chart
 */
export function chartIn(value: SessionView['state'], timeline: Timeline, walk: Walk): Chart {
  return sessionMachine.resolveState({ value, context: { timeline, walk } });
}

/**
 * What an event makes of the chart.
 * @param chart before it
 * @param event what happened
 * @returns the chart after it, transitions that need no event included
 */
export function chartAfter(chart: Chart, event: ChartEvent): Chart {
  return sessionMachine.transition(chart, event, scope());
}

let kept: ActorScope<Chart, ChartEvent> | undefined;

/**
 * The surroundings that xstate wants for a transition. The chart has no effects, no children and no clock, so one that does nothing serves every
 * session; an actor a session, and `transition` of xstate, which makes one for each event, take longer than all the rest of it.
 */
function scope(): ActorScope<Chart, ChartEvent> {
  if (kept) return kept;
  const self = createActor(sessionMachine, { input: { steps: [], cues: [], durationMs: 0 } });
  const nothing = () => {};
  const { system, id, sessionId } = self;
  const inert = { logger: nothing, defer: nothing, emit: nothing, stopChild: nothing, actionExecutor: nothing };
  kept = { self, system, id, sessionId, ...inert } as ActorScope<Chart, ChartEvent, typeof system, EventObject>;
  return kept;
}
