/** The points that a pose model gives of a person, in the order in which it gives them (COCO's seventeen). */
export const BODY_POINT_NAMES = [
  'nose',
  'leftEye',
  'rightEye',
  'leftEar',
  'rightEar',
  'leftShoulder',
  'rightShoulder',
  'leftElbow',
  'rightElbow',
  'leftWrist',
  'rightWrist',
  'leftHip',
  'rightHip',
  'leftKnee',
  'rightKnee',
  'leftAnkle',
  'rightAnkle',
] as const;

/** The name of one point of a body. Left and right are the person's own, and models mix them up. */
export type BodyPointName = (typeof BODY_POINT_NAMES)[number];

/** Where a point of the body lies in the picture, pixels, and how sure the model is of it, 0 to 1. */
export interface BodyPoint {
  x: number;
  y: number;
  score: number;
}

/** One person in one frame. */
export type BodyPoints = Readonly<Record<BodyPointName, BodyPoint>>;

/**
 * Names the rows of a pose model's answer.
 * @param rows x and y in pixels and score, in the order of BODY_POINT_NAMES
 * @returns the points by name
 * @throws RangeError where a row is missing or holds no number
 */
export function nameBodyPoints(rows: readonly (readonly number[])[]): BodyPoints {
  return Object.fromEntries(
    BODY_POINT_NAMES.map((name, index) => {
      const [x = Number.NaN, y = Number.NaN, score = Number.NaN] = rows[index] ?? [];
      if (!Number.isFinite(x + y + score)) {
        throw new RangeError(`rows[${index}] (${name}) is ${rows[index]}; expected x, y and score as finite numbers`);
      }
      return [name, { x, y, score }];
    }),
  ) as unknown as BodyPoints;
}

/**
 * The same points in a picture of another size.
 * @param points one person's points, pixels
 * @param by how many times as large the other picture is
 * @returns the points in its pixels
 */
export function scalePoints(points: BodyPoints, by: number): BodyPoints {
  const rows = BODY_POINT_NAMES.map((name) => {
    const { x, y, score } = points[name];
    return [name, { x: x * by, y: y * by, score }];
  });
  return Object.fromEntries(rows) as BodyPoints;
}
