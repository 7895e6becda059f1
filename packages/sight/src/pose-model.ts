import { setWasmPaths } from '@tensorflow/tfjs-backend-wasm';
import { loadGraphModel } from '@tensorflow/tfjs-converter';
import * as tf from '@tensorflow/tfjs-core';
import { type BodyPoints, nameBodyPoints } from './body-points.ts';
import type { FrameCrop } from './frame-crop.ts';
import type { ModelFiles } from './sight-message.ts';

/** The side of the picture that the model takes, pixels. */
const SIDE = 192;

/** Sees one person in a picture. */
export interface PoseModel {
  /**
   * @param picture the frame, RGBA
   * @param crop the square to look at
   * @returns the points in the frame's pixels
   */
  see(picture: ImageData, crop: FrameCrop): BodyPoints;
}

/**
 * Loads the model. Call it in a worker: it takes some seconds on a slow phone, and each look some tens of milliseconds.
 * @param files where its files are
 * @returns the model, warm
 * @throws Error where a file is missing or WebAssembly is refused
 */
export async function loadPoseModel({ graph, weights, wasm }: ModelFiles): Promise<PoseModel> {
  // Only SIMD without threads: threads need isolation, under which the library starts workers from blobs, which the policy refuses.
  // The library wants a path for each of its three files and loads the one that fits.
  setWasmPaths({
    'tfjs-backend-wasm.wasm': wasm,
    'tfjs-backend-wasm-simd.wasm': wasm,
    'tfjs-backend-wasm-threaded-simd.wasm': wasm,
  });
  const hasSimd = await tf.env().getAsync('WASM_HAS_SIMD_SUPPORT');
  if (!hasSimd || !(await tf.setBackend('wasm'))) throw new Error('WebAssembly with SIMD is not available here');
  await tf.ready();
  const [topology, weightData] = await Promise.all([
    fetchGood(graph).then((r) => r.json()),
    fetchGood(weights).then((r) => r.arrayBuffer()),
  ]);
  const model = await loadGraphModel({
    load: async () => ({
      modelTopology: topology.modelTopology,
      weightSpecs: topology.weightsManifest[0].weights,
      weightData,
      signature: topology.signature,
      format: topology.format,
    }),
  });
  const input = new Int32Array(SIDE * SIDE * 3);
  const see = (picture: ImageData, crop: FrameCrop): BodyPoints => {
    cutOut(picture, crop, input);
    const rows = tf.tidy(() => {
      const answer = model.execute(tf.tensor4d(input, [1, SIDE, SIDE, 3], 'int32')) as tf.Tensor;
      return answer.dataSync();
    });
    return nameBodyPoints(
      Array.from({ length: 17 }, (_, row) => [
        crop.x + (rows[row * 3 + 1] ?? 0) * crop.size,
        crop.y + (rows[row * 3] ?? 0) * crop.size,
        rows[row * 3 + 2] ?? 0,
      ]),
    );
  };
  see(new ImageData(SIDE, SIDE), { x: 0, y: 0, size: SIDE });
  return { see };
}

async function fetchGood(url: string): Promise<Response> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} answers ${response.status}`);
  return response;
}

/** Scales the square to the model's size, between neighbouring pixels as on a straight line; outside the frame it is black. */
function cutOut({ data, width, height }: ImageData, crop: FrameCrop, into: Int32Array): void {
  const scale = crop.size / SIDE;
  for (let v = 0, at = 0; v < SIDE; v++) {
    const y = crop.y + (v + 0.5) * scale - 0.5;
    const top = Math.floor(y);
    const down = y - top;
    for (let u = 0; u < SIDE; u++, at += 3) {
      const x = crop.x + (u + 0.5) * scale - 0.5;
      const left = Math.floor(x);
      if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) {
        into[at] = into[at + 1] = into[at + 2] = 0;
        continue;
      }
      const right = x - left;
      const from = (top * width + left) * 4;
      const below = from + width * 4;
      for (let colour = 0; colour < 3; colour++) {
        const upper = (data[from + colour] as number) * (1 - right) + (data[from + colour + 4] as number) * right;
        const lower = (data[below + colour] as number) * (1 - right) + (data[below + colour + 4] as number) * right;
        into[at + colour] = upper * (1 - down) + lower * down;
      }
    }
  }
}
