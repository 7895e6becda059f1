import { describe, expect, it } from 'vitest';
import { createSession } from './create-session.ts';
import { timelineOf } from './trial-session.ts';

/** Holds of 30 s with twice that between them: 38 take an hour with their draws and let-downs, 150 four. */
const holds = (reps: number) => timelineOf({ sets: 1, reps, letDownMs: 3000 });
const begun = (reps: number) => {
  const timeline = holds(reps);
  const session = createSession({ timeline, program: 'Hours', startedAt: '2026-11-25T06:30:00Z', newId: () => 'a' });
  session.send({ type: 'begin' }, 0);
  return session;
};
const heldMs = (reps: readonly { heldMs: number }[]) => reps.reduce((sumMs, rep) => sumMs + rep.heldMs, 0);

describe('hours in ticks of 100 ms', () => {
  it.each([
    ['one hour', 38, 36_000],
    ['four hours', 150, 144_000],
  ])('[S2] %s: held to the millisecond, however late each tick comes', (_, count, ticks) => {
    const session = begun(count);
    const startedMs = performance.now();
    for (let tick = 1; tick <= ticks; tick++) session.advance(tick * 100 + ((tick * 7919) % 97));
    const spentMs = performance.now() - startedMs;
    console.info(`${ticks} ticks: ${spentMs.toFixed(1)} ms`);
    const { reps, durationMs, endedAt } = session.record();
    expect(session.view().state).toBe('done');
    expect(heldMs(reps)).toBe(count * 30_000);
    expect(durationMs).toBe(10_000 + count * 36_000 + (count - 1) * 60_000);
    expect(endedAt).toBe(new Date(Date.parse('2026-11-25T06:30:00Z') + durationMs!).toISOString());
  });

  it('[S13] [S15] four hours with a sleep in every tenth hold: those are unsure, all others held, no time made up', () => {
    const session = begun(150);
    let slept = 0;
    for (let nowMs = 0; session.view().state !== 'done'; nowMs += 100) {
      const { step, msLeft, state } = session.view();
      if (state === 'paused') session.send({ type: 'resume' }, nowMs);
      else if (step?.kind === 'hold' && step.rep % 10 === 0 && msLeft <= 20_000) {
        nowMs += 600_000;
        slept++;
        session.advance(nowMs);
      } else session.advance(nowMs);
    }
    const { reps } = session.record();
    expect(slept).toBe(15);
    expect(reps).toHaveLength(150);
    expect(reps.filter(({ outcome }) => outcome === 'unsure').map(({ rep }) => rep % 10)).toEqual(Array(15).fill(0));
    expect(reps.filter(({ outcome }) => outcome === 'held')).toHaveLength(135);
    expect(heldMs(reps.filter(({ outcome }) => outcome === 'held'))).toBe(135 * 30_000);
    for (const { outcome, heldMs: ms } of reps) if (outcome === 'unsure') expect(ms).toBe(10_000);
  });
});
