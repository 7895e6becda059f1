import type { Slides, Tracked, TrackedFrame } from './hold-tracks.ts';
import { median } from './median.ts';
import { LEAST_MATCH } from './track-patch.ts';

/** What can move in a hold: the draw elbow dropped, the bow shoulder came up, the draw crept forward. */
export type FormPart = 'elbow' | 'bowShoulder' | 'creep';

/** One part that moved since the anchor. It is a measurement, not a diagnosis. */
export interface FormReading {
  part: FormPart;
  /** How far at the end of the hold, centimetres, in the picture's plane. */
  cm: number;
  /** Since when, on the caller's clock, milliseconds. */
  fromMs: number;
  /** Whether it went clearly one way: an elbow that swings is on its way somewhere else. */
  isClear: boolean;
}

/** Less than this is "did not move", centimetres. Measured on rendered films: still holds read under 0.6, and a true 2 reads as 1.6 to 2.2. */
export const LEAST_MOVE_CM = 1.6;
/** What is said while a hold goes on is said of more, centimetres: a word for nothing disturbs. */
export const LIVE_MOVE_CM = 2.2;
/** A twitch is over by then. */
const SUSTAINED_MS = 500;
/** The first and last moments of a hold belong to the draw and the let-down. */
const SETTLE_MS = 300;
const ANCHOR_MS = 900;

/** One direction outweighs the other clearly. */
const CLEAR_RATIO = 1.5;
/** An edge within 18 degrees of upright: its direction's part down, of length 1. Of painted archers' shoulders 0.6 to 0.8. */
const UPRIGHT = 0.95;
/** The share of a hold's frames that must show a place, or nothing is said of it. */
const LEAST_SEEN = 0.6;

interface Offset {
  atMs: number;
  /** Towards the bow, centimetres. */
  forward: number;
  /** Down, centimetres. */
  down: number;
}

/**
 * Tells what moved in a hold since its anchor.
 * @param frames where elbow, shoulder and face were found, in the order of time
 * @param hold its instants, milliseconds; the scale; whether the bow is on the right of the picture; which places may slide along an edge
 * @returns what moved, and how long nothing had, milliseconds; `isJudged` is false where the patches were not found long enough to tell
 */
export function judgeForm(
  frames: readonly TrackedFrame[],
  hold: { fromMs: number; toMs: number; pixelsPerCm: number; bowRight: boolean; slides?: Slides },
): { form: FormReading[]; wholeMs: number; isJudged: boolean } {
  const inside = frames.filter(({ atMs }) => atMs >= hold.fromMs + SETTLE_MS && atMs <= hold.toMs - SETTLE_MS);
  const { drawElbow: elbowSlides, bowShoulder: shoulderSlides } = hold.slides ?? {};
  // An elbow on an edge may be anywhere along it. A shoulder always lies on one, and slopes: how far it comes up shows across it, but for an edge that is upright.
  const ofElbow = elbowSlides ? [] : offsets(inside, 'drawElbow', hold);
  const isUpright = shoulderSlides !== undefined && Math.abs(shoulderSlides.y) > UPRIGHT;
  const ofShoulder = isUpright ? [] : offsets(inside, 'bowShoulder', hold);
  const elbow = sustained(ofElbow);
  const shoulder = sustained(ofShoulder);
  const form: FormReading[] = [];
  if (elbow !== undefined) {
    const part = Math.abs(elbow.forward) > Math.abs(elbow.down) ? 'creep' : 'elbow';
    // Only forward is a creep, and only down is a drop: the other way is an archer who expands or corrects.
    if ((part === 'creep' ? elbow.forward : elbow.down) > 0) form.push({ part, ...readingOf(elbow) });
  }
  if (shoulder !== undefined && shoulder.down < 0 && Math.abs(shoulder.down) >= Math.abs(shoulder.forward)) {
    form.push({ part: 'bowShoulder', ...readingOf(shoulder) });
  }
  const firstMs = Math.min(hold.toMs, ...form.map(({ fromMs }) => fromMs));
  const isSeen = (all: readonly Offset[]) => all.length >= LEAST_SEEN * inside.length && all.length > 0;
  const isJudged = form.length > 0 || (isSeen(ofElbow) && isSeen(ofShoulder));
  return { form, wholeMs: Math.max(0, firstMs - hold.fromMs), isJudged };
}

/** How far a place went from where it was at the anchor: against the face and against the picture, whichever is less. */
function offsets(
  frames: readonly TrackedFrame[],
  name: Tracked,
  { pixelsPerCm, bowRight }: { pixelsPerCm: number; bowRight: boolean },
): Offset[] {
  const good = frames.filter(({ found }) => isFound(found[name]) && isFound(found.face));
  const firstMs = good[0]?.atMs ?? 0;
  const anchor = good.filter(({ atMs }) => atMs < firstMs + ANCHOR_MS);
  if (anchor.length < 3) return [];
  const at = (frame: TrackedFrame, axis: 'x' | 'y', part: Tracked) => frame.found[part]?.[axis] ?? 0;
  const home = (axis: 'x' | 'y', part: Tracked) => median(anchor.map((frame) => at(frame, axis, part)));
  const homes = { x: home('x', name), y: home('y', name), faceX: home('x', 'face'), faceY: home('y', 'face') };
  const sign = bowRight ? 1 : -1;
  return good.map((frame) => {
    const x = at(frame, 'x', name) - homes.x;
    const y = at(frame, 'y', name) - homes.y;
    const faceX = at(frame, 'x', 'face') - homes.faceX;
    const faceY = at(frame, 'y', 'face') - homes.faceY;
    // A nod moves everything against the face, a sway moves everything in the picture; a fault does both.
    const forward = common(x, x - faceX) * sign;
    return { atMs: frame.atMs, forward: forward / pixelsPerCm, down: common(y, y - faceY) / pixelsPerCm };
  });
}

/** The part of two movements that they share. */
function common(a: number, b: number): number {
  if (Math.sign(a) !== Math.sign(b)) return 0;
  return Math.abs(a) < Math.abs(b) ? a : b;
}

/** The offset at the end, and since when it lasts; undefined where it is small or did not last. */
function sustained(all: readonly Offset[]): (Offset & { fromMs: number }) | undefined {
  const last = all.at(-1);
  if (last === undefined) return undefined;
  const end = all.filter(({ atMs }) => atMs > last.atMs - SUSTAINED_MS);
  const offset = { atMs: last.atMs, forward: median(end.map((o) => o.forward)), down: median(end.map((o) => o.down)) };
  if (length(offset) < LEAST_MOVE_CM) return undefined;
  const still = all.findLastIndex((one) => length(one) < LEAST_MOVE_CM && one.atMs <= last.atMs - SUSTAINED_MS);
  return { ...offset, fromMs: all[still + 1]?.atMs ?? last.atMs };
}

function readingOf(offset: Offset & { fromMs: number }): Omit<FormReading, 'part'> {
  const [less = 0, more = 0] = [Math.abs(offset.forward), Math.abs(offset.down)].sort((a, b) => a - b);
  return { cm: length(offset), fromMs: offset.fromMs, isClear: more >= CLEAR_RATIO * less };
}

function length({ forward, down }: { forward: number; down: number }): number {
  return Math.hypot(forward, down);
}

function isFound(found: { match: number } | undefined): boolean {
  return found !== undefined && found.match >= LEAST_MATCH;
}
