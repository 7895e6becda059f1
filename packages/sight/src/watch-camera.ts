import { createReplayRecorder, type ReplayClip, type ReplayRecorder } from './record-replay.ts';
import type { FromSightWorker, ModelFiles, ToSightWorker } from './sight-message.ts';

/** How a camera is doing. `refused`: the person or the browser said no; `none`: there is none; `gone`: it was taken away or went to sleep. */
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
  let waiting = 0;
  let frameAtMs = performance.now();
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

  async function open(): Promise<void> {
    tell('asking');
    const devices = navigator.mediaDevices as MediaDevices | undefined;
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
    const { videoWidth, videoHeight } = video;
    recorder = await createReplayRecorder(videoWidth - (videoWidth % 2), videoHeight - (videoHeight % 2));
    if (isClosed) {
      stop();
      return;
    }
    tell('looking');
    video.requestVideoFrameCallback(onFrame);
  }

  const onFrame = (nowMs: number, { captureTime }: VideoFrameCallbackMetadata): void => {
    if (isClosed) return;
    video.requestVideoFrameCallback(onFrame);
    // When it was taken where the browser knows it, else when it was shown; never in the future.
    const atMs = Math.min(captureTime ?? nowMs, performance.now());
    if (!(atMs > frameAtMs)) return;
    frameAtMs = atMs;
    recorder?.push(new VideoFrame(video, { timestamp: 0 }), atMs);
    if (watch.worker && waiting < MOST_WAITING) void send(atMs);
  };

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
      stop();
      watch.worker?.terminate();
      state = 'off';
    },
  };
}
