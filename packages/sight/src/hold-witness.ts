import type { BodyPoints } from './body-points.ts';
import { brightnessOf, type GrayFrame } from './gray-frame.ts';
import { createHoldDetector, SHORTEST_HOLD_MS } from './hold-detector.ts';
import { type HoldTracks, trackHold } from './hold-tracks.ts';
import { type FormPart, type FormReading, judgeForm } from './judge-form.ts';
import { middleInstant } from './middle-instant.ts';
import { nameLiveMoves } from './name-live-moves.ts';
import type { TimedFrame } from './rest-edge.ts';
import type { SightEvent } from './sight-event.ts';
import { isSureLetDown } from './sure-let-down.ts';

/** One hold as it was seen, told when it has ended. Instants on the caller's clock, milliseconds. */
export interface SeenHold {
  type: 'hold';
  fromMs: number;
  toMs: number;
  /** What moved since the anchor; empty where nothing did. */
  form: FormReading[];
  /** How long nothing had moved, milliseconds. */
  wholeMs: number;
  /** Whether the form could be judged at all. */
  isJudged: boolean;
}

/** Something has moved while the hold goes on; told once a part and hold. `atMs`: since when. */
export interface SeenMove {
  type: 'moved';
  part: FormPart;
  atMs: number;
  knownAtMs: number;
}

/** What the witness tells. */
export type WitnessEvent = SightEvent | SeenHold | SeenMove;

/** One frame for the witness. */
export interface WitnessFrame {
  /** When it was taken, on the caller's monotonic clock, milliseconds. */
  atMs: number;
  frame: GrayFrame;
  /** Absent where the model was not asked about this frame; null where it found nobody. */
  points?: BodyPoints | null;
}

/** Puts the model's word and the pixels' together: the model decides whether, the pixels decide when. */
export interface HoldWitness {
  /** Takes the next picture; one that is not later than the last is not the next. A picture of another size begins again: a hold under way is lost. */
  push(now: WitnessFrame): WitnessEvent[];
  /** No picture has come: after a second a hold counts as lost. */
  blind(atMs: number): WitnessEvent[];
  /** Another camera: nothing of what was known is where it was, and a hold under way is lost. */
  startAnew(atMs: number): WitnessEvent[];
  /** Torso length, pixels, once it is known. */
  yardstick(): number | undefined;
}

const REMEMBERED_MS = 3_200;
/** How far a draw gives way when it may be a let-down, so that nothing is said of its form. Torso lengths. */
const GIVES_WAY = 0.05;
/** What the pixels make as short as that was not a hold: half of the shortest that a model may see. */
const NO_HOLD_MS = SHORTEST_HOLD_MS / 2;
/** Below this neither has let go of its place: the model is mistaken, or the draw creeps. About 4 cm. */
const HARDLY_MOVED = 0.08;
const LONGEST_VETO_MS = 2_500;
/** A draw comes to rest within so much of where the model has it. */
const LOOKED_BACK_MS = 1_500;
/** A hold that the model thinks better of and then sees again from about the same moment is the same one. */
const SAME_HOLD_MS = 700;
/** How often the form is looked at while a hold goes on. */
const FORM_EVERY_MS = 500;

/**
 * Makes a witness for one drill.
 * @param options `torsoCm`: the archer's shoulders to hips, centimetres (0.288 of the height after Drillis and Contini 1966: 49 at 1.70 m)
 * @returns it, not calibrated
 */
export function createHoldWitness({ torsoCm = 49 }: { torsoCm?: number } = {}): HoldWitness {
  let detector = createHoldDetector();
  let recent: TimedFrame[] = [];
  let tracks: HoldTracks | undefined;
  let hold: { fromMs: number; bowRight: boolean } | undefined;
  /** When the hold began that the model has just thought better of. */
  let raisedFromMs = Number.NEGATIVE_INFINITY;
  let latest: BodyPoints | undefined;
  let vetoedAtMs: number | undefined;
  let formAtMs = 0;
  let live = nameLiveMoves();

  function begin(event: Extract<SightEvent, { type: 'drawn' }>, now: TimedFrame): WitnessEvent[] {
    const torso = detector.yardstick();
    if (latest === undefined || torso === undefined) return [event];
    tracks = trackHold(now, latest, torso);
    const from = event.atMs - LOOKED_BACK_MS;
    const rests = tracks.cameToRest(
      recent.filter(({ atMs }) => atMs >= from && atMs < now.atMs),
      event.atMs,
    );
    if (tracks.restedSince(from)) {
      // Nothing came to rest then: the model had lost the hand, and when the hold began, nobody can say.
      detector.forgetHold();
      return forget();
    }
    // Where pictures reach back to that moment, their pixels tell, for it may have been a raised bow.
    const isBefore = (recent[0]?.atMs ?? now.atMs) > raisedFromMs;
    const isSame = isBefore && Math.abs(event.atMs - raisedFromMs) < SAME_HOLD_MS;
    const atMs = isSame ? raisedFromMs : middleInstant(event.atMs, rests);
    const { leftWrist, rightWrist, nose } = latest;
    hold = { fromMs: atMs, bowRight: (leftWrist.x + rightWrist.x) / 2 > nose.x };
    return [{ ...event, atMs }];
  }

  function end(event: Extract<SightEvent, { type: 'letDown' }>, now?: TimedFrame): WitnessEvent[] {
    if (isAtDraw()) {
      vetoedAtMs ??= event.knownAtMs;
      if (event.knownAtMs - vetoedAtMs < LONGEST_VETO_MS) {
        detector.resumeHold();
        return [];
      }
      // The two disagree for good: when the hold ended, nobody can say.
      const lost: SightEvent = { type: 'lost', atMs: vetoedAtMs, knownAtMs: event.knownAtMs };
      return [lost, ...forget()];
    }
    const fromMs = hold?.fromMs ?? event.atMs;
    const toMs = Math.max(
      fromMs,
      middleInstant(event.atMs, tracks?.left(now === undefined ? recent : [...recent, now], event.atMs) ?? []),
    );
    if (toMs - fromMs < NO_HOLD_MS) {
      // Neither can vouch for it: what looked like a hold was something else.
      return [{ type: 'lost', atMs: fromMs, knownAtMs: event.knownAtMs }, ...forget()];
    }
    const read = readForm(toMs) ?? { form: [], wholeMs: toMs - fromMs, isJudged: false };
    return [{ ...event, atMs: toMs }, { type: 'hold', fromMs, toMs, ...read }, ...forget()];
  }

  function readForm(toMs: number) {
    const torso = detector.yardstick();
    if (tracks === undefined || torso === undefined || hold === undefined) return undefined;
    const { fromMs, bowRight } = hold;
    const pixelsPerCm = torso / torsoCm;
    return judgeForm(tracks.frames(), {
      ...{ fromMs, toMs: Math.max(fromMs, toMs), pixelsPerCm, bowRight },
      slides: tracks.slides(),
    });
  }

  /** What has moved by now, each part once. A draw that gives way is a let-down, no fault. */
  function moves(atMs: number): SeenMove[] {
    if (hold === undefined || atMs - formAtMs < FORM_EVERY_MS || detector.gaveWay() > GIVES_WAY) return [];
    formAtMs = atMs;
    const fresh = live.look(readForm(atMs)?.form ?? []);
    return fresh.map(({ part, fromMs }) => ({ type: 'moved', part, atMs: fromMs, knownAtMs: atMs }));
  }

  function tell(seen: readonly SightEvent[], now: TimedFrame | undefined): WitnessEvent[] {
    return seen.flatMap((event): WitnessEvent[] => {
      if (event.type === 'drawn' && now !== undefined) return begin(event, now);
      if (event.type === 'letDown') return end(event, now);
      if (event.type === 'lost' && event.isRaised && isAtDraw()) {
        // Nothing has moved: the model thinks better of where the hand is.
        detector.resumeHold();
        return [];
      }
      if (event.type === 'lost') {
        raisedFromMs = event.isRaised && hold ? hold.fromMs : Number.NEGATIVE_INFINITY;
        return [event, ...forget()];
      }
      return [event];
    });
  }

  function startAnew(knownAtMs: number): WitnessEvent[] {
    const isHeld = detector.holdFromMs() !== undefined;
    const lastMs = recent.at(-1)?.atMs ?? knownAtMs;
    detector = createHoldDetector();
    recent = [];
    latest = undefined;
    forget();
    return isHeld ? [{ type: 'lost', atMs: lastMs, knownAtMs }] : [];
  }

  function forget(): [] {
    tracks = undefined;
    hold = undefined;
    live = nameLiveMoves();
    vetoedAtMs = undefined;
    return [];
  }

  /** Neither hand nor elbow has moved, as far as the pixels can tell. */
  function isAtDraw(): boolean {
    const moved = tracks?.moved() ?? [];
    return moved.length > 0 && moved.every((torsos) => torsos < HARDLY_MOVED);
  }

  function endsSurely(): boolean {
    const gaveWay = detector.gaveWay();
    if (tracks === undefined || gaveWay < GIVES_WAY) return false;
    const [hand = 0, elbow = 0] = tracks.moved();
    return isSureLetDown({ hand, elbow, gaveWay });
  }

  return {
    startAnew,
    yardstick: () => detector.yardstick(),
    blind: (atMs) => tell(detector.push(atMs, undefined), undefined),
    push({ atMs, frame, points }) {
      const now = { atMs, frame };
      const last = recent.at(-1);
      if (last !== undefined && atMs <= last.atMs) return [];
      const isOther = last !== undefined && (last.frame.width !== frame.width || last.frame.height !== frame.height);
      const lost = isOther ? startAnew(atMs) : [];
      tracks?.push(now);
      if (points) latest = points;
      const seen = points === undefined ? [] : detector.push(atMs, points ?? undefined, brightnessOf(frame));
      if (points && !seen.some(({ type }) => type === 'letDown')) vetoedAtMs = undefined;
      if (seen.length === 0 && endsSurely()) seen.push(...detector.endHold(atMs));
      const events = [...lost, ...tell(seen, now)];
      events.push(...moves(atMs));
      recent = [...recent.filter((one) => one.atMs > atMs - REMEMBERED_MS), now];
      return events;
    },
  };
}
