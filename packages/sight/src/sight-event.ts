/** Why nothing can be judged, as data; the words are the screen's. */
export type Refusal = 'standBack' | 'turnSideOn' | 'moreLight' | 'handsDown' | 'nobody';

/** What was seen. `atMs` is the instant of what was seen, `knownAtMs` the frame by which it was known, on the caller's clock, milliseconds. */
export type SightEvent =
  | { type: 'drawn'; atMs: number; knownAtMs: number }
  | { type: 'letDown'; atMs: number; knownAtMs: number }
  /** A hold went out of sight: when it ended, nobody saw. `atMs` is the last moment at which it was seen. */
  | {
      type: 'lost';
      atMs: number;
      knownAtMs: number;
      /** The draw goes on: what looked like a hold was a raised bow. */
      isRaised?: true;
    }
  /** The first whole hold was seen: full draw is known from here on. `fullDrawTorsos`: hand to hand, in torso lengths. */
  | { type: 'calibrated'; fullDrawTorsos: number; atMs: number }
  /** Nothing is judged from here on, and why. */
  | { type: 'refused'; reason: Refusal; atMs: number }
  /** It sees well again. */
  | { type: 'sees'; atMs: number };
