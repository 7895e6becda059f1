import type { Cue } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { createCuePlayer } from './cue-player.ts';
import { type TrialAudio, trialAudio } from './trial-audio.ts';

const counts = (times: readonly number[]): Cue[] => times.map((atMs) => ({ atMs, kind: 'count' }));

/** A player on trial audio; `walk` lets time pass with wake-ups as long as the page is not busy. */
function playerOn(audio: TrialAudio) {
  let onWake: () => void = () => undefined;
  let everyMs = 0;
  let isAsleep = false;
  const player = createCuePlayer(
    { level: 1 },
    {
      nowMs: audio.nowMs,
      output: {
        context: () => audio.context,
        destination: () => audio.destination,
        resume: async () => {
          if (isAsleep) audio.setRunning(true);
          isAsleep = false;
          return audio.context.state === 'running';
        },
        suspend: async () => {
          isAsleep = true;
          audio.setRunning(false);
        },
        setLevel: () => undefined,
      },
      wake(fn) {
        onWake = fn;
        return {
          every(ms) {
            everyMs = ms;
          },
          close: () => undefined,
        };
      },
    },
  );
  const walk = (spanMs: number, isBusy = false) => {
    if (isBusy) audio.pass(spanMs);
    else {
      for (let left = spanMs; left > 0; left -= everyMs || 50) {
        audio.pass(Math.min(everyMs || 50, left));
        if (everyMs > 0) onWake();
      }
    }
  };
  return { player, walk, isAwake: () => everyMs > 0 };
}

/** Busy or not for a while, then perhaps a step of sound is lost. */
const stretch = fc.record({
  spanMs: fc.integer({ min: 50, max: 4000 }),
  isBusy: fc.nat(3).map((n) => n === 0),
  isLoss: fc.nat(2).map((n) => n === 0),
});

describe('createCuePlayer on clocks moved by hand', () => {
  it('sounds every cue once and in its place, whatever the page does, but for the moment after a lost step', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 350, max: 6000 }), { minLength: 1, maxLength: 12 }),
        fc.array(stretch, { maxLength: 12 }),
        (gaps, stretches) => {
          const audio = trialAudio();
          const { player, walk } = playerOn(audio);
          const times = gaps.map((_, index) => gaps.slice(0, index + 1).reduce((sum, gap) => sum + gap, 0));
          walk(300);
          const originMs = audio.nowMs() + 100;
          player.arm(counts(times), originMs);
          const blind: [number, number][] = [];
          for (const { spanMs, isBusy, isLoss } of stretches) {
            const fromMs = audio.nowMs();
            walk(spanMs, isBusy);
            // However busy a page is, it comes to itself within the lookahead.
            walk(50);
            if (!isLoss) continue;
            audio.lose(10);
            // Three wake-ups after the loss, and the way out; a busy page follows when it has time again.
            blind.push([fromMs, audio.nowMs() + 350]);
            walk(350);
          }
          walk(times.at(-1)! + 1000);
          expect(audio.heardMs.length).toBe(times.length);
          for (const [index, atMs] of times.entries()) {
            const heard = audio.heardMs[index]! - originMs;
            const isBlind = blind.some(([from, to]) => originMs + atMs >= from - 60 && originMs + atMs <= to);
            expect(Math.abs(heard - atMs)).toBeLessThanOrEqual(isBlind ? 10.01 * stretches.length : 2.01);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('after any standstill says nothing that is past, and what is still to come in its place', () => {
    fc.assert(
      fc.property(fc.integer({ min: 400, max: 20_000 }), fc.integer({ min: 0, max: 3000 }), (stillMs, beforeMs) => {
        const audio = trialAudio();
        const { player, walk } = playerOn(audio);
        const told: (string | undefined)[] = [];
        player.onTrouble((trouble) => told.push(trouble?.kind));
        walk(300);
        const times = Array.from({ length: 24 }, (_, index) => index * 1000);
        const originMs = audio.nowMs() + 100;
        player.arm(counts(times), originMs);
        walk(1000 + beforeMs);
        const stoppedMs = audio.nowMs();
        audio.setRunning(false);
        walk(stillMs);
        audio.setRunning(true);
        const backMs = audio.nowMs();
        walk(30_000);
        expect(told).toEqual(['stalled', undefined]);
        for (const heard of audio.heardMs) {
          const lateMs = Math.min(...times.map((atMs) => Math.abs(heard - originMs - atMs)));
          // Hardly late is still said, and takes its way out.
          expect(lateMs).toBeLessThanOrEqual(200);
        }
        const due = times.map((atMs) => originMs + atMs);
        const surely = due.filter((dueMs) => dueMs < stoppedMs - 60 || dueMs > backMs + 400);
        for (const dueMs of surely) expect(audio.heardMs.some((heard) => Math.abs(heard - dueMs) <= 2.01)).toBe(true);
        // Nothing of what was due in the standstill, but for the last that is hardly late.
        const lost = audio.heardMs.filter((heard) => heard > stoppedMs + 1 && heard < backMs - 1);
        expect(lost).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('armed again at any moment with the same cues, says each once', () => {
    for (let laterMs = 0; laterMs <= 700; laterMs += 10) {
      const audio = trialAudio();
      const { player, walk } = playerOn(audio);
      walk(300);
      const originMs = audio.nowMs() + 100;
      const cues = counts([400, 1000]);
      player.arm(cues, originMs);
      walk(laterMs);
      player.arm(cues, originMs);
      walk(2000);
      expect({ laterMs, heard: audio.heardMs.length }).toEqual({ laterMs, heard: 2 });
    }
  });

  it('a rest of 60 s and a set rest of 120 s are followed by a cue in its place', () => {
    const audio = trialAudio();
    const { player, walk } = playerOn(audio);
    walk(300);
    const originMs = audio.nowMs() + 100;
    player.arm(counts([0, 60_000, 180_000]), originMs);
    walk(181_000);
    expect(audio.heardMs.length).toBe(3);
    for (const [index, atMs] of [0, 60_000, 180_000].entries()) {
      expect(Math.abs(audio.heardMs[index]! - originMs - atMs)).toBeLessThan(2.01);
    }
  });

  it('disarmed, nothing more sounds, not even what is on the audio clock already, and no wake-up is requested', () => {
    const audio = trialAudio();
    const { player, walk, isAwake } = playerOn(audio);
    walk(300);
    player.arm(counts([0, 500, 1000, 1500, 9000]), audio.nowMs() + 100);
    walk(700);
    expect(audio.heardMs.length).toBe(2);
    player.disarm();
    expect(isAwake()).toBe(false);
    walk(12_000);
    expect(audio.heardMs.length).toBe(2);
  });

  it('stops the audio clock in a long pause and no trouble is reported; what is armed after it sounds in its place', async () => {
    vi.useFakeTimers();
    const audio = trialAudio();
    const { player, walk } = playerOn(audio);
    const told: unknown[] = [];
    player.onTrouble((trouble) => told.push(trouble?.kind));
    player.arm(counts([400]), audio.nowMs());
    walk(1000);
    player.disarm();
    walk(500);
    vi.advanceTimersByTime(9999);
    expect(audio.context.state).toBe('running');
    vi.advanceTimersByTime(1);
    expect(audio.context.state).toBe('suspended');
    walk(60_000);
    const originMs = audio.nowMs();
    player.arm(counts([300, 1000]), originMs);
    await vi.advanceTimersByTimeAsync(0);
    walk(2000);
    const heard = audio.heardMs.slice(1).map((ms) => ms - originMs);
    expect(heard).toHaveLength(2);
    expect(heard[0]).toBeCloseTo(300, -1);
    expect(heard[1]).toBeCloseTo(1000, -1);
    expect(told).toEqual([]);
    vi.useRealTimers();
  });
});
