import { openContestants } from './contestants.ts';
import { type Score, score } from './score.ts';

/** What presses on the page while cues play. */
export interface Load {
  /** Cue times after the origin, milliseconds. */
  times: number[];
  /** How long the main thread is blocked each time, milliseconds. */
  blockMs: number;
  /** How often, milliseconds; 0 for once, in the middle. */
  everyMs: number;
  /** Nothing leaves the page, as at home with the level at 0: a page that is heard is not slowed when it is hidden. */
  isSilent: boolean;
}

declare global {
  var runLoad: (load: Load) => Promise<{ scores: Score[]; delayMs: number; visibility: string }>;
}

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

function block(ms: number): void {
  const untilMs = performance.now() + ms;
  while (performance.now() < untilMs);
}

globalThis.runLoad = async ({ times, blockMs, everyMs, isSilent }) => {
  const contestants = await openContestants(isSilent);
  await wait(1500);
  const originMs = performance.now() + 500;
  for (const { begin } of contestants) begin(times, originMs);
  const lengthMs = times.at(-1)! + 500;
  if (blockMs > 0) {
    // From the first half second on, as a heavy page would: whatever was not put ahead by then is late.
    if (everyMs > 0) setInterval(() => block(blockMs), everyMs);
    else setTimeout(() => block(blockMs), lengthMs / 2);
  }
  await wait(lengthMs + 2500);
  const audio = new AudioContext();
  await audio.resume();
  await wait(300);
  const delayMs = (audio.baseLatency + audio.outputLatency) * 1000;
  const planned = times.map((atMs) => originMs + atMs);
  const scores = contestants.map(({ name, capture }) => score(name, planned, capture.onsets.map(capture.toPage)));
  return { scores, delayMs, visibility: document.visibilityState };
};
