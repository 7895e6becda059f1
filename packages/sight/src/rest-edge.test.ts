import { describe, expect, it } from 'vitest';
import type { GrayFrame } from './gray-frame.ts';
import { restEdges, type TimedFrame } from './rest-edge.ts';

// A pattern that moves over another one which stays: its way is known to a part of a pixel.

const WIDTH = 160;
const HEIGHT = 120;
const HOME = { x: 60, y: 60 };
const FACE = { x: 125, y: 35 };
const LEFT_AT = 2_000;
const FOUND = { radius: 8, reach: () => 10, off: 1.5 };

const wall = (x: number, y: number) => 100 + 20 * Math.sin(x * 0.21 + y * 0.13) + 15 * Math.cos(x * 0.09 - y * 0.24);
const cloth = (x: number, y: number) => 150 + 45 * Math.sin(x * 0.43 + y * 0.17) + 35 * Math.cos(y * 0.51 - x * 0.2);

interface Scene {
  /** The moving square's way from its place, pixels. */
  wayAt(atMs: number): number;
  swayAt?(atMs: number): number;
  brightAt?(atMs: number): number;
  /** How much its look differs from what it was, 0 to 1: cloth that folds. */
  foldAt?(atMs: number): number;
  /** Half a side of what moves: smaller than a patch, most of the patch stays where it is. */
  half?: number;
}

function picture(
  { wayAt, swayAt = () => 0, brightAt = () => 1, foldAt = () => 0, half = 20 }: Scene,
  atMs: number,
): GrayFrame {
  const data = new Uint8Array(WIDTH * HEIGHT);
  const sway = swayAt(atMs);
  const way = wayAt(atMs) + sway;
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      const isMoving = Math.abs(x - way - HOME.x) <= half && Math.abs(y - HOME.y) <= half;
      const folded = isMoving ? 35 * foldAt(atMs) * Math.sin(x * 0.9 + y * 0.7) : 0;
      data[y * WIDTH + x] = (isMoving ? cloth(x - way, y) + folded : wall(x - sway, y)) * brightAt(atMs);
    }
  }
  return { width: WIDTH, height: HEIGHT, data };
}

function edges(scene: Scene, rest: 'before' | 'after' = 'before', aboutMs = LEFT_AT + 150) {
  const frames: TimedFrame[] = [];
  for (let atMs = 600; atMs < 3_400; atMs += 1_000 / 15) frames.push({ atMs, frame: picture(scene, atMs) });
  return restEdges(
    frames,
    { atMs: aboutMs, rest, ...FOUND },
    () => [HOME],
    () => [FACE],
  );
}

/** Starts slowly, as a hand does: 60 pixels in 850 ms. */
const letDown = (atMs: number) => {
  const t = Math.max(0, Math.min(1, (atMs - LEFT_AT) / 850));
  return 60 * t * t * t * (10 - 15 * t + 6 * t * t);
};
/** It is 1.5 pixels off its place 124 ms after the movement has begun (the curve above, solved by hand). */
const OFF_AT = LEFT_AT + 124;

describe('the edge of a rest', () => {
  it('is found where it was left, to a third of a frame, by a patch that was followed', () => {
    const [edge] = edges({ wayAt: letDown });
    expect(Math.abs((edge?.atMs ?? 0) - OFF_AT)).toBeLessThan(25);
    expect(edge?.isFollowed).toBe(true);
  });

  it('is found backwards, where the rest came after it', () => {
    const [edge] = edges({ wayAt: (atMs) => letDown(2 * LEFT_AT - atMs) }, 'after', LEFT_AT - 150);
    expect(Math.abs((edge?.atMs ?? 0) - (2 * LEFT_AT - OFF_AT))).toBeLessThan(25);
  });

  it('is a change of look where most of a patch stays: a hand in front of a face', () => {
    const [edge] = edges({ wayAt: letDown, half: 5 });
    // Where only the place of the patch counts, it is 200 ms late or not found at all.
    expect(Math.abs((edge?.atMs ?? 0) - OFF_AT)).toBeLessThan(100);
    expect(edge?.isFollowed).toBe(false);
  });

  it.each<[string, Scene]>([
    ['a body that sways', { wayAt: () => 0, swayAt: (atMs) => (atMs > LEFT_AT ? (atMs - LEFT_AT) * 0.008 : 0) }],
    ['a lamp that goes dim', { wayAt: () => 0, brightAt: (atMs) => (atMs > LEFT_AT ? 0.55 : 1) }],
    ['a lamp that goes off', { wayAt: () => 0, brightAt: (atMs) => (atMs > LEFT_AT ? 0.01 : 1) }],
    ['a twitch', { wayAt: (atMs) => 6 * Math.exp(-(((atMs - LEFT_AT) / 80) ** 2)) }],
    ['nothing at all', { wayAt: () => 0 }],
    // Of two pictures one, to the last: what trembles at rest trembles on.
    [
      'a look that trembles',
      { wayAt: () => 0, foldAt: (atMs) => (Math.round((atMs - 600) / (1_000 / 15)) % 2 ? 1 : 0) },
    ],
  ])('is not %s', (_name, scene) => {
    expect(edges(scene)).toEqual([]);
  });

  it('is the one after a twitch', () => {
    const twitch = (atMs: number) => 6 * Math.exp(-(((atMs - LEFT_AT + 200) / 40) ** 2));
    const [edge] = edges({ wayAt: (atMs) => letDown(atMs) + twitch(atMs) }, 'before', LEFT_AT - 100);
    expect(Math.abs((edge?.atMs ?? 0) - OFF_AT)).toBeLessThan(40);
  });

  it('is the first one, where the place is left for a while and comes back', () => {
    // Half of the way, and back again half a second later: off its place from 161 ms on (the curve above, solved by hand) for more than a second.
    const [edge] = edges({ wayAt: (atMs) => (letDown(atMs) - letDown(atMs - 500)) / 2 });
    expect(Math.abs((edge?.atMs ?? 0) - LEFT_AT - 161)).toBeLessThan(40);
  });

  it('is not told as one that was followed by a patch that went hardly farther than off its place', () => {
    const [edge] = edges({ wayAt: (atMs) => letDown(atMs) / 24 });
    expect(edge?.isFollowed).toBe(false);
    const [farther] = edges({ wayAt: (atMs) => letDown(atMs) / 8 });
    expect(farther?.isFollowed).toBe(true);
  });

  it('is nothing where there is no picture, and no pattern', () => {
    expect(
      restEdges(
        [],
        { atMs: 0, rest: 'before', ...FOUND },
        () => [HOME],
        () => [FACE],
      ),
    ).toEqual([]);
    const plain = { width: WIDTH, height: HEIGHT, data: new Uint8Array(WIDTH * HEIGHT).fill(90) };
    const frames = [0, 100, 200].map((atMs) => ({ atMs, frame: plain }));
    expect(
      restEdges(
        frames,
        { atMs: 100, rest: 'before', ...FOUND },
        () => [HOME],
        () => [FACE],
      ),
    ).toEqual([]);
  });
});
