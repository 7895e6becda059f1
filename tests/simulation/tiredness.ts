// How an invented archer tires and comes back within a drill. The prescription knows nothing of it: it reads a half-time of 72 s.

/** Shares and time constants, seconds, of the three stages in which a hold comes back. */
const stages = [
  { share: 0.38, seconds: 8 },
  { share: 0.29, seconds: 60 },
  { share: 0.33, seconds: 2794 },
] as const;

/** What is left of a longest hold. */
export interface Tiredness {
  /** The share of the longest hold that could be held now, 0 to 1. */
  left(): number;
  /** Holds a share of the longest hold. */
  hold(share: number): void;
  /** Rests, seconds. */
  rest(seconds: number): void;
}

/**
 * A fresh archer.
 * @returns what a hold takes and a rest gives back
 * @source fitted to both ends of Stull & Kearney 1978, Med Sci Sports 10:109: a second hold reaches 20.3 % of the first after 5 s of rest, 86.8 % after
 * 2,560 s. It is the grip, after holds to failure: harder on moderate drills than a shoulder may be. That used-up shares add up is ours.
 */
export function createTiredness(): Tiredness {
  const used: [number, number, number] = [0, 0, 0];
  return {
    left: () => Math.max(0, 1 - used[0] - used[1] - used[2]),
    hold(share) {
      for (const [at, stage] of stages.entries()) used[at]! += stage.share * share;
    },
    rest(seconds) {
      for (const [at, stage] of stages.entries()) used[at]! *= Math.exp(-seconds / stage.seconds);
    },
  };
}
