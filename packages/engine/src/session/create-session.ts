import type { DrillRecord, RepRecord, Why } from '../journal/drill-record.ts';
import type { Timeline } from '../timeline/timeline.ts';
import { addToInstant, dayOfInstant } from '../units/instant.ts';
import { type Chart, type ChartEvent, chartAfter, chartIn } from './session-chart.ts';
import { type Ledger, type SessionSnapshot, sessionSnapshotSchema } from './session-snapshot.ts';
import type { SeenEvent, SessionEvent, SessionView } from './session-view.ts';
import { repCountOf, viewer } from './view-session.ts';
import { endDueSteps, endsAtMs, isRep, stand, type Walk } from './walk.ts';

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

  let chart: Chart | undefined;
  let state: SessionView['state'] = resumeFrom?.state ?? 'waiting';
  let walk: Walk = resumeFrom ? structuredCopy(resumeFrom.walk) : stand(timeline);
  // With a place for every key from the start: keys that come later make a day of a life, from prescription to record, a tenth slower.
  const ledger: Ledger = { elapsedMs: 0, livedMs: 0, seenMs: undefined, sinceMs: undefined, ...resumeFrom?.ledger };

  const seenMs = () => ledger.seenMs ?? 0;
  const view = () => viewOf(state, walk, seenMs());

  function pass(toMs: number) {
    if (toMs > seenMs()) setClock(toMs);
  }

  /** Moves the clock within the present state, also back: what had passed meanwhile is subtracted again. */
  function setClock(toMs: number) {
    const spanMs = toMs - seenMs();
    ledger.livedMs = Math.max(0, state === 'running' ? ledger.livedMs + spanMs : ledger.livedMs);
    ledger.elapsedMs = Math.max(0, ledger.elapsedMs + spanMs);
    ledger.seenMs = toMs;
  }

  function react(event: ChartEvent) {
    if (state === 'done' || state === 'stopped') return;
    // Made when it is first asked; for most of a session it is not.
    const before = chart ?? chartIn(state, timeline, walk);
    chart = chartAfter(before, { ...event, walk });
    const { value, context } = chart;
    state = value;
    // Where nothing was done the chart's walk is the one that it left last.
    if (context.walk !== before.context.walk) goTo(context.walk);
  }

  function goTo(next: Walk) {
    const endedBefore = walk.reps.length;
    walk = next;
    for (let at = endedBefore; at < next.reps.length; at++) tell(repListeners, next.reps[at]!);
  }

  /** Ends the steps that are due. While one is left under way the chart's state stays, and it need not be asked. */
  function tick(nowMs: number) {
    const next = endDueSteps(timeline, walk, nowMs);
    if (next.step === undefined) react({ type: 'tick', atMs: nowMs });
    else goTo(next);
  }

  function walkTo(nowMs: number, limitMs = gapLimitMs) {
    if (state === 'running' && nowMs - walk.dueAtMs > limitMs) {
      react({ type: 'gap', atMs: seenMs() });
      ledger.sinceMs = seenMs();
    } else if (state === 'running' && nowMs >= walk.dueAtMs) {
      pass(Math.min(nowMs, endsAtMs(timeline, walk)));
      tick(nowMs);
      const { step, dueAtMs, stepMs } = walk;
      ledger.sinceMs = step === undefined ? seenMs() : dueAtMs - stepMs;
    }
    if (isLive()) pass(nowMs);
  }

  const isLive = () => state === 'running' || state === 'paused';

  /** Does what was asked at its own moment, then goes on to where the session was before: the caller was there, so none of that is lost. */
  function askAt(type: SessionEvent['type'], atMs: number, why?: Why) {
    const knownMs = seenMs();
    const sinceMs = ledger.sinceMs ?? knownMs;
    // While nothing runs no deadline hangs on the clock, so one that begins again (a reloaded page) is accepted as it is.
    const isNewClock = state === 'paused' && atMs < sinceMs;
    if (isNewClock) ledger.seenMs = atMs;
    else if (isLive() && atMs < knownMs) setClock(Math.max(atMs, sinceMs));
    else walkTo(atMs);
    react({ type, atMs: seenMs(), why });
    ledger.sinceMs = seenMs();
    if (!isNewClock) walkTo(Math.max(knownMs, seenMs()), Number.POSITIVE_INFINITY);
  }

  /** A let-down that is seen in a rep ends it, as a press would; what was seen is written beside the rep. */
  function observe({ seen, atMs: seenAtMs, form }: SeenEvent, nowMs: number) {
    checkNow(seenAtMs);
    walkTo(nowMs);
    if (state !== 'running' || seenAtMs > seenMs()) return;
    const fromAnchor = input.countFromAnchor === true || walk.step?.countFrom === 'anchor';
    if (seen === 'drawn') react({ type: 'drawn', atMs: seenMs(), seenAtMs, fromAnchor });
    else {
      const why = form && form.moved.length > 0 ? 'form' : undefined;
      if (isRep(walk) && walk.drawnAtMs !== undefined) askAt('letDownNow', seenAtMs, why);
      react({ type: 'letDown', atMs: seenMs(), seenAtMs, form });
    }
  }

  const isPaused = () => state === 'paused';

  function countFrom(atMs: number) {
    ledger.seenMs = atMs;
    ledger.sinceMs = atMs;
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
      } else if (state === 'waiting') {
        countFrom(atMs);
        react({ type, atMs });
      } else if (type === 'gap') {
        if (state === 'running') react({ type, atMs: seenMs() });
        // What passed since the last call is unknown, the clock may even be another one: count from here.
        if (isPaused()) countFrom(atMs);
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
    nextDeadlineMs: () => (state === 'running' ? walk.dueAtMs : undefined),
    subscribe: (fn) => listen(views, fn),
    onRep: (fn) => listen(repListeners, fn),
    view,
    snapshot() {
      const place = { timelineMs: timeline.durationMs, stepCount: timeline.steps.length };
      const stored = {
        version: 1,
        id,
        program,
        programId,
        startedAt,
        ...place,
        state,
        walk,
        ledger,
      } as const;
      return structuredCopy(stored);
    },
    record() {
      const record: DrillRecord = {
        id,
        program,
        date,
        startedAt,
        endedAt: addToInstant(startedAt, wholeMs(ledger.elapsedMs)),
        reps: walk.reps.map(copyOf),
        prescribedReps,
        durationMs: wholeMs(ledger.livedMs),
      };
      if (programId !== undefined) record.programId = programId;
      if (timeline.kind !== undefined) record.kind = timeline.kind;
      if (state !== 'done' && state !== 'stopped') record.open = true;
      return record;
    },
  };
}

function copyOf(rep: RepRecord): RepRecord {
  const { seen } = rep;
  if (seen === undefined) return { ...rep };
  return { ...rep, seen: { ...seen, ...(seen.moved ? { moved: [...seen.moved] } : {}) } };
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
