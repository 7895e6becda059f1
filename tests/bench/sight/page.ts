import { decodeReplay, type FromSightWorker, startSightWorker, type WitnessEvent, watchCamera } from '@larkhold/sight';
import wasm from '../../../node_modules/@tensorflow/tfjs-backend-wasm/dist/tfjs-backend-wasm-simd.wasm?url';
import weights from '../../../node_modules/@vladmandic/human/models/movenet-lightning.bin?url';
import graph from '../../../node_modules/@vladmandic/human/models/movenet-lightning.json?url';
import { CLOCK_BITS } from '../../fixtures/sight/clock-bits.ts';
import { type BesideRun, runBeside } from './beside.ts';

/** What one run found. Instants are the film's own, milliseconds. */
export interface SightRun {
  events: (WitnessEvent & { filmAtMs?: number })[];
  loadMs: number;
  frames: number;
  seconds: number;
  poseMs: number[];
  totalMs: number[];
  replayBytes: number;
  firstPictureMs: number;
  trouble?: string;
}

/** Watches the browser's camera for as long as a film lasts. */
async function runSight({
  filmMs,
  fps,
  frameCount,
}: {
  filmMs: number;
  fps: number;
  frameCount: number;
}): Promise<SightRun> {
  const run: SightRun = {
    events: [],
    loadMs: 0,
    frames: 0,
    seconds: 0,
    poseMs: [],
    totalMs: [],
    replayBytes: 0,
    firstPictureMs: 0,
  };
  const offsets: number[] = [];
  let isReady = false;
  const camera = watchCamera({
    worker: startSightWorker(),
    files: { graph, weights, wasm },
    onState: (state) => {
      if (state !== 'asking' && state !== 'looking') run.trouble = state;
    },
    onSeen: (seen: FromSightWorker) => {
      if (seen.type === 'failed') run.trouble = seen.message;
      if (seen.type === 'ready') {
        run.loadMs = seen.loadMs;
        isReady = true;
      }
      if (seen.type !== 'seen' || !isReady) return;
      run.frames++;
      run.totalMs.push(seen.totalMs);
      if (seen.poseMs > 0) run.poseMs.push(seen.poseMs);
      run.events.push(...seen.events);
    },
  });
  document.body.append(camera.video);
  const clock = new OffscreenCanvas(CLOCK_BITS * 8, 8).getContext('2d', { willReadFrequently: true });
  const readClock = (nowMs: number, { captureTime }: VideoFrameCallbackMetadata) => {
    camera.video.requestVideoFrameCallback(readClock);
    clock?.drawImage(camera.video, 0, 0, CLOCK_BITS * 8, 8, 0, 0, CLOCK_BITS * 8, 8);
    const { data } = clock?.getImageData(0, 4, CLOCK_BITS * 8, 1) ?? { data: [] };
    let index = 0;
    for (let bit = 0; bit < CLOCK_BITS; bit++) if ((data[(bit * 8 + 4) * 4] ?? 0) > 128) index |= 1 << bit;
    const atMs = Math.min(captureTime ?? nowMs, performance.now());
    const offset = atMs - (index * 1_000) / fps;
    // The film begins again at its end.
    const round = Math.round((offset - (offsets[0] ?? offset)) / filmMs) * filmMs;
    if (index < frameCount) offsets.push(offset - round);
  };
  camera.video.requestVideoFrameCallback(readClock);
  const whole = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
  const patientUntilMs = performance.now() + 90_000;
  while (!isReady && run.trouble === undefined) {
    if (performance.now() > patientUntilMs) run.trouble = 'the model did not load within a minute and a half';
    await whole(50);
  }
  const startedMs = performance.now();
  if (isReady) await whole(filmMs + 8_000);
  run.seconds = (performance.now() - startedMs) / 1_000;
  const offset = [...offsets].sort((a, b) => a - b)[offsets.length >> 1] ?? 0;
  for (const event of run.events) {
    const at = event.type === 'hold' ? event.fromMs : event.atMs;
    event.filmAtMs = at - offset;
  }
  const nowMs = performance.now();
  const clip = await camera.clip(nowMs - 6_000, nowMs - 1_000);
  if (clip) {
    run.replayBytes = clip.chunks.reduce((sum, { bytes }) => sum + bytes, 0);
    const beganMs = performance.now();
    for await (const { picture } of decodeReplay(clip)) {
      run.firstPictureMs = performance.now() - beganMs;
      picture.close();
      break;
    }
  }
  camera.close();
  return run;
}

/** Cues with and without the camera beside them, by turns in one page. */
async function runCues({ count, rounds }: { count: number; rounds: number }): Promise<BesideRun[]> {
  const runs: BesideRun[] = [];
  for (let round = 0; round < rounds; round++) {
    runs.push(await runBeside({ count }), await runBeside({ count, files: { graph, weights, wasm } }));
  }
  return runs;
}

Object.assign(globalThis, { runSight, runCues });
