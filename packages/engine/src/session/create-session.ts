import { createActor } from 'xstate';
import type { DrillRecord, RepRecord, Why } from '../journal/drill-record.ts';
import type { Timeline } from '../timeline/timeline.ts';
import { addToInstant, dayOfInstant } from '../units/instant.ts';
import { type ChartEvent, sessionMachine } from './session-machine.ts';
import { type Ledger, type SessionSnapshot, sessionSnapshotSchema } from './session-snapshot.ts';
import type { SeenEvent, SessionEvent, SessionView } from './session-view.ts';
import { repCountOf, viewer } from './view-session.ts';
import { endsAtMs, isRep } from './walk.ts';

/** How late after a deadline the caller may be before time counts as lost, milliseconds. Own: a hidden page may wake once a second. */
export const GAP_LIMIT_MS = 5_000;

/** What a session is made of. */
export interface SessionInput {
  timeline: Timeline;
  /** The program's title as it is today. */
  program: string;
  /** The program file's id, where it has one. */
  programId?: string;
  /** The instant it starts, ISO 8601 with the archer's offset; its day is the record's day. */
  startedAt: string;
  /** Gives the record's id; called once, and not at all for a session that is resumed. */
  newId: () => string;
  /** How late an advance may come after a deadline, milliseconds. */
  gapLimitMs?: number;
  /** A snapshot of a session of the same timeline; its id, program and start are kept. */
  resumeFrom?: SessionSnapshot;
  /** A hold counts from the moment at which full draw was seen, where it is seen at all. */
  countFromAnchor?: boolean;
  /** Told what a listener threw; the walk goes on. */
  onListenerError?: (error: unknown) => void;
}

/** One run of a timeline on the caller's monotonic clock, milliseconds. */
export interface Session {
  /**
   * Walks to `atMs`, then does what the archer asked; what makes no sense at that moment is ignored. `gap`: time was lost since the last call.
   * An event may be dated before the last call (a press that a busy page handles late): it counts at its own moment, but not before the step
   * under way or the last event began, and the session stays at the moment of the last call.
   * `observe` tells what a witness saw, with its own instant: a let-down in a hold ends the rep there, and the rep keeps beside the clock's
   * time what was seen. What is not seen stays as the clock has it. Where something had moved before an early let-down, its reason is form.
   */
  send(event: SessionEvent | SeenEvent, atMs: number): void;
  /** Walks to `nowMs`. A clock that goes backwards counts as standing still. */
  advance(nowMs: number): void;
  /** The caller's clock at the step's end: advance by then. Undefined while nothing runs. */
  nextDeadlineMs(): number | undefined;
  /** Hears the view after every send and advance. @returns unsubscribe */
  subscribe(fn: (view: SessionView) => void): () => void;
  /** Hears each rep once, the moment it ends. @returns unsubscribe */
  onRep(fn: (rep: RepRecord) => void): () => void;
  view(): SessionView;
  snapshot(): SessionSnapshot;
  /** The drill record so far; `open` until the session ends. */
  record(): DrillRecord;
}

/**
 * Makes a session that walks a timeline. Time comes in as a number; the session has no clock and no timers.
 * @param input timeline, program, start, identity; or a snapshot to go on from
 * @returns the session; after a crash send `gap`, then `resume`, on the new clock
 * @throws RangeError when startedAt is no ISO instant, gapLimitMs is out of range, or resumeFrom belongs to another timeline; TypeError
 *   when resumeFrom is no snapshot
 */
export function createSession(input: SessionInput): Session {
  const { timeline, resumeFrom, gapLimitMs = GAP_LIMIT_MS } = input;
  if (!(gapLimitMs >= 0)) throw new RangeError(`gapLimitMs is ${gapLimitMs}; expected milliseconds, at least 0`);
  if (resumeFrom !== undefined) checkSnapshot(resumeFrom, timeline);
  const { program, programId, startedAt } = resumeFrom ?? input;
  const date = dayOfInstant(startedAt);
  const id = resumeFrom?.id ?? input.newId();
  const prescribedReps = repCountOf(timeline);
  const viewOf = viewer(timeline);
  const views = new Set<(view: SessionView) => void>();
  const repListeners = new Set<(rep: RepRecord) => void>();

  const actor = createActor(sessionMachine, { input: timeline, snapshot: resumeFrom && chartOf(timeline, resumeFrom) });
  let chart = actor.start().getSnapshot();
  let ledger: Ledger = { ...(resumeFrom?.ledger ?? { elapsedMs: 0, livedMs: 0 }) };

  const seenMs = () => ledger.seenMs ?? 0;
  const view = () => viewOf(chart.value, chart.context.walk, seenMs());

  function pass(toMs: number) {
    if (toMs > seenMs()) setClock(toMs);
  }

  /** Moves the clock within the present state, also back: what had passed meanwhile is taken off again. */
  function setClock(toMs: number) {
    const spanMs = toMs - seenMs();
    const livedMs = Math.max(0, chart.value === 'running' ? ledger.livedMs + spanMs : ledger.livedMs);
    ledger = { ...ledger, seenMs: toMs, elapsedMs: Math.max(0, ledger.elapsedMs + spanMs), livedMs };
  }

  function react(event: ChartEvent) {
    if (chart.status === 'done') return;
    const endedBefore = chart.context.walk.reps.length;
    actor.send(event);
    chart = actor.getSnapshot();
    for (const rep of chart.context.walk.reps.slice(endedBefore)) tell(repListeners, rep);
  }

  function walkTo(nowMs: number, limitMs = gapLimitMs) {
    const { walk } = chart.context;
    if (chart.value === 'running' && nowMs - walk.dueAtMs > limitMs) {
      react({ type: 'gap', atMs: seenMs() });
      ledger = { ...ledger, sinceMs: seenMs() };
    } else if (chart.value === 'running' && nowMs >= walk.dueAtMs) {
      pass(Math.min(nowMs, endsAtMs(timeline, walk)));
      react({ type: 'tick', atMs: nowMs });
      const { step, dueAtMs, stepMs } = chart.context.walk;
      ledger = { ...ledger, sinceMs: step === undefined ? seenMs() : dueAtMs - stepMs };
    }
    if (chart.value === 'running' || chart.value === 'paused') pass(nowMs);
  }

  /** Does what was asked at its own moment, then goes on to where the session was before: the caller was there, so none of that is lost. */
  function askAt(type: SessionEvent['type'], atMs: number, why?: Why) {
    const knownMs = seenMs();
    const sinceMs = ledger.sinceMs ?? knownMs;
    const isLive = chart.value === 'running' || chart.value === 'paused';
    // While nothing runs no deadline hangs on the clock, so one that begins anew (a reloaded page) is taken as it is.
    const isNewClock = chart.value === 'paused' && atMs < sinceMs;
    if (isNewClock) ledger = { ...ledger, seenMs: atMs };
    else if (isLive && atMs < knownMs) setClock(Math.max(atMs, sinceMs));
    else walkTo(atMs);
    react({ type, atMs: seenMs(), why });
    ledger = { ...ledger, sinceMs: seenMs() };
    if (!isNewClock) walkTo(Math.max(knownMs, seenMs()), Number.POSITIVE_INFINITY);
  }

  /** A let-down that is seen in a rep ends it, as a press would; what was seen is written beside the rep. */
  function observe({ seen, atMs: seenAtMs, form }: SeenEvent, nowMs: number) {
    checkNow(seenAtMs);
    walkTo(nowMs);
    if (chart.value !== 'running' || seenAtMs > seenMs()) return;
    const { step } = chart.context.walk;
    const fromAnchor = input.countFromAnchor === true || step?.countFrom === 'anchor';
    if (seen === 'drawn') react({ type: 'drawn', atMs: seenMs(), seenAtMs, fromAnchor });
    else {
      const { walk } = chart.context;
      const why = form && form.moved.length > 0 ? 'form' : undefined;
      if (isRep(walk) && walk.drawnAtMs !== undefined) askAt('letDownNow', seenAtMs, why);
      react({ type: 'letDown', atMs: seenMs(), seenAtMs, form });
    }
  }

  function tell<T>(listeners: ReadonlySet<(value: T) => void>, value: T) {
    for (const listener of [...listeners]) {
      try {
        listener(value);
      } catch (error) {
        input.onListenerError?.(error);
      }
    }
  }

  function tellView() {
    if (views.size > 0) tell(views, view());
  }

  return {
    send(event, atMs) {
      const { type } = event;
      checkNow(atMs);
      if (type === 'observe') {
        observe(event, atMs);
      } else if (chart.value === 'waiting') {
        ledger = { ...ledger, seenMs: atMs, sinceMs: atMs };
        react({ type, atMs });
      } else if (type === 'gap') {
        if (chart.value === 'running') react({ type, atMs: seenMs() });
        // What passed since the last call is unknown, the clock may even be another one: count from here.
        if (chart.value === 'paused') ledger = { ...ledger, seenMs: atMs, sinceMs: atMs };
      } else {
        askAt(type, atMs, 'why' in event ? event.why : undefined);
      }
      walkTo(seenMs()); // a step of no length ends where it begins
      tellView();
    },
    advance(nowMs) {
      checkNow(nowMs);
      walkTo(nowMs);
      tellView();
    },
    nextDeadlineMs: () => (chart.value === 'running' ? chart.context.walk.dueAtMs : undefined),
    subscribe: (fn) => listen(views, fn),
    onRep: (fn) => listen(repListeners, fn),
    view,
    snapshot() {
      const { value: state, context } = chart;
      const place = { timelineMs: timeline.durationMs, stepCount: timeline.steps.length };
      const stored = {
        version: 1,
        id,
        program,
        programId,
        startedAt,
        ...place,
        state,
        walk: context.walk,
        ledger,
      } as const;
      return structuredCopy(stored);
    },
    record() {
      const isOpen = chart.value !== 'done' && chart.value !== 'stopped';
      return structuredCopy({
        id,
        program,
        programId,
        date,
        startedAt,
        endedAt: addToInstant(startedAt, wholeMs(ledger.elapsedMs)),
        reps: chart.context.walk.reps,
        prescribedReps,
        durationMs: wholeMs(ledger.livedMs),
        kind: timeline.kind,
        open: isOpen ? (true as const) : undefined,
      });
    },
  };
}

/** The chart in the state in which a snapshot left it. */
function chartOf(timeline: Timeline, { state, walk }: SessionSnapshot) {
  return sessionMachine.resolveState({ value: state, context: { timeline, walk: structuredCopy(walk) } });
}

function checkNow(nowMs: number): void {
  if (!Number.isFinite(nowMs)) throw new RangeError(`nowMs is ${nowMs}; expected a finite number of milliseconds`);
}

function checkSnapshot(snapshot: SessionSnapshot, timeline: Timeline): void {
  const checked = sessionSnapshotSchema.safeParse(snapshot);
  if (!checked.success) {
    const [issue] = checked.error.issues;
    throw new TypeError(`resumeFrom is no session snapshot: ${issue?.path.join('.')}: ${issue?.message}`);
  }
  const { timelineMs, stepCount } = snapshot;
  if (timelineMs !== timeline.durationMs || stepCount !== timeline.steps.length) {
    throw new RangeError(
      `resumeFrom is of a timeline of ${stepCount} steps and ${timelineMs} ms; expected ${timeline.steps.length} and ${timeline.durationMs}`,
    );
  }
}

function listen<T>(listeners: Set<T>, listener: T): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

/** Whole milliseconds passed; the tiny addition undoes what binary fractions take away. */
function wholeMs(spanMs: number): number {
  return Math.floor(spanMs + 1e-6);
}

/** A copy as JSON would give it: nothing shared, and no key without a value. */
function structuredCopy<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}
