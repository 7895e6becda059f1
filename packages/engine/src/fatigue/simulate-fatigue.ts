import { type Compartments, FRESH, solveSteady } from './compartments.ts';
import { fatigueOf, type Joint } from './joint.ts';

/** A stretch of steady load. */
export interface LoadStretch {
  /** 0 (rest) to 1 (all one can pull). */
  fractionOfMvc: number;
  seconds: number;
}

/** The muscle at the end of a stretch, or at the moment it failed. Shares of 1. */
export interface FatiguePoint extends Compartments {
  /** The stretch's place in the profile, 0-based. */
  stretch: number;
  /** From the profile's start. */
  atSeconds: number;
  resting: number;
}

/** What the model says of a profile. */
export interface FatigueTrace {
  /** One point for each stretch, in order; when the muscle fails the last point is that moment. */
  points: FatiguePoint[];
  /** From the profile's start; absent when the whole profile is held. */
  failsAtSeconds?: number;
}

/** Which muscle, and how well it recovers. */
export interface FatigueOptions {
  /** Default shoulder. */
  joint?: Joint;
  /** How much faster it recovers at rest, 1 to 100; default the joint's published number. */
  restMultiplier?: number;
}

/** Shown with every prediction. */
export const FATIGUE_CAUTION =
  'This describes a model of tired muscle. It was not calibrated on archers and is kind to moderate drills. Let down when form goes.';

/**
 * What a profile of loads does to a muscle by the three-compartment model, from fresh until it ends or the muscle fails.
 * @param profile stretches in order; fractions 0 to 1, seconds 0 to 86400
 * @param options joint and recovery at rest
 * @returns the muscle at the end of each stretch, and when it fails, in seconds from the start
 * @throws RangeError when a number is out of range or there is no such joint
 * @source Xia & Frey-Law 2008, J Biomech 41:3046; Frey-Law, Looft & Heitsman 2012, J Biomech 45:1803; Looft, Herkert & Frey-Law 2018, J Biomech 77:16
 */
export function simulateFatigue(profile: readonly LoadStretch[], options: FatigueOptions = {}): FatigueTrace {
  const numbers = fatigueOf(options.joint ?? 'shoulder');
  const { restMultiplier = numbers.restMultiplier } = options;
  check('restMultiplier', restMultiplier, 1, 100);
  const joint = { ...numbers, restMultiplier };
  for (const [place, stretch] of profile.entries()) {
    check(`profile[${place}].fractionOfMvc`, stretch.fractionOfMvc, 0, 1);
    check(`profile[${place}].seconds`, stretch.seconds, 0, 86_400);
  }

  const points: FatiguePoint[] = [];
  let now: Compartments = FRESH;
  let atSeconds = 0;
  for (const [stretch, { fractionOfMvc, seconds }] of profile.entries()) {
    const solved = solveSteady(now, fractionOfMvc, joint);
    const failsAfter = solved.failsWithin(seconds);
    const lasted = failsAfter ?? seconds;
    now = solved.at(lasted);
    atSeconds += lasted;
    points.push({ stretch, atSeconds, ...now, resting: Math.max(0, 1 - now.active - now.fatigued) });
    if (failsAfter !== undefined) return { points, failsAtSeconds: atSeconds };
  }
  return { points };
}

function check(name: string, value: number, least: number, most: number) {
  if (!(value >= least && value <= most))
    throw new RangeError(`${name} is ${value}; expected a number from ${least} to ${most}`);
}
