/** One encoded picture. `chunk` is whatever the decoder takes; `bytes` its size. */
export interface ReplayChunk<T> {
  /** When it was taken, the caller's clock, milliseconds. */
  atMs: number;
  /** A picture that needs none before it. */
  isKey: boolean;
  bytes: number;
  chunk: T;
}

/** How far back a replay reaches, milliseconds. */
export const REPLAY_MS = 30_000;
/** More than this is never kept, whatever the encoder makes of it. */
const MOST_BYTES = 12_000_000;

/** The last half minute of pictures. Nothing of it is ever written anywhere. */
export interface ReplayRing<T> {
  push(next: ReplayChunk<T>): void;
  /** The pictures of a stretch, from the key picture before it, so that they can be decoded; empty where nothing is left of it. */
  between(fromMs: number, toMs: number): ReplayChunk<T>[];
  /** What it holds, bytes. */
  bytes(): number;
  clear(): void;
}

/**
 * Makes a ring.
 * @param keptMs how far back it reaches, milliseconds
 * @returns an empty ring
 */
export function createReplayRing<T>(keptMs = REPLAY_MS): ReplayRing<T> {
  let chunks: ReplayChunk<T>[] = [];
  let bytes = 0;

  /** Lets go of whole groups only: a picture without its key picture shows nothing. */
  function forget(nowMs: number): void {
    for (;;) {
      const nextKey = chunks.findIndex(({ isKey }, index) => index > 0 && isKey);
      const next = chunks[nextKey];
      if (next === undefined || (next.atMs > nowMs - keptMs && bytes <= MOST_BYTES)) return;
      bytes -= chunks.slice(0, nextKey).reduce((sum, chunk) => sum + chunk.bytes, 0);
      chunks = chunks.slice(nextKey);
    }
  }

  return {
    push(next) {
      if (chunks.length === 0 && !next.isKey) return;
      chunks.push(next);
      bytes += next.bytes;
      forget(next.atMs);
    },
    between(fromMs, toMs) {
      const start = chunks.findLastIndex(({ isKey, atMs }) => isKey && atMs <= fromMs);
      const from = Math.max(0, start);
      return chunks.slice(from).filter(({ atMs }) => atMs <= toMs);
    },
    bytes: () => bytes,
    clear() {
      chunks = [];
      bytes = 0;
    },
  };
}
