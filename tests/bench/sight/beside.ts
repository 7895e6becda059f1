import { createCuePlayer } from '@larkhold/cues';
import type { Cue } from '@larkhold/engine';
import {
  type FromSightWorker,
  type ModelFiles,
  startSightWorker,
  type WatchedCamera,
  watchCamera,
} from '@larkhold/sight';
import { captureOnsets } from '../cues/onset-capture.ts';
import { plainOutput } from '../cues/plain-output.ts';
import { type Score, score } from '../cues/score.ts';

/** What one stretch of cues found, with or without the camera beside. */
export interface BesideRun {
  score: Score;
  /** Pictures a second that were looked at, and of those, that the model was asked about; 0 without the camera. */
  looked: number;
  asked: number;
  /** What a picture cost in the worker, milliseconds, in order of size. */
  totalMs: number[];
  visibility: string;
}

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * Plays cues on the audio clock for a while, as a drill does.
 * @param count how many, five a second
 * @param files of what sees; absent: no camera beside
 */
export async function runBeside({ count, files }: { count: number; files?: ModelFiles }): Promise<BesideRun> {
  const run: Omit<BesideRun, 'score'> = { looked: 0, asked: 0, totalMs: [], visibility: '' };
  let isMeasured = false;
  const camera =
    files &&
    (await openCamera(files, (seen) => {
      if (!isMeasured || seen.type !== 'seen' || seen.totalMs === 0) return;
      run.looked++;
      run.totalMs.push(seen.totalMs);
      if (seen.poseMs > 0) run.asked++;
    }));
  const audio = new AudioContext();
  await audio.resume();
  const gain = audio.createGain();
  gain.connect(audio.destination);
  const player = createCuePlayer({ level: 1 }, { output: plainOutput(audio, gain) });
  await player.unlock();
  const capture = await captureOnsets(audio, gain);
  await wait(1_500);
  const originMs = performance.now() + 500;
  const times = Array.from({ length: count }, (_, index) => index * 200 + (index % 7) * 11);
  player.arm(
    times.map((atMs): Cue => ({ atMs, kind: 'count' })),
    originMs,
  );
  isMeasured = true;
  await wait((times.at(-1) ?? 0) + 2_000);
  isMeasured = false;
  const seconds = (performance.now() - originMs) / 1_000;
  run.visibility = document.visibilityState;
  camera?.close();
  const planned = times.map((atMs) => originMs + atMs);
  const heard = capture.onsets.map(capture.toPage);
  await audio.close();
  run.totalMs.sort((a, b) => a - b);
  return {
    ...run,
    looked: run.looked / seconds,
    asked: run.asked / seconds,
    score: score(files ? 'with the camera' : 'without', planned, heard),
  };
}

/** Opens the camera and waits until it sees. */
async function openCamera(files: ModelFiles, onSeen: (seen: FromSightWorker) => void): Promise<WatchedCamera> {
  let isReady = false;
  let trouble: string | undefined;
  const camera = watchCamera({
    worker: startSightWorker(),
    files,
    onState: (state) => {
      if (state !== 'asking' && state !== 'looking') trouble = state;
    },
    onSeen: (seen) => {
      if (seen.type === 'failed') trouble = seen.message;
      if (seen.type === 'ready') isReady = true;
      onSeen(seen);
    },
  });
  document.body.append(camera.video);
  const patientUntilMs = performance.now() + 90_000;
  while (!isReady) {
    if (performance.now() > patientUntilMs) trouble = 'the model did not load within a minute and a half';
    if (trouble !== undefined) throw new Error(`the camera does not see: ${trouble}`);
    await wait(50);
  }
  return camera;
}
