import { describe, expect, it } from 'vitest';
import {
  begun,
  DRAW_MS,
  FIRST_HOLD_MS,
  FIRST_REST_MS,
  HOLD_MS,
  held,
  LET_DOWN_MS,
  MORE_REST_MS,
  outcomes,
  READY_MS,
  REST_MS,
  REST_OVER_MS,
  SET_REST_MS,
  send,
  timelineOf,
  walk,
} from './trial-session.ts';

describe('what the archer asks for', () => {
  it('[S6] a let-down in a hold is short, and later steps keep their length', () => {
    const session = begun(FIRST_HOLD_MS + 28_000);
    send(session, 'letDownNow', FIRST_HOLD_MS + 28_000.7);
    expect(outcomes(session)).toEqual([[0, 0, 'short', 28_000]]);
    expect(session.view()).toMatchObject({ step: { kind: 'letDown' }, msLeft: LET_DOWN_MS });
    expect(session.view().originMs).toBeCloseTo(-1999.3, 6);
    walk(session, FIRST_HOLD_MS + 28_001, 80_000);
    expect(session.nextDeadlineMs()).toBeCloseTo(FIRST_HOLD_MS + 28_000.7 + LET_DOWN_MS + REST_MS, 6);
  });

  it('[S6] in a draw it is short with nothing held, elsewhere ignored', () => {
    const session = begun(READY_MS + 1000);
    send(session, 'letDownNow', READY_MS + 1000);
    expect(outcomes(session)).toEqual([[0, 0, 'short', 0]]);
    expect(session.record().reps[0]?.prescribedMs).toBe(HOLD_MS);
    expect(session.view().step?.kind).toBe('letDown');
    for (const atMs of [0, FIRST_REST_MS - 1000, FIRST_REST_MS + 5000]) {
      const other = begun(atMs);
      const before = other.view();
      send(other, 'letDownNow', atMs);
      expect(other.view()).toEqual(before);
    }
  });

  it('[S7] a rep under way is skipped with what was held', () => {
    const session = begun(FIRST_HOLD_MS + 4000);
    send(session, 'skipRep', FIRST_HOLD_MS + 4000);
    expect(outcomes(session)).toEqual([[0, 0, 'skipped', 4000]]);
    expect(session.view()).toMatchObject({ step: { kind: 'letDown' }, msLeft: LET_DOWN_MS });
  });

  it('[S8] skipped in the rest: the last rep of the set makes it a set rest', () => {
    const atMs = FIRST_REST_MS + 20_000;
    const session = begun(atMs);
    send(session, 'skipRep', atMs);
    expect(outcomes(session)).toEqual([held(0, 0), [0, 1, 'skipped', 0]]);
    expect(session.view()).toMatchObject({
      step: { kind: 'setRest', durationMs: SET_REST_MS, set: 0, rep: 1 },
      next: { kind: 'draw', set: 1, rep: 0 },
      msLeft: SET_REST_MS - 20_000,
      stepMs: SET_REST_MS,
    });
    walk(session, atMs, FIRST_REST_MS + SET_REST_MS);
    expect(session.view().step).toMatchObject({ kind: 'draw', set: 1, rep: 0 });
  });

  it('[S8] skipped in the rest: within a set the rest goes on', () => {
    const atMs = FIRST_REST_MS + 20_000;
    const session = begun(atMs, timelineOf({ reps: 3 }));
    send(session, 'skipRep', atMs);
    expect(session.view()).toMatchObject({
      step: { kind: 'rest', rep: 1 },
      next: { kind: 'draw', set: 0, rep: 2 },
      msLeft: REST_MS - 20_000,
    });
  });

  it('[S8] more rest is not lost by a skip after it', () => {
    const atMs = FIRST_REST_MS + 20_000;
    for (const [reps, wantedMs] of [
      [3, REST_MS],
      [2, SET_REST_MS],
    ] as const) {
      const session = begun(atMs, timelineOf({ reps }));
      send(session, 'moreRest', atMs);
      send(session, 'skipRep', atMs);
      const { msLeft, stepMs, step } = session.view();
      expect([msLeft, stepMs]).toEqual([wantedMs + MORE_REST_MS - 20_000, wantedMs + MORE_REST_MS]);
      expect(step?.durationMs).toBe(wantedMs);
    }
  });

  it('[S8] a set rest shorter than what was rested still leaves time to stand to', () => {
    const atMs = FIRST_REST_MS + 40_000;
    const session = begun(atMs, timelineOf({ setRestMs: 15_000 }));
    send(session, 'skipRep', atMs);
    expect(session.view().msLeft).toBe(READY_MS);
    const late = begun(FIRST_REST_MS + 57_000, timelineOf({ setRestMs: 15_000 }));
    send(late, 'skipRep', FIRST_REST_MS + 57_000);
    expect(late.view().msLeft).toBe(3000);
  });

  it('[S8] skipped while standing to: the ready step goes on to the next rep', () => {
    const session = begun(4000);
    send(session, 'skipRep', 4000);
    expect(session.view()).toMatchObject({
      step: { kind: 'ready', rep: 1 },
      next: { kind: 'draw', rep: 1 },
      msLeft: 6000,
    });
    walk(session, 4000, READY_MS);
    expect(session.view().step).toMatchObject({ kind: 'draw', rep: 1 });
  });

  it('[S8] every rep can be skipped, [S9] and the last one ends the session', () => {
    const session = begun(1000);
    for (let times = 0; times < 3; times++) send(session, 'skipRep', 1000);
    expect(session.view().state).toBe('running');
    send(session, 'skipRep', 1000);
    expect(session.view().state).toBe('done');
    expect(session.record().reps.map((rep) => rep.outcome)).toEqual(['skipped', 'skipped', 'skipped', 'skipped']);
    expect(session.record().open).toBeUndefined();
  });

  it('[S10] more rest adds half a minute, in waits only', () => {
    const atMs = FIRST_REST_MS + 10_000;
    const session = begun(atMs);
    send(session, 'moreRest', atMs);
    send(session, 'moreRest', atMs);
    expect(session.view()).toMatchObject({ msLeft: 50_000 + 2 * MORE_REST_MS, stepMs: REST_MS + 2 * MORE_REST_MS });
    expect(session.view().offsetMs).toBe(atMs);
    walk(session, atMs, atMs + 60_000);
    expect(session.view()).toMatchObject({ msLeft: 50_000, offsetMs: atMs, originMs: 60_000 });
    for (const other of [READY_MS + 1000, FIRST_HOLD_MS + 1000, FIRST_REST_MS - 1000]) {
      const ignoring = begun(other);
      const before = ignoring.view();
      send(ignoring, 'moreRest', other);
      expect(ignoring.view()).toEqual(before);
    }
  });

  it('[S10] more rest after the call for the draw brings the call again', () => {
    const timeline = timelineOf();
    const drawMs = FIRST_REST_MS + REST_MS;
    const session = begun(drawMs - 2000, timeline);
    send(session, 'moreRest', drawMs - 2000);
    const { offsetMs, originMs = 0 } = session.view();
    const due = timeline.cues.filter((cue) => cue.atMs >= offsetMs)[0];
    expect(due?.kind).toBe('restOver');
    expect(originMs + (due?.atMs ?? 0)).toBe(drawMs + MORE_REST_MS - REST_OVER_MS);
  });

  it('[S29] a rest can be cut short: the ready time of it is left, with the call for the draw', () => {
    const timeline = timelineOf();
    const atMs = FIRST_REST_MS + 20_000;
    const session = begun(atMs, timeline);
    send(session, 'lessRest', atMs);
    expect(session.view()).toMatchObject({ step: { kind: 'rest' }, msLeft: READY_MS, stepMs: 20_000 + READY_MS });
    const { offsetMs, originMs = 0 } = session.view();
    const due = timeline.cues.filter((cue) => cue.atMs >= offsetMs)[0];
    expect(due).toMatchObject({ kind: 'restOver', words: 'Get ready. Two of two' });
    expect(originMs + (due?.atMs ?? 0)).toBe(atMs + READY_MS - REST_OVER_MS);
    const before = session.view();
    send(session, 'lessRest', atMs);
    expect(session.view()).toEqual(before);
    for (const other of [4000, READY_MS + 1000, FIRST_HOLD_MS + 1000, FIRST_REST_MS - 1000]) {
      const ignoring = begun(other);
      const seen = ignoring.view();
      send(ignoring, 'lessRest', other);
      expect(ignoring.view()).toEqual(seen);
    }
  });

  it('[S11] a pause in a hold inserts time and nothing else', () => {
    const session = begun(FIRST_HOLD_MS + 12_000);
    send(session, 'pause', FIRST_HOLD_MS + 12_000);
    const paused = session.view();
    expect(paused).toMatchObject({ state: 'paused', pausedBy: 'archer', msLeft: 18_000, step: { kind: 'hold' } });
    expect(paused.originMs).toBeUndefined();
    for (const type of ['begin', 'pause', 'letDownNow', 'skipRep', 'moreRest', 'lessRest'] as const)
      send(session, type, 400_000);
    session.advance(500_000);
    expect(session.view()).toEqual(paused);
    send(session, 'resume', 500_000);
    expect(session.nextDeadlineMs()).toBe(518_000);
    expect(session.view().pausedBy).toBeUndefined();
    session.advance(518_000);
    expect(outcomes(session)).toEqual([held(0, 0)]);
  });

  it('[S12] stop cuts the rep under way and leaves the rest out', () => {
    const atMs = FIRST_REST_MS + REST_MS + DRAW_MS + 7000;
    const session = begun(atMs);
    send(session, 'stop', atMs);
    expect(session.view()).toMatchObject({ state: 'stopped', msLeft: 0, offsetMs: atMs });
    expect(outcomes(session)).toEqual([held(0, 0), [0, 1, 'short', 7000]]);
    expect(session.record()).toMatchObject({ prescribedReps: 4, durationMs: atMs });
    send(session, 'begin', atMs + 1);
    expect(session.view().state).toBe('stopped');
  });

  it('[S12] stop while paused in a hold counts what was held before', () => {
    const session = begun(FIRST_HOLD_MS + 9000);
    send(session, 'pause', FIRST_HOLD_MS + 9000);
    send(session, 'stop', 900_000);
    expect(outcomes(session)).toEqual([[0, 0, 'short', 9000]]);
  });
});
