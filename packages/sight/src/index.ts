export {
  BODY_POINT_NAMES,
  type BodyPoint,
  type BodyPointName,
  type BodyPoints,
  nameBodyPoints,
} from './body-points.ts';
export { type FormLine, formLines } from './form-lines.ts';
export { type FrameCrop, nextCrop, wholeCrop } from './frame-crop.ts';
export { brightnessOf, type GrayFrame } from './gray-frame.ts';
export {
  createHoldDetector,
  type HoldDetector,
  LEAST_FACE_SCORE,
  LEAST_WRIST_SCORE,
  SHORTEST_HOLD_MS,
} from './hold-detector.ts';
export { TRACKED, type Tracked, type TrackedFrame } from './hold-tracks.ts';
export {
  createHoldWitness,
  type HoldWitness,
  type SeenHold,
  type SeenMove,
  type WitnessEvent,
  type WitnessFrame,
} from './hold-witness.ts';
export { type FormPart, type FormReading, judgeForm, LEAST_MOVE_CM } from './judge-form.ts';
export { createPlaceJudge, type PlaceAdvice, type PlaceJudge } from './judge-place.ts';
export { LarkSecondMirror } from './lark-second-mirror.ts';
export { decodeReplay, type ReplayPicture } from './play-replay.ts';
export { createReplayRecorder, type ReplayClip, type ReplayRecorder } from './record-replay.ts';
export { createReplayRing, REPLAY_MS, type ReplayChunk, type ReplayRing } from './replay-ring.ts';
export type { Refusal, SightEvent } from './sight-event.ts';
export type { FromSightWorker, ModelFiles, ToSightWorker } from './sight-message.ts';
export { startSightWorker } from './start-sight-worker.ts';
export { type Found, findPatch, LEAST_MATCH, type Patch, takePatch } from './track-patch.ts';
export { type CameraState, type CameraWatch, type WatchedCamera, watchCamera } from './watch-camera.ts';
