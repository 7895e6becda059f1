import type { BodyPoints } from './body-points.ts';
import { crossingAtMs, type Reading } from './crossing.ts';
import { median } from './median.ts';
import { readStance, type Stance } from './read-stance.ts';
import type { Refusal, SightEvent } from './sight-event.ts';

/** Shorter holds are ignored, milliseconds: a raised bow that is not drawn looks like one for a moment. Measured on rendered films. */
export const SHORTEST_HOLD_MS = 1_200;
/** Less sure wrists are not believed where there is little light, 0 to 1. Measured on rendered films: in the dark they lie below. */
export const LEAST_WRIST_SCORE = 0.4;
/**
 * In ordinary light a hand before skin or a shirt of its own colour is less sure, and yet stays where it is: 0.28 to 0.4 on rendered films of archers drawn
 * at random. What keeps a mistake out there is that a hold stays at one level, and that the pixels have a say.
 */
const LEAST_LIT_WRIST_SCORE = 0.26;
/**
 * While the hands hang, a face that is less sure in a quarter of the frames is the back of a head. Measured on painted films: 0.25 to 0.35 from
 * behind, 0.44 and more from in front.
 */
export const LEAST_FACE_SCORE = 0.4;

const LEAST_TRUNK_SCORE = 0.45;

/** Hand to hand at full draw before the first hold taught how far it is, torso lengths: 1.6 seen from the front, 1.1 from 30 degrees behind. */
const DRAWN_FROM = 1.02;
/** Up to here an undrawn bow can look drawn to the model, so that an uncalibrated hold must last longer to be believed. */
const CLEARLY_DRAWN_FROM = 1.2;
const DOUBTFUL_HOLD_MS = 2_500;
const UNSURE_HOLD_MS = 2_000;
const LASTING_DOUBT_MS = 4_000;
/** Nobody's hands are farther apart at full draw than this, torso lengths: beyond it the model takes the draw elbow for the hand, and may think better of it. */
const MOST_FULL_DRAW = 1.75;
/** The draw hand is by the face, torso lengths; the elbow, where the model takes it for the hand, lies up to 1.04 off. An arm that is stretched out: 1.5. */
const BY_THE_FACE = 1.2;
/** Once full draw is known, a hold begins above this part of it and ends below the other one. */
const DRAWN_RATIO = 0.88;
const UNDRAWN_RATIO = 0.8;
/** How far a draw gives way in a let-down, torso lengths: about 7 cm, three times what a twitch or a poor frame makes. */
const LET_DOWN_TORSOS = 0.14;
/** More than a draw can creep and still be one, torso lengths: 12 cm. */
const MOST_CREEP_TORSOS = 0.25;
/** How far from the level of the hold its edges are looked for, torso lengths: three times the model's noise. */
const EDGE_TORSOS = 0.06;
/** Below this mean brightness, 0 to 255, it is the light that is wanting. */
const DARK = 50;
/**
 * Both hands seen in one place before the chest, torso lengths: a model that has lost one of them takes the other for it. A band may be let down to there
 * as well, and then they stay, milliseconds.
 */
const TOGETHER_TORSOS = 0.28;
const TOGETHER_MS = 250;
const LONGEST_BLIND_MS = 1_000;
/** How long a slow machine may look away: nobody lets down and is at full draw again in less. */
const LONGEST_SLOW_MS = 2_500;
const KEPT_MS = 5_000;

interface Sample {
  atMs: number;
  spread: number;
  stance: Stance;
}

/** Sees from points alone when a bow is drawn and let down. No clock: `atMs` is the caller's, milliseconds, and only grows. */
export interface HoldDetector {
  /**
   * Takes the points of one frame.
   * @param light mean brightness of the picture, 0 to 255, so that a refusal can tell darkness from a bad angle
   */
  push(atMs: number, points: BodyPoints | undefined, light?: number): SightEvent[];
  /** Whether a hold is under way, and since when. */
  holdFromMs(): number | undefined;
  /** Torso length, pixels, once both hands have hung for a moment. */
  yardstick(): number | undefined;
  /** How far the draw has given way in the latest frame, torso lengths; 0 without a hold. */
  gaveWay(): number;
  /** Ends the hold at once: somebody else (pixels) knows it before the median of three does. */
  endHold(atMs: number): SightEvent[];
  /** Pixels say that the hold goes on: what the model saw is taken back. */
  resumeHold(): void;
  /** Pixels say that the hold began long before the model saw it: nobody knows when. */
  forgetHold(): void;
}

/**
 * Makes a detector for one drill.
 * @returns it, not calibrated
 */
export function createHoldDetector(): HoldDetector {
  const torsos: number[] = [];
  const faces: number[] = [];
  let samples: Sample[] = [];
  let phase: 'down' | 'rising' | 'drawn' = 'down';
  let risenAtMs = 0;
  let fromMs = 0;
  let level = 0;
  /** How far the hold was at its farthest: up to here a model that had lost the hand may come back. */
  let top = 0;
  let fullDraw: number | undefined;
  let refusal: Refusal | undefined;
  let seenAtMs = Number.NEGATIVE_INFINITY;
  let startedAtMs: number | undefined;
  let taken: { fromMs: number; level: number; top: number } | undefined;
  /** A hold went out of sight: what looks drawn now began nobody knows when. */
  let isUnknown = false;
  let togetherFromMs: number | undefined;
  /** Refused because nobody was seen: whoever is seen again takes it back. */
  let isBlind = false;

  const torso = () => (torsos.length >= 4 ? median(torsos) : undefined);
  const enter = () => (fullDraw === undefined ? DRAWN_FROM : fullDraw * DRAWN_RATIO);
  const undrawn = () => enter() * (UNDRAWN_RATIO / DRAWN_RATIO);
  const exit = () => Math.max(undrawn(), level - LET_DOWN_TORSOS);

  function refuse(reason: Refusal | undefined, atMs: number): SightEvent[] {
    if (reason === refusal) return [];
    refusal = reason;
    return [reason === undefined ? { type: 'sees', atMs } : { type: 'refused', reason, atMs }];
  }

  function unseen(atMs: number, light = 255): SightEvent[] {
    const blindMs = atMs - Math.max(seenAtMs, startedAtMs ?? atMs);
    if (blindMs < LONGEST_BLIND_MS) return [];
    const events: SightEvent[] = [];
    if (phase === 'drawn') {
      events.push({ type: 'lost', atMs: seenAtMs, knownAtMs: atMs });
      isUnknown = true;
    }
    phase = 'down';
    samples = [];
    isBlind = true;
    // In the dark nobody knows who is there.
    return [...events, ...refuse(light < DARK ? 'moreLight' : 'nobody', atMs)];
  }

  /** A second person, or the archer in a mirror: not where the archer was, or not of the archer's size. */
  function isStranger({ centre, torso: length }: Stance, atMs: number): boolean {
    const last = samples.at(-1);
    const unit = torso();
    if (last === undefined || unit === undefined || atMs - last.atMs > LONGEST_BLIND_MS) return false;
    const moved = Math.hypot(centre.x - last.stance.centre.x, centre.y - last.stance.centre.y);
    return moved > unit * 0.6 || length < unit * 0.65 || length > unit * 1.45;
  }

  /** Whether the hold goes on after a while in which the model saw nothing. */
  function goesOn({ spread }: Stance, gapMs: number): boolean {
    if (gapMs <= LONGEST_BLIND_MS) return true;
    return gapMs < LONGEST_SLOW_MS && spread / (torso() ?? spread) >= exit();
  }

  /** Whether a look shows both hands in one place, and others just before did not. */
  function hasLostHand({ spread, drawHandBelow, bowHandBelow }: Stance, unit: number, atMs: number): boolean {
    const isTogether = spread < unit * TOGETHER_TORSOS && Math.max(drawHandBelow, bowHandBelow) < unit * 0.3;
    togetherFromMs = isTogether ? (togetherFromMs ?? atMs) : undefined;
    return togetherFromMs !== undefined && atMs - togetherFromMs < TOGETHER_MS;
  }

  function measure({ torso: length, drawHandBelow, bowHandBelow, trunk, spread, face }: Stance) {
    // Only while both hands hang: a raised arm moves the shoulders that the torso is measured from.
    const hangs = Math.min(drawHandBelow, bowHandBelow) > length * 0.5 && spread < length * 1.5;
    if (!hangs || trunk < LEAST_TRUNK_SCORE) return;
    faces.push(face);
    if (faces.length > 31) faces.shift();
    torsos.push(length);
    if (torsos.length > 31) torsos.shift();
  }

  function looksDrawn(spread: number, { drawHandBelow, bowHandBelow, handToFace }: Stance, unit: number): boolean {
    const raised = Math.abs(drawHandBelow) < unit * 0.55 && Math.abs(bowHandBelow) < unit * 0.6;
    return spread >= enter() && raised && handToFace < unit * BY_THE_FACE;
  }

  /** How far each frame falls short of the hold's level, a single poor frame left out. */
  function shortfalls(from: readonly Sample[]): Reading[] {
    return from.map(({ atMs }, index) => {
      const near = from.slice(Math.max(0, index - 1), index + 2).map((sample) => sample.spread);
      return { atMs, value: level - median(near) };
    });
  }

  /** When the draw came to the hold's level: after the last sample that was surely not there yet, so that a model that trembles in the hold begins no new one. */
  function anchoredAtMs(): number | undefined {
    const falls = shortfalls(samples);
    const lastOff = Math.max(
      0,
      falls.findLastIndex(({ value }) => value > LET_DOWN_TORSOS),
    );
    // A model that is less sure of a hand trembles more.
    const noise = median(falls.slice(-8).map(({ value }) => Math.abs(value)));
    const edge = Math.min(LET_DOWN_TORSOS, Math.max(EDGE_TORSOS, 2 * noise));
    const firstThere = falls.findIndex(({ value }, index) => index > lastOff && value <= edge);
    return crossingAtMs(falls.slice(lastOff, firstThere + 1).reverse(), edge);
  }

  function startHold(atMs: number, light: number | undefined): SightEvent[] {
    const held = samples.filter((sample) => sample.atMs >= risenAtMs);
    const wrists = median(
      held.filter((sample) => sample.atMs > atMs - SHORTEST_HOLD_MS).map((sample) => sample.stance.worstWrist),
    );
    if (lowerQuarter(faces) < LEAST_FACE_SCORE) return refuse('turnSideOn', atMs);
    const isDark = (light ?? 255) < DARK;
    if (wrists < (isDark ? LEAST_WRIST_SCORE : LEAST_LIT_WRIST_SCORE)) {
      if (isDark) return refuse('moreLight', atMs);
      // Hands pass in front of each other while a bow is raised: only a lasting doubt is worth a word.
      return atMs - risenAtMs < LASTING_DOUBT_MS ? [] : refuse('turnSideOn', atMs);
    }
    // Hands that pass in front of each other while a bow is raised are unsure too, and then look drawn.
    const isUnsure = wrists < LEAST_WRIST_SCORE && fullDraw === undefined;
    if (isUnsure && atMs - risenAtMs < UNSURE_HOLD_MS) return [];
    level = median(held.filter((sample) => sample.atMs > atMs - SHORTEST_HOLD_MS * 0.6).map(({ spread }) => spread));
    // Still on its way: a bow that is raised and not drawn can look drawn to the model.
    if (median(samples.slice(-3).map(({ spread }) => spread)) - level > EDGE_TORSOS) return [];
    // Held at one level for long enough, looked for backwards: a raised bow on its way to full draw is not.
    const levelFromMs = crossingAtMs(shortfalls(samples).reverse(), EDGE_TORSOS) ?? risenAtMs;
    if (atMs - levelFromMs < SHORTEST_HOLD_MS) return [];
    fromMs = Math.min(levelFromMs, anchoredAtMs() ?? levelFromMs);
    phase = 'drawn';
    top = level;
    return [...refuse(undefined, atMs), { type: 'drawn', atMs: fromMs, knownAtMs: atMs }];
  }

  function endHold(knownAtMs: number): SightEvent[] {
    if (phase !== 'drawn') return [];
    phase = 'down';
    taken = { fromMs, level, top };
    const held = shortfalls(samples).filter((reading) => reading.atMs >= fromMs);
    // A draw that has crept falls short already: what counts is how far it gives way from where it was a moment ago.
    const before = held.filter(({ atMs }) => atMs > knownAtMs - 1_600 && atMs <= knownAtMs - 600);
    const edge = EDGE_TORSOS + (before.length > 0 ? Math.max(0, median(before.map(({ value }) => value))) : 0);
    const lastStill = held.findLastIndex(({ value }) => value <= edge);
    const atMs = crossingAtMs(held.slice(Math.max(0, lastStill)), edge) ?? knownAtMs;
    const events: SightEvent[] = [{ type: 'letDown', atMs: Math.max(fromMs, atMs), knownAtMs }];
    const farthest = Math.min(level, MOST_FULL_DRAW);
    if (fullDraw === undefined || farthest > fullDraw * 1.1) {
      fullDraw = farthest;
      events.push({ type: 'calibrated', fullDrawTorsos: farthest, atMs: knownAtMs });
    }
    return events;
  }

  function judge(atMs: number, spread: number, stance: Stance, unit: number, light: number | undefined): SightEvent[] {
    if (phase === 'drawn') {
      // The draw goes on: what looked drawn was a raised bow, and the hold begins only now.
      if (spread > top + LET_DOWN_TORSOS) {
        phase = 'rising';
        risenAtMs = atMs;
        taken = { fromMs, level, top };
        return [{ type: 'lost', atMs: fromMs, knownAtMs: atMs, isRaised: true }];
      }
      if (spread > level + LET_DOWN_TORSOS) level = Math.min(spread, top);
      // The level follows a hold that creeps, slowly enough not to follow a let-down.
      if (Math.abs(spread - level) < EDGE_TORSOS) level += (spread - level) * 0.04;
      top = Math.max(top, level);
      return spread < exit() ? endHold(atMs) : [];
    }
    if (!looksDrawn(spread, stance, unit)) {
      phase = 'down';
      isUnknown = false;
      return [];
    }
    if (isUnknown) return [];
    if (phase === 'down') {
      phase = 'rising';
      risenAtMs = atMs;
    }
    const isDoubtful = fullDraw === undefined && spread < CLEARLY_DRAWN_FROM;
    const neededMs = isDoubtful ? DOUBTFUL_HOLD_MS : SHORTEST_HOLD_MS * 0.8;
    return atMs - risenAtMs < neededMs ? [] : startHold(atMs, light);
  }

  return {
    push(atMs, points, light) {
      startedAtMs ??= atMs;
      if (points === undefined) return unseen(atMs, light);
      const stance = readStance(points);
      if (stance.trunk < 0.2 || isStranger(stance, atMs)) return unseen(atMs, light);
      const events = phase === 'drawn' && !goesOn(stance, atMs - seenAtMs) ? unseen(atMs) : [];
      seenAtMs = atMs;
      if (isBlind) events.push(...refuse(undefined, atMs));
      isBlind = false;
      measure(stance);
      const unit = torso();
      if (unit === undefined) {
        const waits = atMs - startedAtMs > 8_000;
        return waits ? [...events, ...refuse('handsDown', atMs)] : events;
      }
      if (refusal === 'handsDown') events.push(...refuse(undefined, atMs));
      if (hasLostHand(stance, unit, atMs)) return events;
      samples.push({ atMs, spread: stance.spread / unit, stance });
      const keptFromMs = phase === 'drawn' ? Math.min(fromMs, atMs - KEPT_MS) : atMs - KEPT_MS;
      samples = samples.filter((sample) => sample.atMs >= keptFromMs);
      const spread = median(samples.slice(-3).map((sample) => sample.spread));
      return [...events, ...judge(atMs, spread, stance, unit, light)];
    },
    holdFromMs: () => (phase === 'drawn' ? fromMs : undefined),
    yardstick: torso,
    gaveWay: () => (phase === 'drawn' ? level - (samples.at(-1)?.spread ?? level) : 0),
    endHold,
    forgetHold() {
      phase = 'down';
      isUnknown = true;
    },
    resumeHold() {
      if (taken === undefined) return;
      ({ fromMs, level, top } = taken);
      phase = 'drawn';
      // A creep goes on at where it has come to, and a model that thinks better of where the hand is may be right; a hand that it has lost for a
      // moment is neither.
      const now = median(samples.slice(-3).map(({ spread }) => spread));
      if (level - now < MOST_CREEP_TORSOS || now >= undrawn()) level = now;
      top = Math.max(top, level);
    },
  };
}

function lowerQuarter(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 2] ?? 1;
}
