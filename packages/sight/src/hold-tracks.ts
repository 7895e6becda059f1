import type { BodyPoints } from './body-points.ts';
import { crossingAtMs, type Reading } from './crossing.ts';
import { median } from './median.ts';
import { faceOf, readStance } from './read-stance.ts';
import { type Place, type RestEdge, restEdges, type TimedFrame } from './rest-edge.ts';
import { type Found, findPatch, LEAST_MATCH, type Patch, slideOf, takePatch } from './track-patch.ts';

/** The places of a drawn archer that are followed by their pixels. */
export const TRACKED = ['drawHand', 'drawElbow', 'face', 'bowShoulder'] as const;
/** One of the places that are followed. */
export type Tracked = (typeof TRACKED)[number];

/** Where the places were found in one frame. */
export interface TrackedFrame {
  atMs: number;
  found: Partial<Record<Tracked, Found>>;
}

/** By place, the direction in which its patch may slide unnoticed, length 1. */
export type Slides = Partial<Record<Tracked, Place>>;

/** Off its place, torso lengths: about 7 mm, four times the error of a patch. */
const OFF_TORSOS = 0.014;
const LONGEST_KEPT = 4_000;
const SUDDEN_MS = 400;
/** An edge that far from where it was looked for is some other movement's. */
const FARTHEST_MS = 700;
/** A twitch is over by then, and stays this near to the rest, times off its place. */
const TWITCH_MS = 500;
const TWITCH_OFFS = 4;
const RESTING_FRAMES = 9;

/** Follows the pixels of one hold, from the frame in which it was known. */
export interface HoldTracks {
  push(now: TimedFrame): void;
  frames(): readonly TrackedFrame[];
  /** Which way a place's patch may slide unnoticed; only those that may. */
  slides(): Slides;
  /** When hand and elbow came to rest, each as its pixels tell it; a patch that cannot tell is left out. `aboutMs`: when the model thinks that it was. */
  cameToRest(before: readonly TimedFrame[], aboutMs: number): RestEdge[];
  /** Whether hand and elbow, as far as the pixels can tell, have been where they are ever since, milliseconds; false where there is nothing to tell it by. */
  restedSince(fromMs: number): boolean;
  /**
   * When they left their place.
   * @param recent the last seconds' frames
   * @param aboutMs when the model thinks that it was
   */
  left(recent: readonly TimedFrame[], aboutMs: number): RestEdge[];
  /** How far hand and elbow are from where they were a moment ago, torso lengths; only those that are found or known to have left. */
  moved(): number[];
}

/**
 * Begins to follow a hold.
 * @param now the frame in which the hold was known
 * @param points that frame's points, pixels
 * @param torso torso length, pixels
 * @returns what follows it
 */
export function trackHold(now: TimedFrame, points: BodyPoints, torso: number): HoldTracks {
  const radius = Math.max(4, Math.min(16, Math.round(torso * 0.11)));
  const reach = (betweenMs: number) => reachOf(torso, betweenMs);
  const off = Math.max(0.8, torso * OFF_TORSOS);
  const { drawSide } = readStance(points);
  const bowSide = drawSide === 'left' ? 'right' : 'left';
  const places = {
    drawHand: handOf(points[`${drawSide}Wrist`], points[`${drawSide}Elbow`]),
    drawElbow: points[`${drawSide}Elbow`],
    face: faceOf(points),
    bowShoulder: points[`${bowSide}Shoulder`],
  };
  const [wristNow, elbowNow] = [points[`${drawSide}Wrist`], points[`${drawSide}Elbow`]];
  const toWrist = { x: wristNow.x - elbowNow.x, y: wristNow.y - elbowNow.y };
  const patches: Partial<Record<Tracked, Patch>> = {};
  for (const name of TRACKED) {
    const patch = takePatch(now.frame, places[name].x, places[name].y, radius);
    if (patch !== undefined) patches[name] = patch;
  }
  let frames: TrackedFrame[] = [{ atMs: now.atMs, found: {} }];
  for (const name of TRACKED) {
    const patch = patches[name];
    if (patch !== undefined) (frames[0] as TrackedFrame).found[name] = { x: patch.x, y: patch.y, match: 1 };
  }

  function follow({ atMs, frame }: TimedFrame, last: TrackedFrame): TrackedFrame {
    const found: TrackedFrame['found'] = {};
    for (const name of TRACKED) {
      const patch = patches[name];
      const near = last.found[name];
      if (patch === undefined || near === undefined) continue;
      const here = findPatch(frame, patch, near, reach(Math.abs(atMs - last.atMs)));
      // A patch that is lost is looked for where it was last found.
      found[name] = here.match < LEAST_MATCH ? { ...near, match: here.match } : here;
    }
    return { atMs, found };
  }

  function exactEdges(around: readonly TimedFrame[], edge: { atMs: number; rest: 'before' | 'after' }): RestEdge[] {
    const at = (atMs: number) => frames.findLast((one) => one.atMs <= atMs)?.found;
    const still = (atMs: number) => [wellFound(at(atMs)?.face), wellFound(at(atMs)?.bowShoulder)];
    const moving = (atMs: number) => {
      const elbow = wellFound(at(atMs)?.drawElbow);
      const [wrist, forearm] = [1, 0.5].map(
        (part) => elbow && { x: elbow.x + toWrist.x * part, y: elbow.y + toWrist.y * part },
      );
      return [wellFound(at(atMs)?.drawHand), wrist, forearm, elbow];
    };
    const edges = restEdges(around, { ...edge, radius, reach, off }, moving, still);
    return edges.filter(({ atMs }) => Math.abs(atMs - edge.atMs) < FARTHEST_MS);
  }

  return {
    push(next) {
      frames.push(follow(next, frames.at(-1) as TrackedFrame));
    },
    frames: () => frames,
    slides: () =>
      Object.fromEntries(
        Object.entries(patches).flatMap(([name, patch]) => {
          const slide = slideOf(patch);
          return slide ? [[name, slide]] : [];
        }),
      ),
    cameToRest(before, aboutMs) {
      const back: TrackedFrame[] = [frames[0] as TrackedFrame];
      for (const frame of before.toReversed()) back.push(follow(frame, back.at(-1) as TrackedFrame));
      const restFromMs = now.atMs - 600;
      const away = handAndElbow(
        back,
        back.filter(({ atMs }) => atMs >= restFromMs),
        off,
      );
      frames = [...back.toReversed()];
      const rough = away.flatMap((readings) => leftRestAtMs(readings, off) ?? []);
      // The patches are from a second later: new ones, from nearer to the edge, tell more exactly.
      const exact = exactEdges([...before, now], { atMs: median([aboutMs, ...rough]), rest: 'after' });
      return exact.length > 0 ? exact : rough.map((atMs) => ({ atMs, isFollowed: false }));
    },
    restedSince(fromMs) {
      const since = frames.filter(({ atMs }) => atMs >= fromMs);
      const [first] = since;
      if (first === undefined || first.atMs > fromMs + FARTHEST_MS / 2) return false;
      const readings = handAndElbow(since, since.slice(-RESTING_FRAMES), off);
      // Seen all along: of a patch that was lost for a while nobody knows where it was.
      const isRest = (of: Reading[]) =>
        of.length === since.length && of.every(({ value }) => value < off * TWITCH_OFFS);
      return readings.length > 1 && readings.every(isRest);
    },
    left(recent, aboutMs) {
      const at = (frames.at(-1) as TrackedFrame).atMs;
      const lately = frames.filter(({ atMs }) => atMs > at - LONGEST_KEPT);
      const rough = handAndElbow(lately, restOf(lately, at), off).flatMap((readings) => {
        const still = readings.findLastIndex(({ value }) => value <= off);
        return still < 0 ? [] : (crossingAtMs(readings.slice(still), off) ?? []);
      });
      const exact = exactEdges(recent, { atMs: median([aboutMs, ...rough]), rest: 'before' });
      return exact.length > 0 ? exact : rough.map((atMs) => ({ atMs, isFollowed: false }));
    },
    moved() {
      const at = (frames.at(-1) as TrackedFrame).atMs;
      const recent = frames.filter(({ atMs }) => atMs > at - LONGEST_KEPT);
      // Against where they were a moment ago: a creep is slow, a let-down is not. A patch that was lost a while ago has no vote.
      return handAndElbow(recent, lately(recent, at), off).flatMap((readings) => {
        const last = readings.at(-1);
        return last === undefined || at - last.atMs > SUDDEN_MS ? [] : last.value / torso;
      });
    },
  };
}

/** How far to look for a patch by the time since it was found, pixels: a let-down takes a hand 2.5 torso lengths in a second. */
function reachOf(torso: number, betweenMs: number): number {
  const torsos = Math.min(0.5, Math.max(0.17, betweenMs * 0.0025));
  return Math.max(6, Math.round(torso * torsos));
}

/** Back in time, when a place had not yet come to rest; a twitch, from which it comes back at once, is left out. */
function leftRestAtMs(readings: readonly Reading[], off: number): number | undefined {
  let still = -1;
  for (const [index, { atMs, value }] of readings.entries()) {
    const last = readings[still];
    if (value > off) continue;
    if (last !== undefined && last.atMs - atMs > TWITCH_MS) break;
    still = index;
  }
  return still < 0 ? undefined : crossingAtMs(readings.slice(still), off);
}

/** The hand lies beyond the wrist, in line with the forearm; a forearm looks the same all along, so that a patch on it slides unnoticed. */
function handOf(wrist: Place, elbow: Place): Place {
  return { x: wrist.x + (wrist.x - elbow.x) * 0.4, y: wrist.y + (wrist.y - elbow.y) * 0.4 };
}

/** The frames that tell where hand and elbow rest: recent, but older than a let-down that is just under way. */
function restOf(frames: readonly TrackedFrame[], atMs: number): TrackedFrame[] {
  const rest = frames.filter((frame) => frame.atMs <= atMs - 600 && frame.atMs > atMs - 1_600);
  return rest.length > 0 ? rest : frames.slice(0, 1);
}

/** The frames of a moment ago. */
function lately(frames: readonly TrackedFrame[], atMs: number): TrackedFrame[] {
  const before = frames.filter((frame) => frame.atMs <= atMs - 300 && frame.atMs > atMs - 700);
  return before.length > 0 ? before : frames.slice(0, 1);
}

/** How far hand and elbow are from the median of their places at rest, the head's own movement left out where it is seen, pixels. */
function handAndElbow(frames: readonly TrackedFrame[], rest: readonly TrackedFrame[], off: number): Reading[][] {
  const face = placeOf(rest, 'face');
  const all = (['drawHand', 'drawElbow'] as const).map((name) => {
    const home = placeOf(rest, name);
    if (home === undefined) return [];
    let foundAtMs = Number.NaN;
    return frames.flatMap(({ atMs, found }): Reading[] => {
      const place = wellFound(found[name]);
      if (place !== undefined) {
        foundAtMs = atMs;
        const head = wellFound(found.face);
        const [nodX, nodY] = head && face ? [head.x - face.x, head.y - face.y] : [0, 0];
        return [{ atMs, value: Math.hypot(place.x - home.x - nodX, place.y - home.y - nodY) }];
      }
      // Lost of a sudden while others are there: it went, and turned on its way. With all of them gone it is the picture that changed,
      // and what fades slowly only looks different by now.
      const othersAreThere = wellFound(found.face) !== undefined || wellFound(found.bowShoulder) !== undefined;
      return othersAreThere && Math.abs(atMs - foundAtMs) < SUDDEN_MS ? [{ atMs, value: off * 12 }] : [];
    });
  });
  return all.filter((readings) => readings.length > 0);
}

function placeOf(frames: readonly TrackedFrame[], name: Tracked): Place | undefined {
  const places = frames.flatMap(({ found }) => wellFound(found[name]) ?? []);
  if (places.length === 0) return undefined;
  return { x: median(places.map(({ x }) => x)), y: median(places.map(({ y }) => y)) };
}

function wellFound(found: Found | undefined): Place | undefined {
  return found !== undefined && found.match >= LEAST_MATCH ? found : undefined;
}
