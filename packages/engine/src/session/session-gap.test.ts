import { describe, expect, it } from 'vitest';
import {
  begun,
  DRAW_MS,
  FIRST_HOLD_MS,
  FIRST_REST_MS,
  GAP_LIMIT_MS,
  HOLD_MS,
  held,
  made,
  outcomes,
  READY_MS,
  REST_MS,
  send,
  timelineOf,
  walk,
} from './trial-session.ts';

describe('lost time', () => {
  it('[S13] a late advance credits nothing that nobody saw', () => {
    const session = begun(FIRST_HOLD_MS + 11_000);
    session.advance(FIRST_HOLD_MS + HOLD_MS + GAP_LIMIT_MS + 1);
    expect(outcomes(session)).toEqual([[0, 0, 'unsure', 11_000]]);
    expect(session.view()).toMatchObject({ state: 'paused', pausedBy: 'gap', msLeft: READY_MS, next: { rep: 1 } });
    const inTime = begun(FIRST_HOLD_MS + 11_000);
    inTime.advance(FIRST_HOLD_MS + HOLD_MS + GAP_LIMIT_MS);
    expect(outcomes(inTime)).toEqual([held(0, 0)]);
  });

  it('[S13] in a draw the rep is unsure with nothing held; the limit is the caller’s', () => {
    const session = made(timelineOf(), { gapLimitMs: 100 });
    send(session, 'begin', 0);
    session.advance(READY_MS + 50);
    session.advance(READY_MS + DRAW_MS + 101);
    expect(outcomes(session)).toEqual([[0, 0, 'unsure', 0]]);
    expect(() => made(timelineOf(), { gapLimitMs: -1 })).toThrow(RangeError);
  });

  it('[S14] a gap the caller tells of stops at the last known moment', () => {
    const session = begun(FIRST_HOLD_MS + 11_000);
    send(session, 'gap', FIRST_HOLD_MS + 16_000);
    expect(outcomes(session)).toEqual([[0, 0, 'unsure', 11_000]]);
    expect(session.record().durationMs).toBe(FIRST_HOLD_MS + 11_000);
  });

  it('[S14] time between the last call and the gap is not counted, for its clock may be another', () => {
    const session = begun(FIRST_HOLD_MS + 11_000);
    send(session, 'gap', 9_000_000);
    send(session, 'stop', 9_004_000);
    const { endedAt } = session.record();
    expect(endedAt).toBe('2026-11-25T06:30:28.000+01:00'); // 13 s to the hold, 11 s of it, 4 s paused
  });

  it('[S15] resume goes on before the next rep, with time to stand to', () => {
    const session = begun(FIRST_HOLD_MS + 11_000);
    send(session, 'gap', 100_000);
    send(session, 'resume', 200_000);
    expect(session.view()).toMatchObject({ state: 'running', step: { kind: 'ready', rep: 1 }, msLeft: READY_MS });
    walk(session, 200_000, 200_000 + READY_MS);
    expect(session.view().step).toMatchObject({ kind: 'draw', rep: 1 });
  });

  it('[S15] in a rest nothing is unsure, and what was left goes on', () => {
    const session = begun(FIRST_REST_MS + 20_000);
    session.advance(FIRST_REST_MS + REST_MS + 60_000);
    expect(outcomes(session)).toEqual([held(0, 0)]);
    send(session, 'resume', 300_000);
    expect(session.view()).toMatchObject({ step: { kind: 'rest' }, msLeft: 40_000 });
    const late = begun(FIRST_REST_MS + REST_MS - 3000);
    send(late, 'gap', 300_000);
    send(late, 'resume', 300_000);
    expect(late.view()).toMatchObject({ step: { kind: 'rest' }, msLeft: READY_MS, stepMs: REST_MS + 7000 });
  });

  it('[S16] with no rep left the session ends', () => {
    const one = timelineOf({ sets: 1, reps: 1 });
    const lettingDown = begun(FIRST_HOLD_MS + HOLD_MS + 500, one);
    send(lettingDown, 'gap', 900_000);
    expect(lettingDown.view().state).toBe('done');
    const holding = begun(FIRST_HOLD_MS + 500, one);
    send(holding, 'gap', 900_000);
    expect(holding.view()).toMatchObject({ state: 'paused', pausedBy: 'gap', progress: { msLeft: 0 } });
    expect(holding.view().step).toBeUndefined();
    send(holding, 'resume', 900_001);
    expect(holding.view().state).toBe('done');
    expect(outcomes(holding)).toEqual([[0, 0, 'unsure', 500]]);
  });

  it('[S17] a gap while the archer had paused loses nothing', () => {
    const session = begun(FIRST_HOLD_MS + 12_000);
    send(session, 'pause', FIRST_HOLD_MS + 12_000);
    const paused = session.view();
    send(session, 'gap', 3);
    expect(session.view()).toEqual(paused);
    send(session, 'resume', 1000);
    expect(session.nextDeadlineMs()).toBe(19_000);
  });
});
