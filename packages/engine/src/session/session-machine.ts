import { assign, setup } from 'xstate';
import type { Timeline } from '../timeline/timeline.ts';
import * as walking from './walk.ts';

/** What the chart reacts to. `atMs` is the caller's clock, for `gap` the last moment that is known. */
export interface ChartEvent {
  type: 'begin' | 'tick' | 'pause' | 'resume' | 'letDownNow' | 'skipRep' | 'moreRest' | 'stop' | 'gap';
  atMs: number;
}

/**
 * The session's statechart. It has no clock and no effects: one `tick` ends at most one step, at that step's absolute deadline, and
 * what ended stands in the context's reps.
 * @param timeline what is walked
 * @returns an xstate machine for `initialTransition` and `transition`
 */
export function sessionMachine(timeline: Timeline) {
  return setup({
    types: { context: {} as walking.Walk, events: {} as ChartEvent },
    guards: {
      isOver: ({ context }) => context.step === undefined,
      endsWalk: ({ context }) => context.nextIndex >= timeline.steps.length,
      isWait: ({ context }) => walking.isWait(context),
      isRep: ({ context }) => walking.isRep(context),
      skipsLast: ({ context }) =>
        walking.isWait(context) && !timeline.steps.some((step, at) => at > context.nextIndex && step.kind === 'draw'),
    },
    actions: {
      resume: assign(({ context, event }) => walking.resume(context, event.atMs)),
      pause: assign(({ context, event }) => walking.pause(context, event.atMs)),
      endStep: assign(({ context }) => walking.endStep(timeline, context)),
      loseTime: assign(({ context, event }) => walking.loseTime(timeline, context, event.atMs)),
      letDownNow: assign(({ context, event }) => walking.cutRep(timeline, context, 'short', event.atMs)),
      giveUpRep: assign(({ context, event }) => walking.cutRep(timeline, context, 'skipped', event.atMs)),
      skipNext: assign(({ context, event }) => walking.skipNext(timeline, context, event.atMs)),
      moreRest: assign(({ context, event }) =>
        walking.addRest(context, walking.MORE_REST_MS, context.dueAtMs - event.atMs),
      ),
      stopRunning: assign(({ context, event }) => walking.stop(timeline, context, context.dueAtMs - event.atMs)),
      stopPaused: assign(({ context }) => walking.stop(timeline, context, context.leftMs)),
    },
  }).createMachine({
    id: 'session',
    initial: 'waiting',
    context: walking.stand(timeline),
    states: {
      waiting: {
        on: {
          begin: [
            { guard: 'isOver', target: 'done' },
            { target: 'running', actions: 'resume' },
          ],
          stop: { target: 'stopped', actions: 'stopPaused' },
        },
      },
      running: {
        on: {
          tick: [{ guard: 'endsWalk', target: 'done', actions: 'endStep' }, { actions: 'endStep' }],
          pause: { target: 'paused', actions: 'pause' },
          letDownNow: { guard: 'isRep', actions: 'letDownNow' },
          skipRep: [
            { guard: 'isRep', actions: 'giveUpRep' },
            { guard: 'skipsLast', target: 'done', actions: 'skipNext' },
            { guard: 'isWait', actions: 'skipNext' },
          ],
          moreRest: { guard: 'isWait', actions: 'moreRest' },
          gap: [
            // In the last let-down every rep is written already: nothing is left to ask or to walk.
            { guard: 'endsWalk', target: 'done', actions: 'endStep' },
            { target: 'paused', actions: 'loseTime' },
          ],
          stop: { target: 'stopped', actions: 'stopRunning' },
        },
      },
      paused: {
        on: {
          resume: [
            { guard: 'isOver', target: 'done', actions: 'resume' },
            { target: 'running', actions: 'resume' },
          ],
          stop: { target: 'stopped', actions: 'stopPaused' },
        },
      },
      done: { type: 'final' },
      stopped: { type: 'final' },
    },
  });
}
