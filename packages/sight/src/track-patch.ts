import type { GrayFrame } from './gray-frame.ts';

/** A small square of a picture that is looked for in other pictures. */
export interface Patch {
  /** The square's middle where it was taken, pixels. */
  x: number;
  y: number;
  radius: number;
  /** Its pixels less their mean. */
  values: Float32Array;
  /** Sum of their squares: a patch without any pattern cannot be found again. */
  energy: number;
}

/** Where a patch was found. `match`: 1 the same pixels, 0 nothing in common. */
export interface Found {
  x: number;
  y: number;
  match: number;
}

/** Below this, a patch has not been found, or never had a pattern. Measured on rendered films. */
export const LEAST_MATCH = 0.5;
const LEAST_ENERGY_PER_PIXEL = 12;

/**
 * Takes a patch out of a picture.
 * @param frame the picture
 * @param x its middle, pixels; rounded
 * @param y its middle, pixels; rounded
 * @param radius half its side, pixels; the side is twice that and one
 * @returns the patch; undefined where it would reach over the edge or shows no pattern to find it by
 */
export function takePatch(frame: GrayFrame, x: number, y: number, radius: number): Patch | undefined {
  const left = Math.round(x) - radius;
  const top = Math.round(y) - radius;
  const side = radius * 2 + 1;
  if (!(left >= 0 && top >= 0 && left + side <= frame.width && top + side <= frame.height)) return undefined;
  const values = new Float32Array(side * side);
  let sum = 0;
  for (let v = 0, at = 0; v < side; v++) {
    for (let u = 0; u < side; u++, at++) {
      const value = frame.data[(top + v) * frame.width + left + u] ?? 0;
      values[at] = value;
      sum += value;
    }
  }
  const mean = sum / values.length;
  let energy = 0;
  for (let at = 0; at < values.length; at++) {
    const value = (values[at] ?? 0) - mean;
    values[at] = value;
    energy += value * value;
  }
  if (energy < values.length * LEAST_ENERGY_PER_PIXEL) return undefined;
  return { x: Math.round(x), y: Math.round(y), radius, values, energy };
}

/** The edge in a patch that shows nothing else: along it, less than this share of what changes across it. Measured on painted films: 0.37 and more for an elbow that is found where it is, 0.17 and less for one that slides. */
const LEAST_ALONG = 0.25;

/**
 * Which way a patch may slide unnoticed: along an edge it looks the same all the way (the smaller eigenvalue of its structure tensor, after Shi and Tomasi 1994).
 * @param patch the patch
 * @returns a direction of length 1, pixels; undefined where it is found for what it is both ways
 */
export function slideOf({ radius, values }: Patch): { x: number; y: number } | undefined {
  const side = radius * 2 + 1;
  const at = (x: number, y: number) => values[y * side + x] as number;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (let y = 1; y < side - 1; y++) {
    for (let x = 1; x < side - 1; x++) {
      const across = at(x + 1, y) - at(x - 1, y);
      const down = at(x, y + 1) - at(x, y - 1);
      xx += across * across;
      yy += down * down;
      xy += across * down;
    }
  }
  const middle = (xx + yy) / 2;
  const spread = Math.hypot((xx - yy) / 2, xy);
  if (middle - spread >= LEAST_ALONG * (middle + spread)) return undefined;
  // Across the edge the picture changes most: the slide is at right angles to that.
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  return { x: -Math.sin(angle), y: Math.cos(angle) };
}

/**
 * Finds a patch again: the least sum of squared differences, brightness left out, to a part of a pixel.
 * @param frame where to look
 * @param patch what to look for
 * @param near where it was last, pixels
 * @param reach how far from there to look, pixels
 * @returns its place, and how well it matches; match 0 where there is no room to look
 */
export function findPatch(frame: GrayFrame, patch: Patch, near: { x: number; y: number }, reach: number): Found {
  const { radius, energy } = patch;
  const nearX = Math.round(near.x);
  const nearY = Math.round(near.y);
  const costs = new Map<number, number>();
  const stride = 4096;
  const costAt = (x: number, y: number): number => {
    const key = (y + 2048) * stride + x + 2048;
    const known = costs.get(key);
    if (known !== undefined) return known;
    const inside = x >= radius && y >= radius && x + radius < frame.width && y + radius < frame.height;
    const cost = inside ? difference(frame, patch, x, y) : Number.POSITIVE_INFINITY;
    costs.set(key, cost);
    return cost;
  };
  let best = { x: nearX, y: nearY, cost: costAt(nearX, nearY) };
  const tryAt = (x: number, y: number) => {
    const cost = costAt(x, y);
    if (cost < best.cost) best = { x, y, cost };
  };
  // Every second pixel first, then around the best: a patch is smooth over two pixels.
  for (let dy = -reach; dy <= reach; dy += 2) for (let dx = -reach; dx <= reach; dx += 2) tryAt(nearX + dx, nearY + dy);
  for (let round = 0; round < 3; round++) {
    const { x, y } = best;
    for (let dy = -1; dy <= 1; dy++) for (let dx = -1; dx <= 1; dx++) tryAt(x + dx, y + dy);
    if (best.x === x && best.y === y) break;
  }
  if (!Number.isFinite(best.cost)) return { x: near.x, y: near.y, match: 0 };
  return {
    x: best.x + vertex(costAt(best.x - 1, best.y), best.cost, costAt(best.x + 1, best.y)),
    y: best.y + vertex(costAt(best.x, best.y - 1), best.cost, costAt(best.x, best.y + 1)),
    match: Math.max(0, 1 - best.cost / energy),
  };
}

/** Sum of squared differences between patch and picture, each less its own mean. */
function difference({ data, width }: GrayFrame, { radius, values, energy }: Patch, x: number, y: number): number {
  const side = radius * 2 + 1;
  let sum = 0;
  let squares = 0;
  // Two sums, each of every second pixel: a processor need not wait for the one to add to the other. This loop takes most of a picture's time.
  let product = 0;
  let other = 0;
  for (let v = 0, at = 0; v < side; v++) {
    let from = (y - radius + v) * width + x - radius;
    for (let pair = 0; pair < radius; pair++, at += 2, from += 2) {
      const value = data[from] as number;
      const next = data[from + 1] as number;
      sum += value + next;
      squares += value * value + next * next;
      product += value * (values[at] as number);
      other += next * (values[at + 1] as number);
    }
    const last = data[from] as number;
    sum += last;
    squares += last * last;
    product += last * (values[at++] as number);
  }
  return energy + squares - (sum * sum) / (side * side) - 2 * (product + other);
}

/** Where a parabola through three neighbours is least, -0.5 to 0.5 from the middle one. */
function vertex(before: number, at: number, after: number): number {
  const bend = before - 2 * at + after;
  if (!Number.isFinite(bend) || bend <= 0) return 0;
  return Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend)));
}
