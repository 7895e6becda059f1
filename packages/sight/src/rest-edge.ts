import { crossingAtMs, type Reading } from './crossing.ts';
import type { GrayFrame } from './gray-frame.ts';
import { median } from './median.ts';
import { type Found, findPatch, LEAST_MATCH, type Patch, takePatch } from './track-patch.ts';

/** A frame with its instant, milliseconds. */
export interface TimedFrame {
  atMs: number;
  frame: GrayFrame;
}

/** Where a place of the picture is, pixels. */
export interface Place {
  x: number;
  y: number;
}

/** What is known of the edge that is looked for. */
export interface SoughtEdge {
  /** Roughly when it is, milliseconds. */
  atMs: number;
  /** A draw comes to its rest, a let-down leaves it. */
  rest: 'before' | 'after';
  /** Half a patch's side, and how far off its place is off it, pixels. */
  radius: number;
  off: number;
  /** How far to look for a patch some milliseconds after it was found, pixels. */
  reach(betweenMs: number): number;
}

/** How far from the edge a patch is made, milliseconds: surely at rest, and still alike at the edge. */
const REST_MS = 500;
/** The frames around it tell where the place rests, and how much its look changes at rest. */
const PLATEAU_MS = 300;
/** How far a match falls below what it was at rest when it counts as a movement: a hand goes from a face that stays. Measured on painted films. */
const LEAST_FADE = 0.1;
/** A twitch is over by then. */
const TWITCH_MS = 500;

/** Still the same patch: its match has fallen by less than this since it rested. */
const FOLLOWED_FADE = 0.2;
/** Followed so much further than off its place, a patch has seen the movement. */
const FOLLOWED_OFFS = 3;

/** One place's word on an edge. */
export interface RestEdge {
  atMs: number;
  /** Whether the patch was followed into the movement; else it only looks different, or is lost. */
  isFollowed: boolean;
}

interface Sighting extends Found {
  atMs: number;
}

/** How far off its rest a place is, by whichever tells more. */
interface OffRest extends Reading {
  movedPixels: number;
  fade: number;
}

/**
 * When places came to rest or left it, each as its own pixels tell: it is off when it has moved, or when what is seen there has changed.
 * @param frames the pictures around the edge, in the order of time
 * @param sought what is known of it
 * @param moving where the places are at an instant, whose edges are wanted
 * @param still where those are that tell a body's sway, or a change of light, from a movement; the first one is the face
 * @returns an edge for each place that can tell, milliseconds
 */
export function restEdges(
  frames: readonly TimedFrame[],
  sought: SoughtEdge,
  moving: (atMs: number) => readonly (Place | undefined)[],
  still: (atMs: number) => readonly (Place | undefined)[],
): RestEdge[] {
  const outwards = sought.rest === 'before' ? 1 : -1;
  const wantedMs = sought.atMs - outwards * REST_MS;
  const inOrder = outwards > 0 ? frames : frames.toReversed();
  const home = nearest(inOrder, wantedMs);
  const from = inOrder[home];
  if (from === undefined) return [];
  const around = inOrder.slice(
    Math.max(
      0,
      inOrder.findIndex(({ atMs }) => Math.abs(atMs - from.atMs) <= PLATEAU_MS),
    ),
  );
  const at = around.indexOf(from);
  const track = (place: Place | undefined) => place && trackAround(around, at, place, sought);
  const calm = still(from.atMs).map(track);
  return moving(from.atMs).flatMap((place) => {
    const sightings = track(place);
    return sightings === undefined ? [] : (edgeOf(sightings, calm, from.atMs, sought.off) ?? []);
  });
}

function nearest(frames: readonly TimedFrame[], atMs: number): number {
  let best = 0;
  frames.forEach((frame, index) => {
    if (Math.abs(frame.atMs - atMs) < Math.abs((frames[best] as TimedFrame).atMs - atMs)) best = index;
  });
  return best;
}

/** Follows a place in both directions from the frame in which it is known. */
function trackAround(
  frames: readonly TimedFrame[],
  at: number,
  place: Place,
  { radius, reach }: SoughtEdge,
): Sighting[] | undefined {
  const home = frames[at] as TimedFrame;
  const patch = takePatch(home.frame, place.x, place.y, radius);
  if (patch === undefined) return undefined;
  const first: Sighting = { atMs: home.atMs, x: patch.x, y: patch.y, match: 1 };
  const back = follow(frames.slice(0, at).reverse(), patch, first, reach);
  return [...back.reverse(), first, ...follow(frames.slice(at + 1), patch, first, reach)];
}

function follow(frames: readonly TimedFrame[], patch: Patch, first: Sighting, reach: SoughtEdge['reach']): Sighting[] {
  let near: Found = first;
  let lastMs = first.atMs;
  return frames.map(({ atMs, frame }) => {
    const found = findPatch(frame, patch, near, reach(Math.abs(atMs - lastMs)));
    lastMs = atMs;
    // A patch that is lost is looked for where it was last found.
    near = found.match < LEAST_MATCH ? { ...near, match: found.match } : found;
    return { ...near, atMs };
  });
}

/** Where a place rests, and how well its patch matches there; the patch's own frame, in which it matches wholly, says nothing. */
function restOf(sightings: readonly Sighting[], homeMs: number) {
  const plateau = sightings.filter(({ atMs, match }) => Math.abs(atMs - homeMs) <= PLATEAU_MS && match >= LEAST_MATCH);
  const others = plateau.filter(({ atMs }) => atMs !== homeMs).map(({ match }) => match);
  const match = others.length > 0 ? median(others) : 1;
  const trembles = others.length > 0 ? median(others.map((one) => Math.abs(one - match))) : 0;
  return { x: median(plateau.map(({ x }) => x)), y: median(plateau.map(({ y }) => y)), match, trembles };
}

function edgeOf(
  sightings: readonly Sighting[],
  calm: readonly (readonly Sighting[] | undefined)[],
  homeMs: number,
  off: number,
): RestEdge | undefined {
  const rest = restOf(sightings, homeMs);
  const leastFade = Math.max(LEAST_FADE, 4 * rest.trembles);
  const rests = calm.map((one) => one && restOf(one, homeMs));
  const readings = sightings.flatMap(({ atMs, x, y, match }, index): OffRest[] => {
    const others = calm.flatMap((one, of) => {
      const [sighting, home] = [one?.[index], rests[of]];
      return sighting && home && sighting.match >= LEAST_MATCH ? [{ sighting, home }] : [];
    });
    // With all of them gone it is the picture that changed.
    if (match < LEAST_MATCH && others.length === 0) return [];
    const dimmed = Math.max(0, Math.min(...others.map(({ sighting, home }) => home.match - sighting.match)));
    const fade = rest.match - match - (others.length > 0 ? dimmed : 0);
    const [head] = others;
    const [swayX, swayY] = head ? [head.sighting.x - head.home.x, head.sighting.y - head.home.y] : [0, 0];
    const moved = match < LEAST_MATCH ? 0 : Math.hypot(x - rest.x - swayX, y - rest.y - swayY);
    return [{ atMs, value: Math.max(moved, (off * fade) / leastFade), movedPixels: moved, fade }];
  });
  const still = lastAtRest(readings, homeMs, off);
  const gone = readings.slice(Math.max(0, still));
  const atMs = crossingAtMs(gone, off);
  if (still < 0 || atMs === undefined) return undefined;
  const lost = gone.findIndex(({ fade }) => fade > FOLLOWED_FADE);
  const followed = lost < 0 ? gone : gone.slice(0, lost);
  return { atMs, isFollowed: followed.some(({ movedPixels }) => movedPixels > off * FOLLOWED_OFFS) };
}

/** Outwards from the rest: the last reading before it was left for longer than a twitch; -1 where it never rested. */
function lastAtRest(readings: readonly Reading[], homeMs: number, off: number): number {
  let still = -1;
  for (const [index, { atMs, value }] of readings.entries()) {
    const last = readings[still];
    if (value > off) continue;
    const isOut = last !== undefined && Math.abs(last.atMs - homeMs) > PLATEAU_MS;
    if (isOut && Math.abs(atMs - last.atMs) > TWITCH_MS) break;
    still = index;
  }
  return still;
}
