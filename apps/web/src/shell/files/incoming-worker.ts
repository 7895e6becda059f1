import { readIncoming } from './read-incoming.ts';

/** What the worker says: how much is read, or what the file turned out to be. */
export type IncomingNews = { ratio: number } | { incoming: ReturnType<typeof readIncoming> } | { isUnreadable: true };

/** What a worker's global scope offers and is needed here; the page's types know only a window. */
interface Scope {
  postMessage(news: IncomingNews): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<Blob>) => void): void;
}

const scope = globalThis as unknown as Scope;

/** Reading takes the most of the time; what is left is for checking. */
const READ_SHARE = 0.6;

async function read(file: Blob): Promise<void> {
  const decoder = new TextDecoder();
  const pieces: string[] = [];
  let readBytes = 0;
  const reader = file.stream().getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    pieces.push(decoder.decode(value, { stream: true }));
    readBytes += value.length;
    scope.postMessage({ ratio: (readBytes / file.size) * READ_SHARE });
  }
  pieces.push(decoder.decode());
  scope.postMessage({ incoming: readIncoming(pieces.join('')) });
}

scope.addEventListener('message', ({ data }) => {
  read(data).catch(() => scope.postMessage({ isUnreadable: true }));
});
