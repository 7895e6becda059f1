import type { Timeline } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { renderCueTrack } from './render-cue-track.ts';

const timeline: Timeline = {
  steps: [],
  durationMs: 70_000,
  cues: [5000, 30_333, 64_000].map((atMs) => ({ atMs, kind: 'draw' as const, words: 'Draw' })),
};

async function onsetsMs(file: Blob): Promise<number[]> {
  const audio = new OfflineAudioContext(1, 1, 48_000);
  const samples = (await audio.decodeAudioData(await file.arrayBuffer())).getChannelData(0);
  const onsets: number[] = [];
  let lastLoud = Number.NEGATIVE_INFINITY;
  for (const [index, sample] of samples.entries()) {
    if (Math.abs(sample) < 0.03) continue;
    if (index - lastLoud > 24_000) onsets.push(index / 48);
    lastLoud = index;
  }
  return onsets;
}

describe('renderCueTrack in a browser', () => {
  it.each(['wav', 'webm'] as const)('gives a %s that plays the cues at their times', async (format) => {
    const heard = await onsetsMs(await renderCueTrack(timeline, { format, level: 1 }));
    expect(heard.length).toBe(3);
    // The attack takes up to 3 ms to pass the threshold; an Opus frame smears a beginning by a few more.
    for (const [index, { atMs }] of timeline.cues.entries()) expect(Math.abs(heard[index]! - atMs)).toBeLessThan(10);
  });

  it('speaks in the track', async () => {
    const spoken = await onsetsMs(await renderCueTrack(timeline, { voice: 'words', level: 1 }));
    expect(spoken.length).toBe(3);
    for (const [index, { atMs }] of timeline.cues.entries()) expect(Math.abs(spoken[index]! - atMs)).toBeLessThan(30);
    const bytes = async (voice: 'words' | 'tones') =>
      new Uint8Array(await (await renderCueTrack(timeline, { voice })).arrayBuffer());
    expect(await bytes('words')).not.toEqual(await bytes('tones'));
  });

  it('encodes half an hour in less than a minute and stops when cancelled', async () => {
    const cues = Array.from({ length: 300 }, (_, index) => ({ atMs: index * 6000, kind: 'count' as const }));
    const long = { steps: [], cues, durationMs: 1_800_000 };
    const began = performance.now();
    const file = await renderCueTrack(long, { format: 'webm' });
    console.info(`half an hour: ${Math.round(performance.now() - began)} ms, ${file.size} bytes`);
    expect(performance.now() - began).toBeLessThan(60_000);
    expect(file.size).toBeLessThan(8_000_000);
    const stop = new AbortController();
    const cancelled = renderCueTrack(long, { format: 'webm', signal: stop.signal, onProgress: () => stop.abort() });
    await expect(cancelled).rejects.toThrow(/abort/i);
  }, 120_000);
});
