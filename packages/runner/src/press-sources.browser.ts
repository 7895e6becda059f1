import { afterEach, expect, test, vi } from 'vitest';
import { headsetPresses } from './headset-presses.ts';
import { microphoneClaps } from './microphone-claps.ts';

afterEach(() => void vi.restoreAllMocks());

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** A room with claps in it, as a microphone would give it. The claps are made: noise that dies away in some ten milliseconds. */
async function clapsAt(seconds: readonly number[]) {
  const audio = new AudioContext();
  await audio.resume();
  const sound = audio.createBuffer(1, audio.sampleRate * 4, audio.sampleRate);
  const samples = sound.getChannelData(0);
  for (const at of seconds) {
    for (let index = 0; index < 0.12 * audio.sampleRate; index++) {
      const passed = index / audio.sampleRate;
      const noise = Math.sin(index * index * 12.9898) * Math.exp(-passed / 0.012);
      samples[Math.round(at * audio.sampleRate) + index]! += 0.7 * Math.min(1, passed / 0.001) * noise;
    }
  }
  const out = audio.createMediaStreamDestination();
  const source = audio.createBufferSource();
  source.buffer = sound;
  source.connect(out);
  const start = () =>
    new Promise<void>((resolve) => {
      source.onended = () => resolve();
      source.start();
    });
  return { stream: out.stream, start, close: () => void audio.close() };
}

test('claps by the microphone are presses, and the microphone is let go at the end', async () => {
  const room = await clapsAt([0.5, 1.2, 1.9, 2.4]);
  vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockResolvedValue(room.stream);
  const presses: string[] = [];
  const told: (string | undefined)[] = [];
  const end = microphoneClaps().listen(
    (code) => presses.push(code),
    (message) => told.push(message),
  );
  // On a busy machine the microphone takes its time; nothing is clapped before it hears.
  await vi.waitFor(() => expect(told).toEqual([undefined]), { timeout: 15_000 });
  const isOver = room.start();
  await isOver;
  await vi.waitFor(() => expect(presses).toHaveLength(4), { timeout: 15_000 });
  // Whatever would be heard too often is heard by now.
  await wait(500);
  expect(presses).toEqual(['Clap', 'Clap', 'Clap', 'Clap']);
  expect(told).toEqual([undefined]);
  end();
  expect(room.stream.getTracks().map((track) => track.readyState)).toEqual(['ended']);
  room.close();
});

test('a microphone that is refused is told once, and nothing else happens', async () => {
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
  const room = await clapsAt([]);
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
