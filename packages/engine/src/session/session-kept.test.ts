import { describe, expect, it } from 'vitest';
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
  REP_MS,
  REST_MS,
  send,
  timelineOf,
  walk,
} from './trial-session.ts';

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
    const sameSteps = timelineOf({ restMs: REST_MS + 1000 });
    expect(() => made(sameSteps, { resumeFrom: first.snapshot() })).toThrow(RangeError);
    const sameLength = { ...timelineOf(), steps: timelineOf().steps.slice(1) };
    expect(() => made(sameLength, { resumeFrom: first.snapshot() })).toThrow(RangeError);
  });

  it('[S18] what is no snapshot is refused by name', () => {
    const kept = begun(20_000).snapshot();
    const broken = { ...kept, walk: { ...kept.walk, leftMs: '12' as unknown as number } };
    expect(() => made(timelineOf(), { resumeFrom: broken })).toThrow(/walk\.leftMs/);
    expect(() => made(timelineOf(), { resumeFrom: { ...kept, version: 2 as 1 } })).toThrow(TypeError);
    // What no record can be made of is no snapshot either: its reps could not be written.
    for (const damage of [{ id: '' }, { id: 'x'.repeat(65) }, { program: '' }, { programId: 'x'.repeat(65) }]) {
      expect(() => made(timelineOf(), { resumeFrom: { ...kept, ...damage } })).toThrow(TypeError);
    }
  });

  it('[S14] [S18] after a crash the session goes on with a clock that began again', () => {
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
      reps: [
        {
          block: 0,
          set: 0,
          rep: 0,
          hand: 'usual',
          prescribedMs: HOLD_MS,
          heldMs: HOLD_MS,
          outcome: 'held',
          addedWeightLbf: 0,
        },
      ],
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
