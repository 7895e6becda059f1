import type { Cue } from '@larkhold/engine';
import { Howler } from 'howler';
import { afterEach, describe, expect, it } from 'vitest';
import { captureOnsets, type OnsetCapture } from '../../../tests/bench/cues/onset-capture.ts';
import { howlerOutput } from './audio-output.ts';
import { type CuePlayer, createCuePlayer } from './cue-player.ts';

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
/** Tells a cue at its place from one that is not, on any machine. How exact cues are is for `npm run bench:cues` to print. */
const TOLERANCE_MS = 60;

let player: CuePlayer | undefined;
let capture: OnsetCapture | undefined;

afterEach(() => {
  player?.close();
  capture?.close();
  player = capture = undefined;
});

it('lets the audio clock run through a rest: the library does not suspend it after half a minute of silence', async () => {
  await begin();
  expect(Howler.autoSuspend).toBe(false);
});

async function begin(settings = {}): Promise<{ player: CuePlayer; capture: OnsetCapture }> {
  player = createCuePlayer({ level: 1, ...settings });
  expect(await player.unlock()).toBe(true);
  capture = await captureOnsets(Howler.ctx, Howler.masterGain);
  await wait(300);
  return { player, capture };
}

const counts = (...times: number[]): Cue[] => times.map((atMs) => ({ atMs, kind: 'count' }));

describe('createCuePlayer', () => {
  it('sounds each cue at its time, also while the page is busy', async () => {
    const { player, capture } = await begin();
    const originMs = performance.now() + 100;
    const times = [100, 400, 725, 1300, 1600, 2111];
    player.arm(counts(...times), originMs);
    await wait(200);
    const busyUntilMs = performance.now() + 1000;
    while (performance.now() < busyUntilMs) Math.sqrt(2);
    await wait(1600);
    const heard = capture.onsets.map((seconds) => capture.toPage(seconds) - originMs);
    expect(heard.length).toBe(times.length);
    for (const [index, atMs] of times.entries()) expect(Math.abs(heard[index]! - atMs)).toBeLessThan(TOLERANCE_MS);
    expect(player.trouble).toBeUndefined();
  });

  it('is silent within a frame once disarmed', async () => {
    const { player, capture } = await begin();
    player.arm(
      [
        { atMs: 0, kind: 'letDown' },
        { atMs: 300, kind: 'draw' },
      ],
      performance.now() + 50,
    );
    await wait(250);
    expect(capture.onsets.length).toBe(1);
    const disarmedSeconds = Howler.ctx.currentTime;
    player.disarm();
    await wait(700);
    expect(capture.onsets.length).toBe(1);
    // One frame of a 60 Hz screen, and the step of the audio clock.
    expect(capture.peakSince(disarmedSeconds + 0.017 + 0.012)).toBe(0);
  });

  it('replaces what was armed and says nothing twice', async () => {
    const { player, capture } = await begin();
    const originMs = performance.now() + 50;
    player.arm(counts(0, 300, 600, 900), originMs);
    await wait(90);
    player.arm(counts(0, 500), originMs);
    await wait(1200);
    const heard = capture.onsets.map((seconds) => Math.round(capture.toPage(seconds) - originMs));
    expect(heard.length).toBe(2);
    expect(Math.abs(heard[1]! - 500)).toBeLessThan(TOLERANCE_MS);
  });

  it('says that the sound has stopped, then goes on without piling up', async () => {
    const { player, capture } = await begin();
    const told: (string | undefined)[] = [];
    player.onTrouble((trouble) => told.push(trouble?.kind));
    const resume = Howler.ctx.resume.bind(Howler.ctx);
    // An output that will not come back yet, as when a call holds the loudspeaker.
    Howler.ctx.resume = async () => undefined;
    const originMs = performance.now();
    player.arm(counts(300, 600, 900, 1200, 2500), originMs);
    await Howler.ctx.suspend();
    await wait(1500);
    expect(told).toEqual(['stalled']);
    Howler.ctx.resume = resume;
    await wait(1500);
    expect(told).toEqual(['stalled', undefined]);
    const heard = capture.onsets.map((seconds) => capture.toPage(seconds) - originMs);
    expect(heard.length).toBe(1);
    expect(Math.abs(heard[0]! - 2500)).toBeLessThan(TOLERANCE_MS);
  });

  it('speaks, and falls back to the tone for words it does not have', async () => {
    const { player, capture } = await begin({ voice: 'words' });
    await wait(600);
    const originMs = performance.now() + 50;
    player.arm(
      [
        { atMs: 0, kind: 'draw', words: 'Draw' },
        { atMs: 900, kind: 'call', words: 'Elbow high, thumb low' },
      ],
      originMs,
    );
    await wait(1500);
    const heard = capture.onsets.map((seconds) => capture.toPage(seconds) - originMs);
    expect(Math.abs(heard[0]!)).toBeLessThan(TOLERANCE_MS);
    expect(heard.some((ms) => Math.abs(ms - 900) < TOLERANCE_MS)).toBe(true);
    expect(player.trouble).toBeUndefined();
  });

  it('goes on with tones and says so when the words do not load', async () => {
    player = createCuePlayer({ voice: 'words', level: 1 }, { packUrl: () => '/there-is-no-such-pack.json' });
    await player.unlock();
    capture = await captureOnsets(Howler.ctx, Howler.masterGain);
    await wait(300);
    player.arm([{ atMs: 0, kind: 'draw', words: 'Draw' }], performance.now() + 50);
    await wait(600);
    expect(capture.onsets.length).toBe(1);
    expect(player.trouble?.message).toContain('Tones sound in their place');
  });

  it('has a call spoken by the device once, however often it is armed', async () => {
    const { player } = await begin({ voice: 'words' });
    const spoken: string[] = [];
    const { getVoices, speak } = speechSynthesis;
    // This browser has no voices of its own.
    speechSynthesis.getVoices = () => [{ lang: 'en-GB', localService: true } as SpeechSynthesisVoice];
    speechSynthesis.speak = (utterance) => void spoken.push(utterance.text);
    const { SpeechSynthesisUtterance } = globalThis;
    // A real utterance takes no voice but the browser's own.
    Object.assign(globalThis, {
      SpeechSynthesisUtterance: class {
        constructor(readonly text: string) {}
      },
    });
    const originMs = performance.now();
    const call: Cue = { atMs: 600, kind: 'call', words: 'Elbow high, thumb low' };
    player.arm([call], originMs);
    player.set({ quiet: true });
    await wait(200);
    player.arm([call], originMs);
    await wait(700);
    player.arm([{ ...call, atMs: 1500 }], originMs);
    player.disarm();
    await wait(900);
    Object.assign(speechSynthesis, { getVoices, speak });
    Object.assign(globalThis, { SpeechSynthesisUtterance });
    expect(spoken).toEqual(['Elbow high, thumb low']);
  });

  it('tries a cue and obeys the level', async () => {
    const { player, capture } = await begin();
    player.set({ level: 0 });
    player.say('hold');
    await wait(400);
    expect(capture.onsets.length).toBe(0);
    player.set({ level: 1 });
    await wait(500);
    player.say('hold');
    await wait(400);
    expect(capture.onsets.length).toBeGreaterThan(0);
  });

  it('says that sound is refused, and keeps armed what is still to come', async () => {
    const output = howlerOutput();
    const closed = new AudioContext();
    await closed.suspend();
    closed.resume = async () => undefined;
    player = createCuePlayer(
      {},
      {
        output: { ...output, context: () => closed, destination: () => closed.destination, resume: async () => false },
      },
    );
    expect(await player.unlock()).toBe(false);
    expect(player.trouble?.kind).toBe('refused');
    await closed.close();
  });
});
