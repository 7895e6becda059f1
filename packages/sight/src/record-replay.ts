import { createReplayRing, type ReplayChunk } from './replay-ring.ts';

/** A stretch of the last half minute, ready to be decoded. */
export interface ReplayClip {
  config: VideoDecoderConfig;
  chunks: readonly ReplayChunk<EncodedVideoChunk>[];
  /** What is worth seeing, the page's clock, milliseconds. */
  fromMs: number;
  toMs: number;
  width: number;
  height: number;
}

/** Keeps the last half minute of a camera, encoded, in memory only. */
export interface ReplayRecorder {
  /** Takes a frame and closes it. Where the encoder can't keep up, frames are left out. */
  push(frame: VideoFrame, atMs: number): void;
  /** A stretch, or undefined where nothing is left of it. */
  clip(fromMs: number, toMs: number): Promise<ReplayClip | undefined>;
  /** What the ring holds, bytes. */
  bytes(): number;
  /** Lets go of everything. */
  close(): void;
}

/** What this browser may encode, the least work first. */
const CODECS = ['avc1.42001f', 'vp09.00.10.08', 'vp8'] as const;
const KEY_EVERY_MS = 1_000;
const BITS_PER_SECOND = 1_000_000;

/**
 * Finds an encoder for a size.
 * @param width pixels, even
 * @param height pixels, even
 * @returns a recorder; undefined where this browser encodes no video
 */
export async function createReplayRecorder(width: number, height: number): Promise<ReplayRecorder | undefined> {
  if (typeof VideoEncoder === 'undefined') return undefined;
  for (const codec of CODECS) {
    const config: VideoEncoderConfig = {
      codec,
      width,
      height,
      bitrate: BITS_PER_SECOND,
      framerate: 15,
      latencyMode: 'realtime',
      ...(codec.startsWith('avc1') ? { avc: { format: 'annexb' } } : {}),
    };
    const { supported } = await VideoEncoder.isConfigSupported(config).catch(() => ({ supported: false }));
    if (supported) return recordWith(config);
  }
  return undefined;
}

function recordWith(config: VideoEncoderConfig): ReplayRecorder {
  const ring = createReplayRing<EncodedVideoChunk>();
  let decoderConfig: VideoDecoderConfig | undefined;
  let keyAtMs = Number.NEGATIVE_INFINITY;
  let hasFailed = false;
  const encoder = new VideoEncoder({
    output: (chunk, { decoderConfig: described } = {}) => {
      decoderConfig = described ?? decoderConfig;
      ring.push({ atMs: chunk.timestamp / 1_000, isKey: chunk.type === 'key', bytes: chunk.byteLength, chunk });
    },
    // A replay that fails leaves the drill as it is: there is nothing to play, that is all.
    error: () => {
      hasFailed = true;
      ring.clear();
    },
  });
  encoder.configure(config);

  return {
    push(frame, atMs) {
      // Two frames behind is a machine that can't keep up: the drill's own work comes first.
      if (hasFailed || encoder.state !== 'configured' || encoder.encodeQueueSize > 2) {
        frame.close();
        return;
      }
      const timed = new VideoFrame(frame, { timestamp: Math.round(atMs * 1_000) });
      frame.close();
      const keyFrame = atMs - keyAtMs >= KEY_EVERY_MS;
      if (keyFrame) keyAtMs = atMs;
      encoder.encode(timed, { keyFrame });
      timed.close();
    },
    async clip(fromMs, toMs) {
      if (hasFailed || encoder.state !== 'configured') return undefined;
      await encoder.flush().catch(() => undefined);
      keyAtMs = Number.NEGATIVE_INFINITY;
      const chunks = ring.between(fromMs, toMs);
      if (chunks.length === 0 || decoderConfig === undefined) return undefined;
      return { config: decoderConfig, chunks, fromMs, toMs, width: config.width, height: config.height };
    },
    bytes: ring.bytes,
    close() {
      ring.clear();
      if (encoder.state !== 'closed') encoder.close();
    },
  };
}
