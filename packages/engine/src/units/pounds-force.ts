const newtonsPerPoundForce = 4.448_221_615_260_5;

/**
 * A force given in pounds-force, the bow trade's unit, in newtons.
 * @param forceLbf pounds-force
 * @returns newtons
 * @throws RangeError when the force is not a finite number
 * @source Thompson and Taylor, NIST SP 811 (2008), appendix B.8: 1 lbf = 4.448 221 615 260 5 N, exactly
 * @example poundsForceToNewtons(1) === 4.4482216152605
 */
export function poundsForceToNewtons(forceLbf: number): number {
  if (!Number.isFinite(forceLbf)) throw new RangeError(`forceLbf is ${forceLbf}; expected a finite number`);
  return forceLbf * newtonsPerPoundForce;
}
