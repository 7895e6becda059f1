import { describe, expect, it } from 'vitest';
import {
  begun,
  DRAW_MS,
  FIRST_HOLD_MS,
  FIRST_REST_MS,
  HOLD_MS,
  made,
  READY_MS,
  REP_MS,
  REST_MS,
  SET_REST_MS,
  send,
  timelineOf,
} from './trial-session.ts';

describe('walking', () => {
  it('[S1] nothing runs before begin, which sets the origin', () => {
    const session = made();
    session.advance(50_000);
    for (const type of ['pause', 'resume', 'letDownNow', 'skipRep', 'moreRest', 'gap'] as const)
      send(session, type, 60_000);
    expect(session.view()).toMatchObject({ state: 'waiting', msLeft: READY_MS, step: { kind: 'ready' } });
    expect(session.view().originMs).toBeUndefined();
    expect(session.nextDeadlineMs()).toBeUndefined();
    send(session, 'begin', 70_000);
    expect(session.view()).toMatchObject({ state: 'running', originMs: 70_000, offsetMs: 0, next: { kind: 'draw' } });
    expect(session.nextDeadlineMs()).toBe(70_000 + READY_MS);
  });

  it('[S1] a session that never began can be stopped', () => {
    const session = made();
    send(session, 'stop', 5);
    expect(session.view().state).toBe('stopped');
    expect(session.record().reps).toEqual([]);
  });

  it('[S2] lateness is not passed on', () => {
    const session = made();
    send(session, 'begin', 0);
    session.advance(READY_MS + 4000); // four seconds late: the draw is over too
    expect(session.view()).toMatchObject({ step: { kind: 'hold' }, originMs: 0, msLeft: HOLD_MS - 1000 });
    expect(session.nextDeadlineMs()).toBe(FIRST_HOLD_MS + HOLD_MS);
  });

  it('[S2] a timeline without steps is done at once', () => {
    const session = made({ steps: [], cues: [], durationMs: 0 });
    send(session, 'begin', 0);
    expect(session.view().state).toBe('done');
  });

  it('[S2] a step of no length ends where it begins', () => {
    const session = begun(FIRST_HOLD_MS + 1000, timelineOf({ letDownMs: 0 }));
    send(session, 'letDownNow', FIRST_HOLD_MS + 1000);
    expect(session.view()).toMatchObject({ step: { kind: 'rest' }, msLeft: REST_MS });
  });

  it('[S3] each rep is reported once, when its hold ends', () => {
    const session = made();
    const told: string[] = [];
    let nowMs = 0;
    session.onRep((rep) => told.push(`${rep.set}.${rep.rep} ${rep.outcome} ${rep.heldMs} at ${nowMs}`));
    send(session, 'begin', 0);
    for (; nowMs <= 300_000; nowMs += 500) session.advance(nowMs);
    const secondMs = FIRST_REST_MS + REST_MS;
    const thirdMs = secondMs + REP_MS + SET_REST_MS;
    expect(told.slice(0, 3)).toEqual([
      `0.0 held 30000 at ${FIRST_HOLD_MS + HOLD_MS}`,
      `0.1 held 30000 at ${secondMs + DRAW_MS + HOLD_MS}`,
      `1.0 held 30000 at ${thirdMs + DRAW_MS + HOLD_MS}`,
    ]);
    expect(told).toHaveLength(3);
  });

  it('[S5] a clock that goes backwards counts as stopped; a broken one is refused', () => {
    const session = begun(20_000);
    const before = session.view();
    session.advance(5000);
    expect(session.view()).toEqual(before);
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => session.advance(wrong)).toThrow(RangeError);
      expect(() => send(session, 'pause', wrong)).toThrow(RangeError);
    }
  });

  it('[S5] a clock that began again during a pause is accepted as it is', () => {
    const session = begun(FIRST_HOLD_MS + 12_000);
    send(session, 'pause', FIRST_HOLD_MS + 12_000);
    send(session, 'resume', 40);
    expect(session.nextDeadlineMs()).toBe(18_040);
  });
});
