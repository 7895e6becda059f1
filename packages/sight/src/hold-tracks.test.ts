import { describe, expect, it } from 'vitest';
import { BODY_POINT_NAMES, type BodyPoints } from './body-points.ts';
import type { GrayFrame } from './gray-frame.ts';
import { trackHold } from './hold-tracks.ts';
import type { TimedFrame } from './rest-edge.ts';

// Four patterned squares before a patterned wall: the draw hand, its elbow, the face, the bow shoulder. Their ways are known, and a torso is 100 pixels.

const WIDTH = 220;
const HEIGHT = 130;
const TORSO = 100;
const HALF = 15;
const FRAME_MS = 50;
const FACE = { x: 130, y: 30 };
const SHOULDER = { x: 150, y: 90 };
const WRIST = { x: 75, y: 60 };
const ELBOW = { x: 35, y: 60 };
/** Beyond the wrist by two fifths of what lies between it and the elbow. */
const HAND = { x: 91, y: 60 };
/** A let-down begins at 8 hundredths of a torso's length (about 4 cm): below, neither hand nor elbow has left its place. */
const LEFT_ITS_PLACE = 0.08;

interface Scene {
  /** How far hand and elbow are from their places, pixels to the right. */
  hand?: (atMs: number) => number;
  elbow?: (atMs: number) => number;
  /** The hand cannot be seen. */
  isHidden?: (atMs: number) => boolean;
  isDark?: (atMs: number) => boolean;
}

const wall = Uint8Array.from({ length: WIDTH * HEIGHT }, (_, at) => {
  const [x, y] = [at % WIDTH, Math.floor(at / WIDTH)];
  return 100 + 20 * Math.sin(x * 0.21 + y * 0.13) + 15 * Math.cos(x * 0.09 - y * 0.24);
});

function pictureOf({ hand = () => 0, elbow = () => 0, isHidden, isDark }: Scene, atMs: number): GrayFrame {
  if (isDark?.(atMs)) return { width: WIDTH, height: HEIGHT, data: new Uint8Array(WIDTH * HEIGHT) };
  const data = wall.slice();
  const square = (home: { x: number; y: number }, way: number) => {
    const middle = Math.round(home.x + way);
    for (let y = home.y - HALF; y <= home.y + HALF; y++) {
      for (let x = middle - HALF; x <= middle + HALF; x++) {
        const u = x - way;
        data[y * WIDTH + x] = 150 + 45 * Math.sin(u * 0.43 + y * 0.17) + 35 * Math.cos(y * 0.51 - u * 0.2);
      }
    }
  };
  square(FACE, 0);
  square(SHOULDER, 0);
  square(ELBOW, elbow(atMs));
  if (!isHidden?.(atMs)) square(HAND, hand(atMs));
  return { width: WIDTH, height: HEIGHT, data };
}

const places: Partial<Record<keyof BodyPoints, { x: number; y: number }>> = {
  leftWrist: WRIST,
  leftElbow: ELBOW,
  rightShoulder: SHOULDER,
  rightWrist: { x: 205, y: 110 },
};
const points = Object.fromEntries(
  BODY_POINT_NAMES.map((name) => [name, { ...(places[name] ?? FACE), score: 1 }]),
) as unknown as BodyPoints;

/** Follows a scene from 1,000 ms on. */
function followed(scene: Scene, toMs: number) {
  const film: TimedFrame[] = [];
  for (let atMs = 1_000; atMs <= toMs; atMs += FRAME_MS) film.push({ atMs, frame: pictureOf(scene, atMs) });
  const [first, ...rest] = film;
  if (first === undefined) throw new Error('no picture');
  const tracks = trackHold(first, points, TORSO);
  for (const frame of rest) tracks.push(frame);
  return { tracks, film };
}

const between = (fromMs: number, toMs: number) => (atMs: number) => atMs >= fromMs && atMs < toMs;

describe('a hold that is followed', () => {
  it('has not moved, and rests since it was known', () => {
    const { tracks } = followed({}, 2_500);
    expect(tracks.moved()).toHaveLength(2);
    expect(Math.max(...tracks.moved())).toBeLessThan(0.01);
    expect(tracks.restedSince(1_000)).toBe(true);
    // Of what was before it was known nobody can tell.
    expect(tracks.restedSince(500)).toBe(false);
  });

  it('sees the hand beyond the wrist move, a tenth of a torso in a tenth of a second', () => {
    const { tracks } = followed({ hand: (atMs) => Math.max(0, atMs - 2_400) * 0.1 }, 2_500);
    const [hand = 0, elbow = 1] = tracks.moved();
    expect(hand).toBeGreaterThan(0.09);
    expect(hand).toBeLessThan(0.11);
    expect(elbow).toBeLessThan(0.01);
  });

  it('has left its place when it is 7 mm off it, a slow let-down too', () => {
    // 49 cm of torso are 100 pixels: 1.4 pixels, which at 20 pixels a second it has come after 70 ms.
    const way = (atMs: number) => Math.max(0, atMs - 2_000) * 0.02;
    const { tracks, film } = followed({ hand: way, elbow: way }, 3_000);
    const left = tracks.left(film, 2_100);
    expect(left.length).toBeGreaterThan(0);
    for (const { atMs } of left) expect(Math.abs(atMs - 2_070)).toBeLessThan(60);
  });

  it('counts a hand that is gone of a sudden as gone, but not where it is the picture that changed', () => {
    const gone = followed({ isHidden: between(2_400, 9_000) }, 2_400).tracks.moved();
    expect(gone[0]).toBeGreaterThan(LEFT_ITS_PLACE);
    const dark = followed({ isDark: between(2_400, 9_000) }, 2_400).tracks.moved();
    expect(dark.every((torsos) => torsos < LEFT_ITS_PLACE)).toBe(true);
    // Lost for half a second: it has no vote any more.
    expect(followed({ isDark: between(2_000, 9_000) }, 2_500).tracks.moved()).toEqual([]);
  });

  it('has not rested where it was away for half a second, or could not be seen', () => {
    const away = (atMs: number) => (between(1_500, 2_000)(atMs) ? 8 : 0);
    expect(followed({ hand: away }, 3_000).tracks.restedSince(1_000)).toBe(false);
    expect(followed({ isDark: between(1_500, 2_000) }, 3_000).tracks.restedSince(1_000)).toBe(false);
    // A twitch of 2 cm, 4 pixels, is over at once.
    const twitch = (atMs: number) => (between(1_500, 1_600)(atMs) ? 4 : 0);
    expect(followed({ hand: twitch }, 3_000).tracks.restedSince(1_000)).toBe(true);
  });
});
