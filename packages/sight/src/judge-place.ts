import type { BodyPoints } from './body-points.ts';
import { LEAST_FACE_SCORE, LEAST_WRIST_SCORE } from './hold-detector.ts';
import { median } from './median.ts';
import { readStance } from './read-stance.ts';

/** What would help a camera to see an archer; `good` where nothing would. */
export type PlaceAdvice = 'good' | 'stepIn' | 'comeCloser' | 'goBack' | 'moreLight' | 'toTheMiddle' | 'turnSideOn';

/** Darker than this, 0 to 255, the model is not sure of the hands. Measured on painted films. */
const DIM = 45;

/** Of a single look a back may seem a face, and a face a back: the middle one of several looks counts. */
const FACE_LOOKS = 7;

/** Says what to change before a drill is watched, look by look; the most needed first. */
export type PlaceJudge = (
  points: BodyPoints | undefined,
  picture: { width: number; height: number; light: number },
) => PlaceAdvice;

/**
 * Makes a judge of where an archer stands, for one set-up. It judges an archer whose hands hang.
 * @returns it; points undefined where nobody is seen, the picture's size in pixels and its mean brightness 0 to 255
 */
export function createPlaceJudge(): PlaceJudge {
  let faces: number[] = [];
  return (points, { width, height, light }) => {
    if (light < DIM) return 'moreLight';
    if (points === undefined) {
      faces = [];
      return 'stepIn';
    }
    const { torso, trunk, centre, worstWrist, face } = readStance(points);
    if (trunk < 0.3) return 'stepIn';
    faces = [...faces, face].slice(-FACE_LOOKS);
    // Both arms out, an archer is four torso lengths wide; 1.5 to 3.5 m away a torso is 16 to 39 hundredths of the picture's height.
    if (torso > height * 0.42) return 'goBack';
    if (torso < height * 0.14) return 'comeCloser';
    if (centre.x < width * 0.25 || centre.x > width * 0.75) return 'toTheMiddle';
    if (points.leftHip.y > height || points.rightHip.y > height) return 'goBack';
    if (median(faces) < LEAST_FACE_SCORE) return 'turnSideOn';
    return worstWrist < LEAST_WRIST_SCORE * 0.6 ? 'moreLight' : 'good';
  };
}
