import { describe, expect, it } from 'vitest';
import type { PrescribedBlock } from '../prescription/prescription.ts';
import { layOut, REST_OVER_MS } from '../timeline/lay-out.ts';
import type { Timeline } from '../timeline/timeline.ts';
import { READY_MS } from '../timeline/timeline-duration.ts';
import { createSession, GAP_LIMIT_MS, type Session } from './create-session.ts';
import type { SessionEvent } from './session-view.ts';
import { MORE_REST_MS } from './walk.ts';

const DRAW_MS = 3000;
const HOLD_MS = 30_000;
const LET_DOWN_MS = 2000;
const REST_MS = 60_000;
const SET_REST_MS = 120_000;
const REP_MS = DRAW_MS + HOLD_MS + LET_DOWN_MS;
const FIRST_HOLD_MS = READY_MS + DRAW_MS;
const FIRST_REST_MS = READY_MS + REP_MS;

/** Two sets of two reps, so that every kind of step and every neighbourhood occurs. */
function timelineOf(change: Partial<PrescribedBlock> = {}): Timeline {
  const block: PrescribedBlock = {
    block: 0,
    title: 'Holds',
    drill: 'holding',
    sets: 2,
    reps: 2,
    drawMs: DRAW_MS,
    holdMs: HOLD_MS,
    letDownMs: LET_DOWN_MS,
    restMs: REST_MS,
    setRestMs: SET_REST_MS,
    letDownTo: 'rest',
    hand: 'usual',
    addedWeightLbf: 0,
    ...change,
  };
  return layOut({ programTitle: 'T', date: '2026-11-25', blocks: [block], reasons: [], cautions: [], durationMs: 0 });
}

const start = { program: 'Weekday holding', startedAt: '2026-11-25T06:30:00+01:00', newId: () => 'id-1' };

function made(timeline = timelineOf(), extra: Partial<Parameters<typeof createSession>[0]> = {}): Session {
  return createSession({ timeline, ...start, ...extra });
}

/** A session begun at 0 and walked to a moment in steps that lose nothing. */
function begun(toMs: number, timeline = timelineOf()): Session {
  const session = made(timeline);
  session.send({ type: 'begin' }, 0);
  walk(session, 0, toMs);
  return session;
}

function walk(session: Session, fromMs: number, toMs: number) {
  for (let atMs = fromMs; atMs < toMs; atMs += 1000) session.advance(atMs);
  session.advance(toMs);
}

const send = (session: Session, type: SessionEvent['type'], atMs: number) => session.send({ type }, atMs);
const outcomes = (session: Session) => session.record().reps.map((rep) => [rep.set, rep.rep, rep.outcome, rep.heldMs]);
const held = (set: number, rep: number) => [set, rep, 'held', HOLD_MS];

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

  it('[S3] each rep is told once, when its hold ends', () => {
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

  it('[S5] a clock that goes backwards stands still; a broken one is refused', () => {
    const session = begun(20_000);
    const before = session.view();
    session.advance(5000);
    expect(session.view()).toEqual(before);
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => session.advance(wrong)).toThrow(RangeError);
      expect(() => send(session, 'pause', wrong)).toThrow(RangeError);
    }
  });
});

it('[S5] a clock that began anew while the archer had paused is taken as it is', () => {
  const session = begun(FIRST_HOLD_MS + 12_000);
  send(session, 'pause', FIRST_HOLD_MS + 12_000);
  send(session, 'resume', 40);
  expect(session.nextDeadlineMs()).toBe(18_040);
});

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

  it('[S11] a pause in a hold inserts time and nothing else', () => {
    const session = begun(FIRST_HOLD_MS + 12_000);
    send(session, 'pause', FIRST_HOLD_MS + 12_000);
    const paused = session.view();
    expect(paused).toMatchObject({ state: 'paused', pausedBy: 'archer', msLeft: 18_000, step: { kind: 'hold' } });
    expect(paused.originMs).toBeUndefined();
    for (const type of ['begin', 'pause', 'letDownNow', 'skipRep', 'moreRest'] as const) send(session, type, 400_000);
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

describe('what is kept', () => {
  it('[S18] a restored session keeps its id and asks for no other', () => {
    const timeline = timelineOf();
    const first = begun(20_000, timeline);
    const newId = () => {
      throw new Error('asked for a second id');
    };
    const second = made(timeline, { newId, program: 'Another', resumeFrom: first.snapshot() });
    expect(second.record()).toEqual(first.record());
    expect(() => made(timelineOf({ reps: 3 }), { resumeFrom: first.snapshot() })).toThrow(RangeError);
  });

  it('[S18] what is no snapshot is refused by name', () => {
    const kept = begun(20_000).snapshot();
    const broken = { ...kept, walk: { ...kept.walk, leftMs: '12' as unknown as number } };
    expect(() => made(timelineOf(), { resumeFrom: broken })).toThrow(/walk\.leftMs/);
    expect(() => made(timelineOf(), { resumeFrom: { ...kept, version: 2 as 1 } })).toThrow(TypeError);
  });

  it('[S14] [S18] after a crash the session goes on with a clock that began anew', () => {
    const timeline = timelineOf();
    const crashed = begun(FIRST_HOLD_MS + 8000, timeline);
    const restored = made(timeline, { resumeFrom: JSON.parse(JSON.stringify(crashed.snapshot())) });
    send(restored, 'gap', 12);
    send(restored, 'resume', 20);
    expect(outcomes(restored)).toEqual([[0, 0, 'unsure', 8000]]);
    expect(restored.nextDeadlineMs()).toBe(20 + READY_MS);
    walk(restored, 20, 20 + READY_MS + REP_MS);
    expect(outcomes(restored)).toEqual([[0, 0, 'unsure', 8000], held(0, 1)]);
  });

  it('[S19] a record is open until its session ends, and ends where the clock says', () => {
    const timeline = timelineOf({ sets: 1, reps: 1 });
    const session = made(timeline, {
      programId: '6f1c0b9e-53f2-4b38-9d0a-7a2d9f1f9a10',
      startedAt: '2026-11-25T23:59:30+01:00',
    });
    send(session, 'begin', 0);
    walk(session, 0, 20_000);
    expect(session.record().open).toBe(true);
    send(session, 'pause', 20_000);
    send(session, 'resume', 50_000);
    walk(session, 50_000, 200_000);
    expect(session.record()).toEqual({
      id: 'id-1',
      program: 'Weekday holding',
      programId: '6f1c0b9e-53f2-4b38-9d0a-7a2d9f1f9a10',
      date: '2026-11-25',
      startedAt: '2026-11-25T23:59:30+01:00',
      endedAt: '2026-11-26T00:00:45.000+01:00',
      prescribedReps: 1,
      durationMs: timeline.durationMs,
      reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: HOLD_MS, heldMs: HOLD_MS, outcome: 'held' }],
    });
    expect(() => made(timeline, { startedAt: 'this morning' })).toThrow(RangeError);
  });

  it('[S20] a listener that throws breaks nothing, and unsubscribing works', () => {
    const thrown: unknown[] = [];
    const session = made(timelineOf(), { onListenerError: (error) => thrown.push(error) });
    const seen: string[] = [];
    session.onRep(() => {
      throw new Error('broken');
    });
    session.subscribe(() => {
      throw new Error('broken too');
    });
    const offRep = session.onRep((rep) => seen.push(`rep ${rep.rep}`));
    const offView = session.subscribe((view) => seen.push(view.state));
    send(session, 'begin', 0);
    walk(session, 0, FIRST_REST_MS);
    expect(seen).toContain('rep 0');
    expect(seen).toContain('running');
    expect(thrown.length).toBeGreaterThan(1);
    offRep();
    offView();
    const count = seen.length;
    walk(session, FIRST_REST_MS, 300_000);
    expect(seen).toHaveLength(count);
  });

  it('[S20] a listener may speak to the session', () => {
    const session = made(timelineOf());
    session.onRep((rep) => {
      if (rep.outcome === 'held') send(session, 'pause', FIRST_HOLD_MS + HOLD_MS + 1000);
    });
    send(session, 'begin', 0);
    walk(session, 0, FIRST_HOLD_MS + HOLD_MS + 1000);
    expect(session.view()).toMatchObject({ state: 'paused', step: { kind: 'letDown' }, msLeft: LET_DOWN_MS - 1000 });
  });

  it('[S21] after a skip without rests no cue of the rep left behind is due', () => {
    const timeline = timelineOf({ restMs: 0, letDownTo: 'set-up' });
    const session = begun(2000, timeline);
    send(session, 'skipRep', 2000);
    const { offsetMs, originMs = 0 } = session.view();
    const due = timeline.cues.find((cue) => cue.atMs >= offsetMs);
    expect(due?.kind).toBe('draw');
    expect(originMs + (due?.atMs ?? 0)).toBe(READY_MS);
  });

  it('[S21] after a gap the first cue is the call or the draw, never a count', () => {
    for (const restMs of [0, 5000, 30_000]) {
      const timeline = timelineOf({ restMs });
      const session = begun(FIRST_HOLD_MS + 5000, timeline);
      send(session, 'gap', FIRST_HOLD_MS + 5000);
      send(session, 'resume', FIRST_HOLD_MS + 5000);
      const { offsetMs } = session.view();
      const due = timeline.cues.find((cue) => cue.atMs >= offsetMs);
      expect(due?.kind).toBe(restMs >= 10_000 ? 'restOver' : 'draw');
    }
  });
});
