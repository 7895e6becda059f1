import type { Timeline } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { cueTone } from './cue-tone.ts';
import { renderCueTrack } from './render-cue-track.ts';

/** A drill with cues at odd milliseconds, 62 s long so that it crosses a chunk; the last cue lies across the minute. */
const timeline: Timeline = {
  steps: [],
  durationMs: 62_000,
  cues: [
    { atMs: 0, kind: 'ready' },
    { atMs: 10_001, kind: 'draw' },
    { atMs: 13_333, kind: 'hold' },
    { atMs: 30_777, kind: 'count' },
    { atMs: 59_900, kind: 'letDown' },
  ],
};

async function read(blob: Blob): Promise<{ view: DataView; sample: (index: number) => number }> {
  const view = new DataView(await blob.arrayBuffer());
  return { view, sample: (index) => view.getInt16(44 + index * 2, true) };
}

describe('renderCueTrack', () => {
  it('puts each cue at its time, to the sample', async () => {
    const { view, sample } = await read(await renderCueTrack(timeline, { level: 1 }));
    // 24 samples a millisecond at 24 kHz; 62 s and 3 s for the last sound to end; header fields by the RIFF WAVE specification.
    expect(view.byteLength).toBe(44 + 65 * 24_000 * 2);
    expect(view.getUint32(24, true)).toBe(24_000);
    expect(view.getUint32(40, true)).toBe(65 * 24_000 * 2);
    for (const { atMs, kind } of timeline.cues) {
      const tone = cueTone(kind, 24_000);
      for (const index of [0, 1, 2, 100, tone.length - 1]) {
        expect(sample(atMs * 24 + index)).toBe(Math.round(tone[index]! * 32767) + 0);
      }
      if (atMs > 0) expect(sample(atMs * 24 - 1)).toBe(0);
    }
  });

  it('renders a track minute by minute and says how far it is', async () => {
    const told: number[] = [];
    const cues = Array.from({ length: 50 }, (_, index) => ({ atMs: index * 6000, kind: 'count' as const }));
    const blob = await renderCueTrack(
      { steps: [], cues, durationMs: 300_000 },
      { onProgress: (part) => told.push(part) },
    );
    expect(blob.size).toBe(44 + 303 * 24_000 * 2);
    expect(told.length).toBe(6);
    expect(told.at(-1)).toBe(1);
    expect([...told].sort((a, b) => a - b)).toEqual(told);
  });

  it('stops when it is cancelled', async () => {
    const stop = new AbortController();
    const rendering = renderCueTrack(timeline, { signal: stop.signal, onProgress: () => stop.abort() });
    await expect(rendering).rejects.toThrow(/abort/i);
  });

  it('refuses a level out of range', async () => {
    await expect(renderCueTrack(timeline, { level: 2 })).rejects.toThrow(RangeError);
  });
});
