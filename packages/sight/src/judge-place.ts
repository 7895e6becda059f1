import type { BodyPoints } from './body-points.ts';
import { LEAST_FACE_SCORE, LEAST_WRIST_SCORE } from './hold-detector.ts';
import { readStance } from './read-stance.ts';

/** What would help a camera to see an archer; `good` where nothing would. */
export type PlaceAdvice = 'good' | 'stepIn' | 'comeCloser' | 'goBack' | 'moreLight' | 'toTheMiddle' | 'turnSideOn';

/** Darker than this, 0 to 255, the model is not sure of the hands. Measured on painted films. */
const DIM = 45;

/**
 * Says what to change before a drill is watched. It judges an archer whose hands hang.
 * @param points who is seen; undefined where nobody is
 * @param picture its size, pixels, and its mean brightness, 0 to 255
 * @returns one piece of advice, the most needed first
 */
export function judgePlace(
  points: BodyPoints | undefined,
  { width, height, light }: { width: number; height: number; light: number },
): PlaceAdvice {
  if (light < DIM) return 'moreLight';
  if (points === undefined) return 'stepIn';
  const { torso, trunk, centre, worstWrist, face } = readStance(points);
  if (trunk < 0.3) return 'stepIn';
  // Both arms out, an archer is four torso lengths wide; 1.5 to 3.5 m away a torso is 16 to 39 hundredths of the picture's height.
  if (torso > height * 0.42) return 'goBack';
  if (torso < height * 0.14) return 'comeCloser';
  if (centre.x < width * 0.25 || centre.x > width * 0.75) return 'toTheMiddle';
  if (points.leftHip.y > height || points.rightHip.y > height) return 'goBack';
  if (face < LEAST_FACE_SCORE * 0.8) return 'turnSideOn';
  return worstWrist < LEAST_WRIST_SCORE * 0.6 ? 'moreLight' : 'good';
}
