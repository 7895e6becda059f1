import wasm from '@tensorflow/tfjs-backend-wasm/dist/tfjs-backend-wasm-simd.wasm?url';
import weights from '../../../../node_modules/@vladmandic/human/models/movenet-lightning.bin?url';
import graph from '../../../../node_modules/@vladmandic/human/models/movenet-lightning.json?url';

/** Where the pose model's files are, all of them on this app's own origin. That package shows its models to nobody, hence the paths. */
export const sightModel = { graph, weights, wasm } as const;
