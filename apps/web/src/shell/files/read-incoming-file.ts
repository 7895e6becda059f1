import { type DrillRecord, type Fault, faultMessage } from '@larkhold/engine';
import type { IncomingNews, PageNews } from './incoming-worker.ts';
import { type Incoming, readIncoming } from './read-incoming.ts';

/** The largest file that is read, bytes. Twenty years of daily drills are less; what memory it asks for is bounded by this. */
export const LARGEST_BYTES = 96 * 1024 * 1024;
/** A file up to this size is read in the page: starting a worker takes longer. */
const SMALL_BYTES = 512 * 1024;

/**
 * Reads a file that came in, a large one beside the page. One that is too large is not read at all.
 * @param file any file
 * @param signal leaves it
 * @param onProgress hears how much of a large file is done, 0 to 1
 * @returns what it turned out to be; undefined where it was left
 */
export async function readIncomingFile(
  file: Blob,
  signal: AbortSignal,
  onProgress: (ratio: number) => void,
): Promise<Incoming | undefined> {
  if (file.size > LARGEST_BYTES) {
    return refused({ rule: 'tooBig', thing: 'journal', length: file.size, most: LARGEST_BYTES });
  }
  if (file.size <= SMALL_BYTES) return readIncoming(await file.text().catch(() => ''));
  onProgress(0);
  const worker = new Worker(new URL('./incoming-worker.ts', import.meta.url), { type: 'module' });
  const tell = (news: PageNews): void => worker.postMessage(news);
  const drills: DrillRecord[] = [];
  return new Promise((resolve) => {
    const end = (incoming?: Incoming): void => {
      worker.terminate();
      resolve(incoming);
    };
    signal.addEventListener('abort', () => end(), { once: true });
    worker.addEventListener('message', ({ data }: MessageEvent<IncomingNews>) => {
      if ('ratio' in data) onProgress(data.ratio);
      if ('drills' in data) {
        drills.push(...data.drills);
        tell('taken');
      } else if (!('ratio' in data)) {
        end('incoming' in data ? withDrills(data.incoming, drills) : refused({ rule: 'unreadable' }));
      }
    });
    // The worker's file did not come, or memory ran out in it: the page goes on.
    worker.addEventListener('error', () => end(refused({ rule: 'unreadable' })));
    tell(file);
  });
}

function withDrills(incoming: Incoming, drills: readonly DrillRecord[]): Incoming {
  return incoming.kind === 'journal'
    ? { ...incoming, journal: { ...incoming.journal, drills: [...drills] } }
    : incoming;
}

function refused(fault: Fault): Incoming {
  return { kind: 'refused', problems: [{ pointer: '', fault, message: faultMessage({ fault }) }] };
}
