import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  type BodyPoints,
  createHoldWitness,
  type FrameCrop,
  type ModelFiles,
  nextCrop,
  type SeenHold,
  type WitnessEvent,
  wholeCrop,
} from '@larkhold/sight';
import { type ColourFrame, toGray } from '../../fixtures/sight/paint-figure.ts';
import { type FilmScript, type FilmTruth, paintFilm } from '../../fixtures/sight/write-film.ts';

/** The result of one film that was shown picture by picture. Instants are the film's own, milliseconds. */
export interface ExactRun {
  truth: FilmTruth;
  events: WitnessEvent[];
  seen: SeenHold[];
  /** Rows of x, y and score for every frame; undefined where the model saw nobody. */
  rows: { atMs: number; light: number; rows: number[][] | undefined }[];
  poseMs: number[];
}

/** Sees one person in a picture. */
interface PoseModel {
  see(picture: ImageData, crop: FrameCrop): BodyPoints;
}

/**
 * Loads the model in Node.
 * @param loadPoseModel as the worker does it in a browser
 */
export async function loadHere(loadPoseModel: (files: ModelFiles) => Promise<PoseModel>): Promise<PoseModel> {
  // That package shows its models to nobody, hence the paths.
  const packages = new URL('../../../node_modules/', import.meta.url);
  const at = (path: string) => fileURLToPath(new URL(path, packages));
  const folder = at('@vladmandic/human/models/');
  const wasm = at('@tensorflow/tfjs-backend-wasm/dist/tfjs-backend-wasm-simd.wasm');
  const { fetch, ImageData } = globalThis;
  Object.assign(globalThis, {
    fetch: async (path: string) => new Response(new Uint8Array(readFileSync(path))),
    ImageData: class {
      readonly data: Uint8ClampedArray;
      constructor(
        readonly width: number,
        readonly height: number,
      ) {
        this.data = new Uint8ClampedArray(width * height * 4);
      }
    },
  });
  const files = { graph: `${folder}movenet-lightning.json`, weights: `${folder}movenet-lightning.bin`, wasm };
  return loadPoseModel(files).finally(() => Object.assign(globalThis, { fetch, ImageData }));
}

/**
 * Shows a film to model and witness, picture by picture and as slowly as it takes: what comes out is the same on every machine.
 * @param askedEvery the model is asked about one frame in this many, as on a slower machine
 */
export function runExact(model: PoseModel, script: FilmScript, askedEvery = 1): ExactRun {
  const witness = createHoldWitness();
  const run: Omit<ExactRun, 'truth'> = { events: [], seen: [], rows: [], poseMs: [] };
  let crop = wholeCrop(script.width ?? 640, script.height ?? 480);
  const whole = crop;
  let lostAtMs: number | undefined;
  const truth = paintFilm(script, (painted, index, atMs) => {
    const frame = toGray(painted);
    let points: ReturnType<PoseModel['see']> | null | undefined;
    if (index % askedEvery === 0) {
      const startedMs = performance.now();
      const found = model.see(rgba(painted), crop);
      run.poseMs.push(performance.now() - startedMs);
      const isSeen = Math.min(found.leftShoulder.score, found.rightShoulder.score) > 0.25;
      lostAtMs = isSeen ? undefined : (lostAtMs ?? atMs);
      if (isSeen) crop = nextCrop(crop, found, whole);
      else if (lostAtMs !== undefined && atMs - lostAtMs > 1_500) crop = whole;
      points = isSeen ? found : null;
      const light = frame.data.reduce((sum, value) => sum + value, 0) / frame.data.length;
      run.rows.push({
        atMs,
        light,
        rows: isSeen ? Object.values(found).map(({ x, y, score }) => [x, y, score]) : undefined,
      });
    }
    run.events.push(...witness.push({ atMs, frame, points }));
  });
  run.seen = run.events.filter((event): event is SeenHold => event.type === 'hold');
  return { ...run, truth };
}

function rgba({ width, height, data }: ColourFrame): ImageData {
  const out = new Uint8ClampedArray(width * height * 4);
  for (let from = 0, at = 0; from < data.length; from += 3, at += 4) {
    out[at] = data[from] as number;
    out[at + 1] = data[from + 1] as number;
    out[at + 2] = data[from + 2] as number;
    out[at + 3] = 255;
  }
  return { width, height, data: out, colorSpace: 'srgb' } as ImageData;
}
