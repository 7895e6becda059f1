import { afterEach, expect, test } from 'vitest';
import { decodeReplay } from './play-replay.ts';
import { createReplayRecorder, type ReplayRecorder } from './record-replay.ts';

const WIDTH = 320;
const HEIGHT = 240;
let recorder: ReplayRecorder | undefined;

afterEach(() => recorder?.close());

/** A white bar that walks over the picture: where it is says which frame it is. */
async function record(forMs: number): Promise<ReplayRecorder> {
  recorder = await createReplayRecorder(WIDTH, HEIGHT);
  if (!recorder) throw new Error('this browser encodes no video');
  const canvas = new OffscreenCanvas(WIDTH, HEIGHT);
  const context = canvas.getContext('2d');
  for (let atMs = 0; atMs <= forMs; atMs += 1_000 / 15) {
    context?.fillRect(0, 0, WIDTH, HEIGHT);
    if (context) context.fillStyle = '#fff';
    context?.fillRect(barAt(atMs), 0, 20, HEIGHT);
    if (context) context.fillStyle = '#000';
    recorder.push(new VideoFrame(canvas, { timestamp: 0 }), atMs);
    await new Promise((resolve) => setTimeout(resolve, 4)); // a camera gives the encoder time too
  }
  return recorder;
}

const barAt = (atMs: number) => (atMs / 20) % 300;

function barOf(picture: ImageBitmap): number {
  const canvas = new OffscreenCanvas(WIDTH, HEIGHT);
  const context = canvas.getContext('2d');
  context?.drawImage(picture, 0, 0);
  const row = context?.getImageData(0, 100, WIDTH, 1).data ?? [];
  return Array.from({ length: WIDTH }, (_, x) => row[x * 4] ?? 0).findIndex((value) => value > 128);
}

test('a hold comes back from its first moment to its last, each picture at its instant', async () => {
  const clip = await (await record(6_000)).clip(2_100, 4_000);
  if (!clip) throw new Error('no clip');
  const seen: number[] = [];
  for await (const { atMs, picture } of decodeReplay(clip)) {
    seen.push(atMs);
    expect(Math.abs(barOf(picture) - barAt(atMs))).toBeLessThan(6);
    picture.close();
  }
  expect(seen[0]).toBeGreaterThanOrEqual(2_100);
  expect(seen[0]).toBeLessThan(2_400);
  expect(seen.at(-1)).toBeGreaterThan(3_800);
  expect(seen.length).toBeGreaterThan(20);
  expect([...seen].sort((a, b) => a - b)).toEqual(seen);
});

test('it can be played again, and left in the middle', async () => {
  const kept = await record(3_000);
  for (let round = 0; round < 3; round++) {
    const clip = await kept.clip(500, 2_500);
    if (!clip) throw new Error('no clip');
    for await (const { picture } of decodeReplay(clip)) {
      picture.close();
      break;
    }
  }
  expect(kept.bytes()).toBeGreaterThan(0);
});

test('nothing is left once it is closed', async () => {
  const kept = await record(1_000);
  kept.close();
  expect(kept.bytes()).toBe(0);
  expect(await kept.clip(0, 1_000)).toBeUndefined();
});
