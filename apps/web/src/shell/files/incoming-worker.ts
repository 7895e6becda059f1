import type { DrillRecord } from '@larkhold/engine';
import { type Incoming, readIncoming } from './read-incoming.ts';

/**
 * What the worker says: how much is read; some drills of a journal, each lot when the page has answered to the one before; what the file turned out
 * to be, a journal without the drills that went before.
 */
export type IncomingNews =
  | { ratio: number }
  | { drills: readonly DrillRecord[]; ratio: number }
  | { incoming: Incoming }
  | { isUnreadable: true };
/** What the page says: a file to read, and that it has what was sent. */
export type PageNews = Blob | 'taken';

/** What a worker's global scope offers and is needed here; the page's types know only a window. */
interface Scope {
  postMessage(news: IncomingNews): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<PageNews>) => void): void;
}

const scope = globalThis as unknown as Scope;

/** Reading and checking take the most of the time; what is left is for handing over. */
const READ_SHARE = 0.6;
const CHECKED_SHARE = 0.8;
/** Drills in one message: the page is busy while it unpacks them. */
const DRILLS_AT_ONCE = 400;

let taken: () => void = () => undefined;

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
  await handOver(readIncoming(pieces.splice(0).join('')));
}

/** Hands a journal over in lots, so that neither side holds all of it twice, and the page gets turns. */
async function handOver(incoming: Incoming): Promise<void> {
  if (incoming.kind !== 'journal') return scope.postMessage({ incoming });
  const drills = incoming.journal.drills.splice(0); // what has been sent is not held here any more
  const rest = { ...incoming, journal: { ...incoming.journal, drills: [] } };
  const { length } = drills;
  while (drills.length > 0) {
    const ratio = CHECKED_SHARE + (1 - CHECKED_SHARE) * (1 - drills.length / length);
    const isTaken = new Promise<void>((resolve) => {
      taken = resolve;
    });
    scope.postMessage({ drills: drills.splice(0, DRILLS_AT_ONCE), ratio });
    await isTaken;
  }
  scope.postMessage({ incoming: rest });
}

scope.addEventListener('message', ({ data }) => {
  if (data === 'taken') return taken();
  read(data).catch(() => scope.postMessage({ isUnreadable: true }));
});
