import type { BodyPoints } from './body-points.ts';
import type { WitnessEvent } from './hold-witness.ts';

/** Where the model's files are; all on the app's own origin. */
export interface ModelFiles {
  /** The graph, JSON. */
  graph: string;
  /** The weights. */
  weights: string;
  /** WebAssembly with SIMD. */
  wasm: string;
}

/** What the page tells the worker. Pictures go one way only. */
export type ToSightWorker =
  | { type: 'start'; files: ModelFiles; torsoCm?: number }
  | { type: 'frame'; picture: ImageBitmap; atMs: number }
  /** No picture has come for a while. */
  | { type: 'nothing'; atMs: number }
  /** The pictures that come now are another camera's. */
  | { type: 'restart'; atMs: number };

/** What the worker tells the page: numbers. */
export type FromSightWorker =
  /** The model is loaded; `loadMs`: how long it took. */
  | { type: 'ready'; loadMs: number }
  | { type: 'failed'; message: string }
  | {
      type: 'seen';
      atMs: number;
      events: WitnessEvent[];
      /** In the picture's own pixels; absent where the model was not asked, or saw nobody. */
      points?: BodyPoints;
      /** Mean brightness, 0 to 255. */
      light: number;
      /** Torso length, the picture's own pixels, once known. */
      torso?: number;
      /** What the frame cost, milliseconds: the model, and all of it. */
      poseMs: number;
      totalMs: number;
    };
