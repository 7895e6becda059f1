import { createReplayRecorder, type ReplayClip, type ReplayRecorder } from './record-replay.ts';
import type { FromSightWorker, ModelFiles, ToSightWorker } from './sight-message.ts';

/** How a camera is doing. `refused`: the person or the browser said no; `none`: no camera was found; `gone`: it was unplugged or went to sleep; where one comes back it is opened. */
export type CameraState = 'off' | 'asking' | 'looking' | 'refused' | 'none' | 'gone';

/** What a camera is watched with. */
export interface CameraWatch {
  /** The worker; absent: replay alone, without the model. */
  worker?: Worker;
  files?: ModelFiles;
  torsoCm?: number;
  /** Which camera; the browser's choice where left out. */
  deviceId?: string;
  onState(state: CameraState): void;
  onSeen(seen: FromSightWorker): void;
}

/** A camera that is being watched. Pictures stay in the page and its worker. */
export interface WatchedCamera {
  readonly state: CameraState;
  /** Shows the live picture: for the set-up, and as a sign that it looks. */
  readonly video: HTMLVideoElement;
  clip(fromMs: number, toMs: number): Promise<ReplayClip | undefined>;
  /** Stops the camera and forgets every picture. */
  close(): void;
}

const WIDTH = 640;
const HEIGHT = 480;
const FRAMES_PER_SECOND = 15;
/** A faster camera is looked at 30 times a second: more tells nothing more, and the last seconds are kept in memory. */
const LEAST_APART_MS = 25;
/** More frames than this are never waiting in the worker. */
const MOST_WAITING = 3;
const NOTHING_AFTER_MS = 1_000;

/**
 * Opens a camera and watches it. It never makes anybody wait: until it sees, nothing is reported.
 * @param watch worker, camera, and who hears of it
 * @returns at once; `onState` tells how it went
 */
export function watchCamera(watch: CameraWatch): WatchedCamera {
  const video = document.createElement('video');
  video.muted = true;
  video.playsInline = true;
  let state: CameraState = 'off';
  let stream: MediaStream | undefined;
  let recorder: ReplayRecorder | undefined;
  let recorded = { width: 0, height: 0 };
  let waiting = 0;
  let frameAtMs = performance.now();
  let lookedAtMs = 0;
  let asked = 0;
  let isClosed = false;

  const tell = (next: CameraState) => {
    if (next === state || isClosed) return;
    state = next;
    watch.onState(next);
  };
  const post = (message: ToSightWorker, transfer: Transferable[] = []) => watch.worker?.postMessage(message, transfer);

  if (watch.worker) {
    watch.worker.onmessage = ({ data }: MessageEvent<FromSightWorker>) => {
      if (data.type === 'seen') waiting = Math.max(0, waiting - 1);
      if (!isClosed) watch.onSeen(data);
    };
    watch.worker.onerror = (event) => {
      event.preventDefault();
      if (!isClosed) watch.onSeen({ type: 'failed', message: event.message || 'the worker did not start' });
    };
    if (watch.files) post({ type: 'start', files: watch.files, torsoCm: watch.torsoCm });
  }

  const devices = navigator.mediaDevices as MediaDevices | undefined;
  /** The cable is in again, or another camera is: what was known of the first one's picture is not true of it. */
  const onDevices = () => {
    if (state !== 'gone' && state !== 'none') return;
    post({ type: 'restart', atMs: performance.now() });
    void open();
  };

  async function open(): Promise<void> {
    tell('asking');
    if (devices === undefined) {
      tell('none');
      return;
    }
    try {
      stream = await devices.getUserMedia({
        video: {
          width: { ideal: WIDTH },
          height: { ideal: HEIGHT },
          frameRate: { ideal: FRAMES_PER_SECOND, max: 30 },
          ...(watch.deviceId ? { deviceId: { ideal: watch.deviceId } } : {}),
        },
        audio: false,
      });
    } catch (error) {
      tell(error instanceof DOMException && error.name === 'NotAllowedError' ? 'refused' : 'none');
      return;
    }
    if (isClosed) {
      stop();
      return;
    }
    for (const track of stream.getVideoTracks()) track.addEventListener('ended', () => tell('gone'));
    video.srcObject = stream;
    await video.play().catch(() => undefined);
    await record();
    if (isClosed) {
      stop();
      return;
    }
    tell('looking');
    video.cancelVideoFrameCallback(asked);
    asked = video.requestVideoFrameCallback(onFrame);
  }

  /** What the recorder takes: encoders want even sizes. */
  const evenSize = () => ({
    width: video.videoWidth - (video.videoWidth % 2),
    height: video.videoHeight - (video.videoHeight % 2),
  });

  /** Begins a replay of the picture's present size; what was kept of another size can't be played on. */
  async function record(): Promise<void> {
    const size = evenSize();
    recorded = size;
    recorder?.close();
    recorder = undefined;
    const next = size.width > 0 && size.height > 0 ? await createReplayRecorder(size.width, size.height) : undefined;
    if (isClosed || recorded !== size) next?.close();
    else recorder = next;
  }

  const onFrame = (nowMs: number, { captureTime }: VideoFrameCallbackMetadata): void => {
    if (isClosed) return;
    asked = video.requestVideoFrameCallback(onFrame);
    // When it was taken where the browser knows it, else when it was shown; never in the future.
    const atMs = Math.min(captureTime ?? nowMs, performance.now());
    const { width, height } = evenSize();
    if (!(atMs > frameAtMs) || width === 0 || height === 0) return;
    frameAtMs = atMs;
    if (atMs - lookedAtMs < LEAST_APART_MS) return;
    lookedAtMs = atMs;
    // A phone that is turned gives pictures of another shape.
    if (width !== recorded.width || height !== recorded.height) void record();
    else keep(atMs);
    if (watch.worker && waiting < MOST_WAITING) void send(atMs);
  };

  function keep(atMs: number): void {
    try {
      recorder?.push(new VideoFrame(video, { timestamp: 0 }), atMs);
    } catch {
      // a video that ended between two frames
    }
  }

  async function send(atMs: number): Promise<void> {
    waiting++;
    try {
      const picture = await createImageBitmap(video);
      post({ type: 'frame', picture, atMs }, [picture]);
    } catch {
      waiting--; // a video that ended between two frames
    }
  }

  const nothing = setInterval(() => {
    const nowMs = performance.now();
    if (state === 'asking' || nowMs - frameAtMs < NOTHING_AFTER_MS) return;
    post({ type: 'nothing', atMs: nowMs });
  }, 500);

  function stop(): void {
    for (const track of stream?.getTracks() ?? []) track.stop();
    video.srcObject = null;
    recorder?.close();
  }

  devices?.addEventListener('devicechange', onDevices);
  void open();
  return {
    get state() {
      return state;
    },
    video,
    clip: async (fromMs, toMs) => recorder?.clip(fromMs, toMs),
    close() {
      if (isClosed) return;
      isClosed = true;
      clearInterval(nothing);
      devices?.removeEventListener('devicechange', onDevices);
      stop();
      watch.worker?.terminate();
      state = 'off';
    },
  };
}
