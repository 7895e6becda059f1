import { assign, setup } from 'xstate';
import type { Why } from '../journal/drill-record.ts';
import type { Timeline } from '../timeline/timeline.ts';
import { noteDrawn, noteLetDown } from './observe.ts';
import type { SeenForm } from './session-view.ts';
import * as walking from './walk.ts';

/** What the chart reacts to. `atMs` is the caller's clock, for `gap` the last moment that is known. */
export interface ChartEvent {
  type:
    | 'begin'
    | 'tick'
    | 'pause'
    | 'resume'
    | 'letDownNow'
    | 'why'
    | 'skipRep'
    | 'moreRest'
    | 'lessRest'
    | 'stop'
    | 'gap'
    | 'drawn'
    | 'letDown';
  atMs: number;
  /** Of `drawn` and `letDown`: when it was seen to happen. */
  seenAtMs?: number;
  /** Of `drawn`: whether the hold counts from there. */
  fromAnchor?: boolean;
  /** Of `letDown`: what moved in the hold. */
  form?: SeenForm;
  /** Of `letDownNow` and `why`. */
  why?: Why;
  /** Where the session is by now; left out: where the chart last left it. */
  walk?: walking.Walk;
}

/** What the chart carries: the timeline, and where on it the session is. */
export interface ChartContext {
  timeline: Timeline;
  walk: walking.Walk;
}

/**
 * The session's statechart, one for all sessions. It has no clock and no effects: a `tick` ends every step that is due, each at
 * its own absolute deadline, and what ended is in the walk's reps. A tick that leaves a step under way changes no state: whoever walks
 * may take it without the chart, and hand over the walk with the next event. Its input is the timeline.
 */
export const sessionMachine = setup({
  types: { context: {} as ChartContext, events: {} as ChartEvent, input: {} as Timeline },
  guards: {
    isOver: ({ context: { walk } }) => walk.step === undefined,
    endsWalk: (now) => walkOf(now).nextIndex >= now.context.timeline.steps.length,
    isWait: (now) => walking.isWait(walkOf(now)),
    isShort: (now) => walkOf(now).reps.at(-1)?.outcome === 'short',
    isRep: (now) => walking.isRep(walkOf(now)),
  },
  actions: {
    resume: step((_, walk, atMs) => walking.resume(walk, atMs)),
    pause: step((_, walk, atMs) => walking.pause(walk, atMs)),
    endStep: step((timeline, walk) => walking.endStep(timeline, walk)),
    endDueSteps: step((timeline, walk, atMs) => walking.endDueSteps(timeline, walk, atMs)),
    loseTime: step((timeline, walk, atMs) => walking.loseTime(timeline, walk, atMs)),
    letDownNow: step((timeline, walk, atMs, why) => walking.sayWhy(walking.cutRep(timeline, walk, 'short', atMs), why)),
    sayWhy: step((_, walk, __, why) => walking.sayWhy(walk, why)),
    giveUpRep: step((timeline, walk, atMs) => walking.cutRep(timeline, walk, 'skipped', atMs)),
    skipNext: step((timeline, walk, atMs) => walking.skipNext(timeline, walk, atMs)),
    moreRest: step((_, walk, atMs) => walking.addRest(walk, walking.MORE_REST_MS, walk.dueAtMs - atMs)),
    lessRest: step((_, walk, atMs) => walking.cutRest(walk, atMs)),
    stopRunning: step((timeline, walk, atMs) => walking.stop(timeline, walk, walk.dueAtMs - atMs)),
    noteDrawn: assign(({ context, event }) => {
      const { atMs, seenAtMs = atMs, fromAnchor = false } = event;
      return { walk: noteDrawn(context.timeline, walkOf({ context, event }), seenAtMs, atMs, fromAnchor) };
    }),
    noteLetDown: assign(({ context, event }) => {
      const { atMs, seenAtMs = atMs, form } = event;
      return { walk: noteLetDown(walkOf({ context, event }), seenAtMs, form) };
    }),
    stopPaused: step((timeline, walk) => walking.stop(timeline, walk, walk.leftMs)),
  },
}).createMachine({
  id: 'session',
  initial: 'waiting',
  context: ({ input: timeline }) => ({ timeline, walk: walking.stand(timeline) }),
  states: {
    waiting: {
      on: {
        begin: { target: 'running', actions: 'resume' },
        stop: { target: 'stopped', actions: 'stopPaused' },
      },
    },
    running: {
      always: { guard: 'isOver', target: 'done' },
      on: {
        tick: { actions: 'endDueSteps' },
        pause: { target: 'paused', actions: 'pause' },
        letDownNow: { guard: 'isRep', actions: 'letDownNow' },
        skipRep: [
          { guard: 'isRep', actions: 'giveUpRep' },
          { guard: 'isWait', actions: 'skipNext' },
        ],
        why: { guard: 'isShort', actions: 'sayWhy' },
        moreRest: { guard: 'isWait', actions: 'moreRest' },
        lessRest: { guard: 'isWait', actions: 'lessRest' },
        gap: [
          // In the last let-down every rep is written already: nothing is left to ask or to walk.
          { guard: 'endsWalk', target: 'done', actions: 'endStep' },
          { target: 'paused', actions: 'loseTime' },
        ],
        drawn: { guard: 'isRep', actions: 'noteDrawn' },
        letDown: { actions: 'noteLetDown' },
        stop: { target: 'stopped', actions: 'stopRunning' },
      },
    },
    paused: {
      on: {
        why: { guard: 'isShort', actions: 'sayWhy' },
        resume: { target: 'running', actions: 'resume' },
        stop: { target: 'stopped', actions: 'stopPaused' },
      },
    },
    done: { type: 'final' },
    stopped: { type: 'final' },
  },
});

/** An action that gives the next walk. */
function step(next: (timeline: Timeline, walk: walking.Walk, atMs: number, why: Why | undefined) => walking.Walk) {
  return assign<ChartContext, ChartEvent, undefined, ChartEvent, never>({
    walk: ({ context, event }) => next(context.timeline, walkOf({ context, event }), event.atMs, event.why),
  });
}

function walkOf({ context, event }: { context: ChartContext; event: ChartEvent }): walking.Walk {
  return event.walk ?? context.walk;
}
