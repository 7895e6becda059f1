import type { ReplayClip } from './record-replay.ts';

/** One decoded picture with its instant, the page's clock, milliseconds. */
export interface ReplayPicture {
  atMs: number;
  picture: ImageBitmap;
}

/** How many pictures are decoded ahead. */
const AHEAD = 6;

/**
 * Decodes a clip from its beginning, a few pictures ahead of whoever looks.
 * @param clip the stretch
 * @yields each picture that is worth seeing, in order; the caller closes it
 * @throws EncodingError of the decoder where a clip can't be read
 */
export async function* decodeReplay(clip: ReplayClip): AsyncGenerator<ReplayPicture, void, undefined> {
  const ready: VideoFrame[] = [];
  let failure: unknown;
  let wake = () => {};
  const decoder = new VideoDecoder({
    output: (frame) => {
      ready.push(frame);
      wake();
    },
    error: (error) => {
      failure = error;
      wake();
    },
  });
  decoder.configure({ ...clip.config, optimizeForLatency: true });
  let next = 0;
  let isFlushed = false;
  const feed = () => {
    while (next < clip.chunks.length && decoder.decodeQueueSize + ready.length < AHEAD) {
      const chunk = clip.chunks[next++];
      if (chunk) decoder.decode(chunk.chunk);
    }
    if (next >= clip.chunks.length && !isFlushed) {
      isFlushed = true;
      decoder.flush().then(
        () => wake(),
        () => wake(),
      );
    }
  };
  try {
    for (let given = 0; given < clip.chunks.length; given++) {
      feed();
      while (ready.length === 0 && failure === undefined) {
        if (isFlushed && decoder.decodeQueueSize === 0 && decoder.state === 'configured')
          await decoder.flush().catch(() => undefined);
        if (ready.length > 0) break;
        if (isFlushed && decoder.decodeQueueSize === 0) return;
        await new Promise<void>((resolve) => {
          wake = resolve;
          setTimeout(resolve, 50);
        });
        feed();
      }
      if (failure !== undefined) throw failure;
      const frame = ready.shift();
      if (!frame) return;
      const atMs = frame.timestamp / 1_000;
      if (atMs < clip.fromMs) {
        frame.close();
        continue;
      }
      const picture = await createImageBitmap(frame);
      frame.close();
      yield { atMs, picture };
    }
  } finally {
    for (const frame of ready) frame.close();
    if (decoder.state !== 'closed') decoder.close();
  }
}
