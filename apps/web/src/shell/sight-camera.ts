import { startSightWorker, type WatchedCamera, watchCamera } from '@larkhold/sight';
import wasm from '@tensorflow/tfjs-backend-wasm/dist/tfjs-backend-wasm-simd.wasm?url';
import weights from '../../../../node_modules/@vladmandic/human/models/movenet-lightning.bin?url';
import graph from '../../../../node_modules/@vladmandic/human/models/movenet-lightning.json?url';

/** Where the pose model's files are, all of them on this app's own origin. That package shows its models to nobody, hence the paths. */
const sightModel = { graph, weights, wasm } as const;

/**
 * Opens the camera that the archer chose: with the model, or for a replay alone.
 * @param chosen which camera, and whether anything is judged
 * @param hears hears how the camera is doing, and what is seen
 * @returns the camera; close it
 */
export function watchChosen(
  { deviceId, replayOnly }: { deviceId: string | undefined; replayOnly: boolean },
  hears: Pick<Parameters<typeof watchCamera>[0], 'onState' | 'onSeen'>,
): WatchedCamera {
  return watchCamera({ ...(replayOnly ? {} : { worker: startSightWorker(), files: sightModel }), deviceId, ...hears });
}
