export { loadPoseModel, type PoseModel } from './pose-model.ts';

import { type BodyPoints, scalePoints } from './body-points.ts';
import { type FrameCrop, nextCrop, wholeCrop } from './frame-crop.ts';
import { createFrozenWatch } from './frozen-watch.ts';
import { brightnessOf, type GrayFrame } from './gray-frame.ts';
import { createHoldWitness, type WitnessEvent } from './hold-witness.ts';
import { loadPoseModel, type PoseModel } from './pose-model.ts';
import type { FromSightWorker, ToSightWorker } from './sight-message.ts';

/** What a worker's global scope offers and is needed here. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<ToSightWorker>) => void) | null;
  postMessage(message: FromSightWorker): void;
}

/** Wider pictures are made smaller: this is what the instants and centimetres were measured with. */
const WIDEST = 640;
/** The model may take this part of the time. What is left is the patches', which take 1 to 4 ms a frame. */
const POSE_SHARE = 0.6;

/**
 * Runs sight in a worker: pictures come in, numbers go out, and nothing of a picture is kept beyond the last few seconds.
 * @param scope the worker's own global scope
 */
export function runSightWorker(scope: WorkerScope): void {
  let model: PoseModel | undefined;
  let witness = createHoldWitness();
  let crop: FrameCrop | undefined;
  let canvas: OffscreenCanvas | undefined;
  let context: OffscreenCanvasRenderingContext2D | null = null;
  let asked = { atMs: Number.NEGATIVE_INFINITY, tookMs: 0 };
  let lost: number | undefined;
  const frozen = createFrozenWatch();

  async function start({ files, torsoCm }: Extract<ToSightWorker, { type: 'start' }>): Promise<void> {
    const startedMs = performance.now();
    try {
      model = await loadPoseModel(files);
      witness = createHoldWitness({ torsoCm });
      scope.postMessage({ type: 'ready', loadMs: performance.now() - startedMs });
    } catch (error) {
      scope.postMessage({ type: 'failed', message: error instanceof Error ? error.message : String(error) });
    }
  }

  function read(picture: ImageBitmap): ImageData | undefined {
    const scale = Math.min(1, WIDEST / Math.max(picture.width, picture.height));
    const width = Math.round(picture.width * scale);
    const height = Math.round(picture.height * scale);
    if (canvas?.width !== width || canvas.height !== height) {
      canvas = new OffscreenCanvas(width, height);
      context = canvas.getContext('2d', { willReadFrequently: true });
      crop = wholeCrop(width, height);
    }
    context?.drawImage(picture, 0, 0, width, height);
    picture.close();
    return context?.getImageData(0, 0, width, height);
  }

  /** The points of this frame; undefined where the model is not asked, null where nobody is seen. */
  function see(picture: ImageData, atMs: number): BodyPoints | null | undefined {
    if (model === undefined || crop === undefined || atMs - asked.atMs < asked.tookMs / POSE_SHARE) return undefined;
    const startedMs = performance.now();
    const points = model.see(picture, crop);
    asked = { atMs, tookMs: performance.now() - startedMs };
    const isSeen = Math.min(points.leftShoulder.score, points.rightShoulder.score) > 0.25;
    lost = isSeen ? undefined : (lost ?? atMs);
    const whole = wholeCrop(picture.width, picture.height);
    if (isSeen) crop = nextCrop(crop, points, whole);
    else if (lost !== undefined && atMs - lost > 1_500) crop = whole;
    return isSeen ? points : null;
  }

  function look(picture: ImageBitmap, atMs: number): void {
    const startedMs = performance.now();
    const { width } = picture;
    const colours = read(picture);
    if (colours === undefined) return;
    // Whoever draws over the camera's picture knows that one's pixels.
    const scale = width / colours.width;
    const torso = witness.yardstick();
    const frame = toGray(colours);
    const light = brightnessOf(frame);
    // A picture in which not one pixel changes is not a camera's any more.
    const points = frozen.push(light, atMs) ? null : see(colours, atMs);
    const events = model === undefined ? [] : witness.push({ atMs, frame, points });
    scope.postMessage({
      type: 'seen',
      atMs,
      events,
      points: points ? scalePoints(points, scale) : undefined,
      light,
      torso: torso && torso * scale,
      poseMs: points === undefined ? 0 : asked.tookMs,
      totalMs: performance.now() - startedMs,
    });
  }

  /** Says how a hold ended that no picture shows any more. */
  function tell(events: WitnessEvent[], atMs: number): void {
    scope.postMessage({ type: 'seen', atMs, events, light: 0, poseMs: 0, totalMs: 0 });
  }

  scope.onmessage = ({ data }) => {
    if (data.type === 'start') void start(data);
    else if (data.type === 'frame') look(data.picture, data.atMs);
    else if (data.type === 'restart') {
      canvas = undefined;
      tell(witness.startAnew(data.atMs), data.atMs);
    } else if (model !== undefined) tell(witness.blind(data.atMs), data.atMs);
  };
}

function toGray({ data, width, height }: ImageData): GrayFrame {
  const gray = new Uint8Array(width * height);
  for (let at = 0, from = 0; at < gray.length; at++, from += 4) {
    gray[at] = ((data[from] as number) * 77 + (data[from + 1] as number) * 150 + (data[from + 2] as number) * 29) >> 8;
  }
  return { width, height, data: gray };
}
