import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createSession, type Session } from './create-session.ts';
import type { SessionEvent } from './session-view.ts';
import {
  begun,
  FIRST_HOLD_MS,
  FIRST_REST_MS,
  HOLD_MS,
  held,
  LET_DOWN_MS,
  made,
  outcomes,
  READY_MS,
  REST_MS,
  send,
  timelineOf,
} from './trial-session.ts';

describe('an event that is handled late', () => {
  it('[S22] a let-down counts when it was pressed, and the let-down begins there', () => {
    const session = begun(FIRST_HOLD_MS + 12_300);
    send(session, 'letDownNow', FIRST_HOLD_MS + 12_000);
    expect(outcomes(session)).toEqual([[0, 0, 'short', 12_000]]);
    expect(session.view()).toMatchObject({ step: { kind: 'letDown' }, msLeft: LET_DOWN_MS - 300 });
    expect(session.nextDeadlineMs()).toBe(FIRST_HOLD_MS + 12_000 + LET_DOWN_MS);
  });

  it('[S22] steps that ended since then are walked through, and nothing of that is a gap', () => {
    const session = begun(FIRST_HOLD_MS + 22_000);
    send(session, 'letDownNow', FIRST_HOLD_MS + 12_000);
    expect(outcomes(session)).toEqual([[0, 0, 'short', 12_000]]);
    expect(session.view()).toMatchObject({
      state: 'running',
      step: { kind: 'rest' },
      msLeft: REST_MS + LET_DOWN_MS - 10_000,
    });
  });

  it('[S22] the time between a pause and its handling is paused, and a drill ends when it was stopped', () => {
    const session = begun(FIRST_REST_MS + 20_000);
    send(session, 'pause', FIRST_REST_MS + 19_000);
    expect(session.view()).toMatchObject({ state: 'paused', msLeft: REST_MS - 19_000 });
    expect(session.record().durationMs).toBe(FIRST_REST_MS + 19_000);
    session.advance(FIRST_REST_MS + 60_000);
    send(session, 'resume', FIRST_REST_MS + 59_500);
    expect(session.view().msLeft).toBe(REST_MS - 19_500);
    expect(session.record().durationMs).toBe(FIRST_REST_MS + 19_500);
    const stopped = begun(FIRST_HOLD_MS + 5000);
    send(stopped, 'stop', FIRST_HOLD_MS + 4000);
    expect(stopped.record()).toMatchObject({
      durationMs: FIRST_HOLD_MS + 4000,
      endedAt: '2026-11-25T06:30:17.000+01:00',
    });
  });

  it('[S23] what was pressed before the step began counts from its beginning: a hold that was reported as held stays held', () => {
    const session = begun(FIRST_HOLD_MS + HOLD_MS + 200);
    send(session, 'letDownNow', FIRST_HOLD_MS + HOLD_MS - 100);
    expect(outcomes(session)).toEqual([held(0, 0)]);
    expect(session.view()).toMatchObject({ step: { kind: 'letDown' }, msLeft: LET_DOWN_MS - 200 });
    const drawing = begun(READY_MS + 300);
    send(drawing, 'pause', READY_MS - 500);
    expect(drawing.view()).toMatchObject({ state: 'paused', step: { kind: 'draw' }, msLeft: 3000 });
  });

  it('[S23] and not before the last event', () => {
    const session = begun(FIRST_HOLD_MS + 10_000);
    send(session, 'pause', FIRST_HOLD_MS + 10_000);
    send(session, 'resume', FIRST_HOLD_MS + 30_000);
    session.advance(FIRST_HOLD_MS + 32_000);
    send(session, 'letDownNow', FIRST_HOLD_MS + 9000);
    expect(outcomes(session)).toEqual([[0, 0, 'short', 10_000]]);
  });
});

const shortMs = fc.integer({ min: 1, max: 12_000 });
const anyTimeline = fc
  .record({
    ...{ sets: fc.integer({ min: 1, max: 2 }), reps: fc.integer({ min: 1, max: 3 }) },
    ...{ drawMs: shortMs, holdMs: shortMs, letDownMs: shortMs, restMs: shortMs, setRestMs: shortMs },
  })
  .map((block) => timelineOf(block));
const asked = ['letDownNow', 'skipRep', 'moreRest', 'lessRest', 'pause', 'resume', 'resume'] as const;
const anyScript = fc.array(
  fc.record({
    ...{ waitMs: fc.integer({ min: 0, max: 9000 }), lateMs: fc.integer({ min: 0, max: 4000 }) },
    type: fc.constantFrom<SessionEvent['type']>(...asked),
  }),
  { maxLength: 20 },
);

/** Plays a script to its end; `before` sees the session just before each event. */
function play(
  session: Session,
  script: typeof anyScript extends fc.Arbitrary<infer T> ? T : never,
  before: (at: number) => void,
) {
  let nowMs = 1000;
  send(session, 'begin', nowMs);
  const walk = (toMs: number) => {
    for (; nowMs < toMs; nowMs = Math.min(toMs, nowMs + 1000)) session.advance(nowMs);
    session.advance(toMs);
  };
  for (const [index, { waitMs, type }] of script.entries()) {
    walk(nowMs + waitMs);
    before(index);
    send(session, type, nowMs);
  }
  send(session, 'resume', nowMs);
  walk(nowMs + 200_000);
  if (session.view().state !== 'done') send(session, 'stop', nowMs);
}

describe('whenever a press is handled', () => {
  it('[S22] within its step: the record is the same as if it had been handled in time', () => {
    fc.assert(
      fc.property(anyTimeline, anyScript, (timeline, script) => {
        const inTime = made(timeline);
        play(inTime, script, () => undefined);
        const late = made(timeline);
        play(late, script, (index) => {
          const line = script[index];
          const nextWaitMs = script[index + 1]?.waitMs ?? 9000;
          const seenMs = late.snapshot().ledger.seenMs ?? 0;
          const leftMs = (late.nextDeadlineMs() ?? Number.POSITIVE_INFINITY) - seenMs - 1;
          late.advance(seenMs + Math.max(0, Math.min(line?.lateMs ?? 0, nextWaitMs, leftMs)));
        });
        expect(late.record()).toEqual(inTime.record());
      }),
      { seed: 22, numRuns: 300 },
    );
  });

  it('[S23] whatever its date: no reported rep changes, and no more is held than time passed', () => {
    fc.assert(
      fc.property(anyTimeline, anyScript, fc.array(fc.integer({ min: -20_000, max: 0 })), (timeline, script, dates) => {
        const session = createSession({ timeline, program: 'T', startedAt: '2026-11-25T06:30:00Z', newId: () => 'a' });
        const told: unknown[] = [];
        session.onRep((rep) => told.push(rep));
        let nowMs = 1000;
        send(session, 'begin', nowMs);
        for (const [index, { waitMs, type }] of script.entries()) {
          for (const toMs = nowMs + waitMs; nowMs < toMs; nowMs = Math.min(toMs, nowMs + 1000)) session.advance(nowMs);
          session.advance(nowMs);
          const isRunning = session.view().state === 'running';
          const before = [...told];
          send(session, type, nowMs + (isRunning ? (dates[index] ?? 0) : 0));
          expect(told.slice(0, before.length)).toEqual(before);
          expect(session.snapshot().ledger.seenMs).toBeGreaterThanOrEqual(session.view().state === 'done' ? 0 : nowMs);
          expect(session.record().reps).toEqual(told);
          const heldMs = session.record().reps.reduce((sumMs, rep) => sumMs + rep.heldMs, 0);
          expect(heldMs).toBeLessThanOrEqual(session.record().durationMs ?? 0);
        }
      }),
      { seed: 23, numRuns: 300 },
    );
  });
});
