import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ToSightWorker } from './sight-message.ts';
import { type CameraState, type CameraWatch, type WatchedCamera, watchCamera } from './watch-camera.ts';

// A canvas is the camera: what is drawn on it is what the camera gives.

interface Trial {
  stream?: MediaStream;
  refusal?: string;
  watch?: Partial<CameraWatch>;
  /** Whether the worker answers each frame, as one that keeps up. */
  keepsUp?: boolean;
}

let open: WatchedCamera[] = [];
let stopDrawing: (() => void)[] = [];

beforeEach(() => {
  open = [];
  stopDrawing = [];
});
afterEach(() => {
  for (const camera of open) camera.close();
  for (const stop of stopDrawing) stop();
});

/** A camera of a size whose picture changes at a given rate, until it is stopped. */
function cameraOf(width: number, height: number, fps: number) {
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  const context = canvas.getContext('2d');
  let count = 0;
  const draw = () => {
    if (context) context.fillStyle = `rgb(${(count++ * 37) % 255} 90 120)`;
    context?.fillRect(0, 0, canvas.width, canvas.height);
  };
  draw();
  const timer = setInterval(draw, 1_000 / fps);
  const stop = () => clearInterval(timer);
  stopDrawing.push(stop);
  const turn = () => Object.assign(canvas, { width: height, height: width });
  return { stream: canvas.captureStream(), stop, turn };
}

function watch({ stream, refusal, watch: more, keepsUp = true }: Trial) {
  const states: CameraState[] = [];
  const told: (ToSightWorker & { width?: number; height?: number })[] = [];
  let isEnded = false;
  const worker = {
    onmessage: null as ((event: { data: object }) => void) | null,
    onerror: null,
    postMessage(message: ToSightWorker) {
      if (message.type !== 'frame') told.push(message);
      else {
        const { width, height } = message.picture;
        told.push({ ...message, width, height });
        message.picture.close();
        if (keepsUp) setTimeout(() => worker.onmessage?.({ data: { type: 'seen', events: [] } }));
      }
    },
    terminate: () => {
      isEnded = true;
    },
  };
  const asked = vi
    .spyOn(navigator.mediaDevices, 'getUserMedia')
    .mockImplementation(() =>
      refusal === undefined && stream ? Promise.resolve(stream) : Promise.reject(new DOMException('no', refusal)),
    );
  const camera = watchCamera({
    worker: worker as unknown as Worker,
    onState: (state) => states.push(state),
    onSeen: () => undefined,
    ...more,
  });
  open.push(camera);
  const count = (type: ToSightWorker['type']) => told.filter((message) => message.type === type).length;
  const frames = () => told.flatMap((message) => (message.type === 'frame' ? [message] : []));
  return { camera, states, count, frames, asked, isEnded: () => isEnded };
}

const PATIENCE = { timeout: 10_000 };

describe('a camera', () => {
  it.each([
    ['is refused', 'NotAllowedError', 'refused'],
    ['is not there', 'NotFoundError', 'none'],
    ['is held by another program', 'NotReadableError', 'none'],
    ['can’t do what is asked', 'OverconstrainedError', 'none'],
  ])('that %s is reported as such, and nothing is looked at', async (_name, refusal, state) => {
    const { states, frames } = watch({ refusal });
    await vi.waitFor(() => expect(states.at(-1)).toBe(state), PATIENCE);
    expect(frames()).toEqual([]);
  });

  it('that is unplugged in mid-hold is gone, and its listener hears that nothing comes', async () => {
    const { stream, stop } = cameraOf(320, 240, 15);
    const { states, count, frames } = watch({ stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(3), PATIENCE);
    stop();
    for (const track of stream.getTracks()) {
      track.stop();
      track.dispatchEvent(new Event('ended'));
    }
    expect(states.at(-1)).toBe('gone');
    await vi.waitFor(() => expect(count('nothing')).toBeGreaterThan(0), PATIENCE);
  });

  it('that has stopped, or a page that is hidden, gives no picture: what sees hears of it within two seconds', async () => {
    const { stream, stop } = cameraOf(320, 240, 15);
    const { count, frames } = watch({ stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(3), PATIENCE);
    stop();
    const lastAtMs = frames().at(-1)?.atMs ?? 0;
    await vi.waitFor(() => expect(count('nothing')).toBeGreaterThan(0), PATIENCE);
    expect(performance.now() - lastAtMs).toBeGreaterThan(1_000);
  });

  it('of five frames a second is used as it is, each frame dated after the one before', async () => {
    const { stream } = cameraOf(320, 240, 5);
    const { frames, count } = watch({ stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(5), PATIENCE);
    const instants = frames().map(({ atMs }) => atMs);
    expect(instants).toEqual([...instants].sort((a, b) => a - b));
    expect(new Set(instants).size).toBe(instants.length);
    expect(count('nothing')).toBe(0);
  });

  it.each([
    ['landscape', 320, 240],
    ['portrait', 240, 320],
    ['odd', 321, 241],
  ])('%s is watched and replayed in its own shape', async (_name, width, height) => {
    const { stream } = cameraOf(width, height, 15);
    const { camera, frames } = watch({ stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(5), PATIENCE);
    expect(frames()[0]).toMatchObject({ width, height });
    const nowMs = performance.now();
    const clip = await camera.clip(nowMs - 5_000, nowMs);
    expect(clip).toMatchObject({ width: width - (width % 2), height: height - (height % 2) });
  });

  it('of more than 30 frames a second is looked at 30 times a second', async () => {
    const { stream } = cameraOf(320, 240, 120);
    const { frames } = watch({ stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(20), PATIENCE);
    const instants = frames().map(({ atMs }) => atMs);
    const apart = instants.slice(1).map((atMs, index) => atMs - (instants[index] ?? 0));
    expect(Math.min(...apart)).toBeGreaterThanOrEqual(25);
  });

  it('that is turned in mid-hold goes on, and is replayed in its new shape', async () => {
    const { stream, turn } = cameraOf(320, 240, 15);
    const { camera, frames } = watch({ stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(3), PATIENCE);
    turn();
    await vi.waitFor(() => expect(frames().at(-1)).toMatchObject({ width: 240, height: 320 }), PATIENCE);
    await vi.waitFor(async () => {
      const nowMs = performance.now();
      expect(await camera.clip(nowMs - 5_000, nowMs)).toMatchObject({ width: 240, height: 320 });
    }, PATIENCE);
  });

  it('whose picture has no size for a while is one that gives none, and then goes on', async () => {
    const { stream } = cameraOf(320, 240, 15);
    const { camera, frames, count } = watch({ stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(3), PATIENCE);
    Object.defineProperty(camera.video, 'videoWidth', { configurable: true, get: () => 0 });
    await vi.waitFor(() => expect(count('nothing')).toBeGreaterThan(0), PATIENCE);
    const before = frames().length;
    Reflect.deleteProperty(camera.video, 'videoWidth');
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(before), PATIENCE);
  });

  it('that is swapped for another in a rest is opened, and what sees hears that it is another', async () => {
    const first = cameraOf(320, 240, 15);
    const { states, count, frames, asked } = watch({ stream: first.stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(3), PATIENCE);
    first.stop();
    for (const track of first.stream.getTracks()) {
      track.stop();
      track.dispatchEvent(new Event('ended'));
    }
    asked.mockRejectedValueOnce(new DOMException('no', 'NotFoundError'));
    navigator.mediaDevices.dispatchEvent(new Event('devicechange'));
    await vi.waitFor(() => expect(states.at(-1)).toBe('none'), PATIENCE);
    asked.mockResolvedValue(cameraOf(240, 320, 15).stream);
    navigator.mediaDevices.dispatchEvent(new Event('devicechange'));
    await vi.waitFor(() => expect(frames().at(-1)).toMatchObject({ width: 240, height: 320 }), PATIENCE);
    expect(states).toEqual(['asking', 'looking', 'gone', 'asking', 'none', 'asking', 'looking']);
    expect(count('restart')).toBe(2);
  });

  it('is the one that was chosen, where one was', async () => {
    const video = (asked: ReturnType<typeof watch>['asked']) => asked.mock.calls[0]?.[0]?.video;
    const { stream } = cameraOf(320, 240, 15);
    expect(video(watch({ stream, watch: { deviceId: 'stand' } }).asked)).toMatchObject({
      deviceId: { ideal: 'stand' },
    });
    vi.restoreAllMocks();
    expect(video(watch({ stream }).asked)).not.toHaveProperty('deviceId');
  });

  it('never has more than three frames waiting for a machine that can’t keep up', async () => {
    const { stream } = cameraOf(320, 240, 30);
    const { frames } = watch({ stream, keepsUp: false });
    await vi.waitFor(() => expect(frames()).toHaveLength(3), PATIENCE);
    await new Promise((resolve) => setTimeout(resolve, 500));
    expect(frames()).toHaveLength(3);
  });

  it('that is closed is off: its track stops, its worker ends, and no picture is left', async () => {
    const { stream } = cameraOf(320, 240, 15);
    const { camera, frames, isEnded } = watch({ stream });
    await vi.waitFor(() => expect(frames().length).toBeGreaterThan(3), PATIENCE);
    camera.close();
    expect(stream.getTracks().map(({ readyState }) => readyState)).toEqual(['ended']);
    expect(isEnded()).toBe(true);
    expect(camera.video.srcObject).toBeNull();
    expect(await camera.clip(0, performance.now())).toBeUndefined();
    expect(camera.state).toBe('off');
  });

  it('whose question nobody answers keeps nobody waiting', async () => {
    vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockImplementation(() => new Promise(() => undefined));
    const states: CameraState[] = [];
    const camera = watchCamera({ onState: (state) => states.push(state), onSeen: () => undefined });
    expect(camera.state).toBe('asking');
    expect(await camera.clip(0, 1)).toBeUndefined();
    camera.close();
    expect(states).toEqual(['asking']);
  });
});
