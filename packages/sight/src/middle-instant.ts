import { median } from './median.ts';
import type { RestEdge } from './rest-edge.ts';

/** A single edge that far from the model's instant is some other movement's, milliseconds. */
const NEAR_MS = 400;

/**
 * The median of the model's instant and the pixels'; a patch that was followed into the movement counts twice. With only one of them it must be near.
 * @param modelMs the model's instant, milliseconds
 * @param edges what the pixels tell
 * @returns the instant, milliseconds
 */
export function middleInstant(modelMs: number, edges: readonly RestEdge[]): number {
  const [only] = edges;
  if (edges.length === 1 && only !== undefined) return Math.abs(only.atMs - modelMs) < NEAR_MS ? only.atMs : modelMs;
  return median([modelMs, ...edges.flatMap(({ atMs, isFollowed }) => (isFollowed ? [atMs, atMs] : [atMs]))]);
}
