interface Waiting {
  fn: () => void;
  timer?: ReturnType<typeof setTimeout>;
}

const waiting = new Map<number, Waiting>();
let ids = 0;
let worker: Worker | undefined;
let hasNoWorker = false;

/**
 * Calls once after a time, on time also in a page that has long been hidden.
 * @param ms how long, milliseconds
 * @param fn what to call
 * @returns a function that takes it back
 */
export function callHidden(ms: number, fn: () => void): () => void {
  ids += 1;
  const id = ids;
  waiting.set(id, { fn });
  const helper = findWorker();
  if (helper) helper.postMessage({ id, ms });
  else byPage(id, ms);
  return () => {
    clearTimeout(waiting.get(id)?.timer);
    waiting.delete(id);
  };
}

function answer(id: number): void {
  const asked = waiting.get(id);
  waiting.delete(id);
  asked?.fn();
}

/** The page's own timer where no Worker can be had: slower when hidden, but never silent. */
function byPage(id: number, ms: number): void {
  const asked = waiting.get(id);
  if (asked) asked.timer = setTimeout(() => answer(id), ms);
}

function findWorker(): Worker | undefined {
  if (worker || hasNoWorker) return worker;
  const giveUp = () => {
    hasNoWorker = true;
    worker = undefined;
    for (const id of waiting.keys()) byPage(id, 0);
  };
  try {
    worker = new Worker(new URL('../worker/timer-worker.js', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }) => answer(Number(data));
    worker.onerror = giveUp;
  } catch {
    giveUp();
  }
  return worker;
}
