import { expect, test, vi } from 'vitest';
import { headsetPresses } from './headset-presses.ts';
import { microphoneClaps } from './microphone-claps.ts';

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Between two claps in the made room, seconds. */
const APART_SECONDS = 0.7;

/** A room with somebody clapping in it, as a microphone would give it. The claps are made: noise that dies away in some ten milliseconds. */
async function clappingRoom() {
  const audio = new AudioContext();
  await audio.resume();
  const sound = audio.createBuffer(1, Math.round(audio.sampleRate * APART_SECONDS), audio.sampleRate);
  const samples = sound.getChannelData(0);
  const first = Math.round(samples.length / 2);
  for (let index = 0; index < 0.12 * audio.sampleRate; index++) {
    const passed = index / audio.sampleRate;
    const noise = Math.sin(index * index * 12.9898) * Math.exp(-passed / 0.012);
    samples[first + index] = 0.7 * Math.min(1, passed / 0.001) * noise;
  }
  const out = audio.createMediaStreamDestination();
  const source = audio.createBufferSource();
  source.buffer = sound;
  source.loop = true;
  source.connect(out);
  let beganSeconds = 0;
  return {
    stream: out.stream,
    start() {
      beganSeconds = audio.currentTime;
      source.start();
    },
    /** How often it can have clapped by now, at the most. */
    clapCount: () => Math.ceil((audio.currentTime - beganSeconds) / APART_SECONDS),
    close: () => void audio.close(),
  };
}

test('claps by the microphone are presses, and the microphone is let go at the end', async () => {
  const room = await clappingRoom();
  vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockResolvedValue(room.stream);
  const presses: string[] = [];
  const told: (string | undefined)[] = [];
  const end = microphoneClaps().listen(
    (code) => presses.push(code),
    (message) => told.push(message),
  );
  await vi.waitFor(() => expect(told).toEqual([undefined]), { timeout: 15_000 });
  room.start();
  // A busy machine loses pieces of a sound, so the room goes on until four claps have come through; none is heard twice.
  await vi.waitFor(() => expect(presses.length).toBeGreaterThanOrEqual(4), { timeout: 20_000 });
  expect(presses.length).toBeLessThanOrEqual(room.clapCount());
  expect(new Set(presses)).toEqual(new Set(['Clap']));
  expect(told).toEqual([undefined]);
  end();
  const heardBefore = presses.length;
  expect(room.stream.getTracks().map((track) => track.readyState)).toEqual(['ended']);
  await wait(2 * APART_SECONDS * 1000);
  expect(presses.length).toBe(heardBefore);
  room.close();
}, 60_000);

test('a microphone that is refused is reported once, and nothing else happens', async () => {
  vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockRejectedValue(new DOMException('no', 'NotAllowedError'));
  const troubles: (string | undefined)[] = [];
  const end = microphoneClaps().listen(
    () => undefined,
    (message) => troubles.push(message),
  );
  await vi.waitFor(() => expect(troubles).not.toEqual([]));
  await wait(50);
  end();
  expect(troubles).toEqual([
    'The microphone is not allowed or not there. Claps are not heard; use a key or the screen.',
  ]);
});

test('a microphone that comes after the end is let go at once', async () => {
  const room = await clappingRoom();
  let give: (stream: MediaStream) => void = () => undefined;
  vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockReturnValue(
    new Promise((resolve) => {
      give = resolve;
    }),
  );
  const end = microphoneClaps().listen(() => undefined);
  end();
  give(room.stream);
  await vi.waitFor(() => expect(room.stream.getTracks().map((track) => track.readyState)).toEqual(['ended']), {
    timeout: 15_000,
  });
  room.close();
});

test('headset buttons are presses until the end', () => {
  const handlers = new Map<string, MediaSessionActionHandler | null>();
  vi.spyOn(navigator.mediaSession, 'setActionHandler').mockImplementation((action, handler) => {
    if (action === 'previoustrack') throw new TypeError('unknown action');
    handlers.set(action, handler);
  });
  const presses: string[] = [];
  const end = headsetPresses('Morning holds').listen((code) => presses.push(code));
  expect(navigator.mediaSession.metadata?.title).toBe('Morning holds');
  handlers.get('play')?.({ action: 'play' });
  handlers.get('nexttrack')?.({ action: 'nexttrack' });
  expect(presses).toEqual(['Headset:playpause', 'Headset:next']);
  end();
  expect([...handlers.values()]).toEqual([null, null, null]);
});
