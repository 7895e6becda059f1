/**
 * How long work takes, as far as one can measure it on a machine that has other work too: the lesser of the clock's time, which counts what else
 * the machine does, and the processor's time, which counts threads that run beside it.
 * @param work what is timed
 * @returns milliseconds
 */
export function quietMs(work: () => unknown): number {
  const before = process.cpuUsage();
  const startMs = performance.now(); // after the question for the processor's time, which itself takes a twentieth of a millisecond
  work();
  const tookMs = performance.now() - startMs;
  const { user, system } = process.cpuUsage(before);
  return Math.min(tookMs, (user + system) / 1000);
}

/**
 * The least of several times.
 * @param work what is timed
 * @param times how often
 * @returns milliseconds
 */
export function bestMs(work: () => unknown, times = 30): number {
  return Math.min(...Array.from({ length: times }, () => quietMs(work)));
}
