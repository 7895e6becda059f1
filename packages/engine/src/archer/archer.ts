import type { Program } from '../program/program.ts';

/** What is known of the archer without the journal. Everything is optional; what is absent is unknown. */
export interface Archer {
  /** Whole or part years, 0 to 120. */
  ageYears?: number;
  bow?: 'recurve' | 'compound' | 'barebow' | 'longbow';
  /** Weight on the fingers at full draw, without added weight, pounds-force, 0 to 200. */
  onFingersLbf?: number;
  /** The answer to "how long can you hold your bow at full draw, once, with good form?", seconds, more than 0, at most 3600. */
  longestHoldSeconds?: number;
  hasClicker?: boolean;
  /** What there is to draw. Absent: unknown, and then everything is thought to be there. */
  tools?: readonly Program['tool'][];
}

/** Longest hold that is believed, seconds. */
const MOST_HOLD_SECONDS = 3600;

/**
 * Refuses an archer who cannot be.
 * @param archer as a caller gives it
 * @returns the archer
 * @throws RangeError naming the key, its value and its range
 */
export function checkArcher(archer: Archer = {}): Archer {
  const { ageYears, onFingersLbf, longestHoldSeconds } = archer;
  if (ageYears !== undefined && !(ageYears >= 0 && ageYears <= 120)) {
    throw new RangeError(`archer.ageYears is ${ageYears}; expected years, 0 to 120`);
  }
  if (onFingersLbf !== undefined && !(onFingersLbf >= 0 && onFingersLbf <= 200)) {
    throw new RangeError(`archer.onFingersLbf is ${onFingersLbf}; expected pounds-force, 0 to 200`);
  }
  if (longestHoldSeconds !== undefined && !(longestHoldSeconds > 0 && longestHoldSeconds <= MOST_HOLD_SECONDS)) {
    throw new RangeError(
      `archer.longestHoldSeconds is ${longestHoldSeconds}; expected seconds above 0 and up to ${MOST_HOLD_SECONDS}`,
    );
  }
  return archer;
}
