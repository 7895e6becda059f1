import { describe, expect, it } from 'vitest';
import { layOut } from '../timeline/lay-out.ts';
import { createSession } from './create-session.ts';

/** 38 holds of 30 s with twice that between them: an hour with its draws and let-downs. */
const hour = layOut({
  programTitle: 'Hour',
  date: '2026-11-25',
  blocks: [
    {
      block: 0,
      title: 'Holds',
      drill: 'holding',
      sets: 1,
      reps: 38,
      drawMs: 3000,
      holdMs: 30_000,
      letDownMs: 3000,
      restMs: 60_000,
      setRestMs: 0,
      letDownTo: 'rest',
      hand: 'usual',
      addedWeightLbf: 0,
    },
  ],
  reasons: [],
  cautions: [],
  durationMs: 0,
});

describe('an hour in ticks of 100 ms', () => {
  it('[S2] is held to the millisecond, however late each tick comes', () => {
    const session = createSession({
      timeline: hour,
      program: 'Hour',
      startedAt: '2026-11-25T06:30:00Z',
      newId: () => 'a',
    });
    session.send({ type: 'begin' }, 0);
    const startedMs = performance.now();
    for (let tick = 1; tick <= 36_000; tick++) session.advance(tick * 100 + ((tick * 7919) % 97));
    const spentMs = performance.now() - startedMs;
    console.info(`36,000 ticks over an hour: ${spentMs.toFixed(1)} ms`);
    const { reps, durationMs } = session.record();
    expect(session.view().state).toBe('done');
    expect(reps.reduce((sumMs, rep) => sumMs + rep.heldMs, 0)).toBe(38 * 30_000);
    expect(durationMs).toBe(hour.durationMs);
    expect(hour.durationMs).toBe(10_000 + 38 * 36_000 + 37 * 60_000);
  });
});
