import type { BodyPoint, BodyPointName, BodyPoints } from './body-points.ts';

/** What one frame tells of an archer's stance. Lengths are pixels. */
export interface Stance {
  /** Middle of the shoulders to middle of the hips. */
  torso: number;
  /** Hand to hand. */
  spread: number;
  /** The hand nearer to the face: the one that draws, once a bow is drawn. The model's left and right are not relied on. */
  drawSide: 'left' | 'right';
  /** The nearer hand to the face. */
  handToFace: number;
  /** How far each hand lies below the shoulders' middle; above is negative. */
  drawHandBelow: number;
  bowHandBelow: number;
  /** The surer and the less sure of the wrists, 0 to 1. */
  bestWrist: number;
  worstWrist: number;
  /** How sure the model is of the face, 0 to 1: hardly, where it sees the back of a head. */
  face: number;
  /** The least sure of shoulders and hips, 0 to 1. */
  trunk: number;
  /** The trunk's middle in the picture. */
  centre: { x: number; y: number };
}

const FACE: readonly BodyPointName[] = ['nose', 'leftEye', 'rightEye', 'leftEar', 'rightEar'];

/**
 * Reads the stance from a frame's points.
 * @param points one person's points, pixels
 * @returns lengths in pixels and scores 0 to 1
 */
export function readStance(points: BodyPoints): Stance {
  const shoulders = middle(points.leftShoulder, points.rightShoulder);
  const hips = middle(points.leftHip, points.rightHip);
  const face = faceOf(points);
  const { leftWrist, rightWrist } = points;
  const left = distance(leftWrist, face);
  const right = distance(rightWrist, face);
  const drawSide = left < right ? 'left' : 'right';
  const [drawHand, bowHand] = drawSide === 'left' ? [leftWrist, rightWrist] : [rightWrist, leftWrist];
  const { leftShoulder, rightShoulder, leftHip, rightHip } = points;
  return {
    torso: distance(shoulders, hips),
    spread: distance(leftWrist, rightWrist),
    drawSide,
    handToFace: Math.min(left, right),
    drawHandBelow: drawHand.y - shoulders.y,
    bowHandBelow: bowHand.y - shoulders.y,
    bestWrist: Math.max(leftWrist.score, rightWrist.score),
    worstWrist: Math.min(leftWrist.score, rightWrist.score),
    face: Math.max(points.nose.score, Math.min(points.leftEye.score, points.rightEye.score)),
    trunk: Math.min(leftShoulder.score, rightShoulder.score, leftHip.score, rightHip.score),
    centre: { x: (shoulders.x + hips.x) / 2, y: (shoulders.y + hips.y) / 2 },
  };
}

/**
 * Where the face is: the mean of its points, each weighed by its score.
 * @param points one person's points, pixels
 * @returns the place, pixels
 */
export function faceOf(points: BodyPoints): { x: number; y: number } {
  let x = 0;
  let y = 0;
  let weight = 0;
  for (const name of FACE) {
    const point = points[name];
    x += point.x * point.score;
    y += point.y * point.score;
    weight += point.score;
  }
  return weight > 0 ? { x: x / weight, y: y / weight } : { x: points.nose.x, y: points.nose.y };
}

function middle(a: BodyPoint, b: BodyPoint) {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function distance(a: { x: number; y: number }, b: { x: number; y: number }): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
