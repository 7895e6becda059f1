import { describe, expect, it } from 'vitest';
import { createSession } from './create-session.ts';
import { FIRST_HOLD_MS, made, start, timelineOf } from './trial-session.ts';

describe('why a hold was let down', () => {
  it('[S27] is given with the let-down, or in the rest after it, or while paused, and withdrawn', () => {
    const session = made();
    session.send({ type: 'begin' }, 0);
    session.advance(FIRST_HOLD_MS);
    session.send({ type: 'letDownNow', why: 'form' }, FIRST_HOLD_MS + 20_000);
    expect(session.record().reps[0]).toMatchObject({ outcome: 'short', heldMs: 20_000, why: 'form' });
    session.send({ type: 'why', why: 'tired' }, FIRST_HOLD_MS + 25_000);
    expect(session.view().lastRep?.why).toBe('tired');
    session.send({ type: 'pause' }, FIRST_HOLD_MS + 26_000);
    session.send({ type: 'why', why: 'interrupted' }, FIRST_HOLD_MS + 27_000);
    expect(session.record().reps[0]?.why).toBe('interrupted');
    const restored = createSession({ timeline: timelineOf(), ...start, resumeFrom: session.snapshot() });
    expect(restored.record().reps).toEqual(session.record().reps);
    session.send({ type: 'why', why: undefined }, FIRST_HOLD_MS + 28_000);
    expect(session.record().reps[0]).not.toHaveProperty('why');
  });

  it('[S27] is ignored before the first rep, and of a rep that was held', () => {
    const session = made();
    session.send({ type: 'why', why: 'form' }, 0);
    session.send({ type: 'begin' }, 0);
    session.send({ type: 'why', why: 'form' }, 1000);
    expect(session.record().reps).toEqual([]);
    session.advance(FIRST_HOLD_MS);
    session.advance(FIRST_HOLD_MS + 30_000);
    session.send({ type: 'why', why: 'form' }, FIRST_HOLD_MS + 31_000);
    expect(session.record().reps[0]).toMatchObject({ outcome: 'held' });
    expect(session.record().reps[0]).not.toHaveProperty('why');
  });

  it('[S28] each rep says its added weight, and a test’s record is marked', () => {
    const timeline = timelineOf({ addedWeightLbf: 2 });
    const session = made({ ...timeline, kind: 'test' });
    session.send({ type: 'begin' }, 0);
    session.advance(FIRST_HOLD_MS);
    session.send({ type: 'letDownNow' }, FIRST_HOLD_MS + 20_000);
    expect(session.record()).toMatchObject({ kind: 'test', reps: [{ addedWeightLbf: 2 }] });
    const { addedWeightsLbf: _none, ...plain } = timeline;
    const unknown = made(plain);
    unknown.send({ type: 'begin' }, 0);
    unknown.send({ type: 'stop' }, FIRST_HOLD_MS - 1);
    expect(unknown.record().reps[0]).not.toHaveProperty('addedWeightLbf');
  });
});
