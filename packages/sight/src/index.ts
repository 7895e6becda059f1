export {
  BODY_POINT_NAMES,
  type BodyPoint,
  type BodyPointName,
  type BodyPoints,
  nameBodyPoints,
} from './body-points.ts';
export { brightnessOf, type GrayFrame } from './gray-frame.ts';
export { createHoldDetector, type HoldDetector, LEAST_WRIST_SCORE, SHORTEST_HOLD_MS } from './hold-detector.ts';
export { TRACKED, type Tracked, type TrackedFrame } from './hold-tracks.ts';
export {
  createHoldWitness,
  type HoldWitness,
  type SeenHold,
  type WitnessEvent,
  type WitnessFrame,
} from './hold-witness.ts';
export { type FormPart, type FormReading, judgeForm, LEAST_MOVE_CM } from './judge-form.ts';
export type { Refusal, SightEvent } from './sight-event.ts';
export { type Found, findPatch, LEAST_MATCH, type Patch, takePatch } from './track-patch.ts';
