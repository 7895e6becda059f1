/** Runs in the page before anything else: tells when Begin is painted, and keeps the long tasks. */
function prepare() {
  globalThis.benchTasks = [];
  performance.mark('bench-page');
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) globalThis.benchTasks.push({ startTime, duration });
  }).observe({ type: 'longtask', buffered: true });
  const find = () =>
    document.querySelector('lark-app')?.shadowRoot?.querySelector('lark-line')?.shadowRoot?.querySelector('.begin');
  globalThis.benchBegin = new Promise((resolve) => {
    const look = () => {
      if (find()) requestAnimationFrame(() => setTimeout(() => resolve(performance.now())));
      else setTimeout(look, 4);
    };
    look();
  });
}

/**
 * The longest task of a page's main thread by its own time, which counts nothing that other processes took from it, milliseconds. The browser has
 * pages of its own (its address bar), which begin in the same seconds: they do not count.
 */
function longestOf(trace) {
  const { traceEvents } = JSON.parse(trace.toString());
  const pages = new Set(traceEvents.filter(({ name }) => name === 'bench-page').map(({ pid }) => pid));
  if (pages.size === 0) throw new Error('the trace does not say which process is the page');
  const isMain = new Set(
    traceEvents
      .filter(({ name, args, pid }) => name === 'thread_name' && args.name === 'CrRendererMain' && pages.has(pid))
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = traceEvents.filter(({ name, pid, tid }) => /RunTask$/.test(name) && isMain.has(`${pid} ${tid}`));
  return Math.max(0, ...tasks.map(({ tdur = 0 }) => tdur / 1000));
}

/**
 * A cold start of the app on the line.
 * @param browser the running one
 * @param context of the browser, its journal filled
 * @param address where the built app is served
 * @param rate how many times the CPU is slowed
 * @returns milliseconds from the navigation, the main thread's own time until it can begin and in its longest task, and the heap after, MB
 */
export async function measureStart(browser, context, address, rate) {
  const page = await context.newPage();
  await page.addInitScript(prepare);
  const cdp = await context.newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  await cdp.send('Emulation.setCPUThrottlingRate', { rate });
  await browser.startTracing(page, { categories: ['toplevel', 'blink.user_timing'] });
  await page.goto(`${address}#/line`, { waitUntil: 'commit' });
  const canBeginMs = await page.evaluate(() => globalThis.benchBegin);
  const { metrics } = await cdp.send('Performance.getMetrics');
  const busyMs = 1000 * metrics.find(({ name }) => name === 'TaskDuration').value;
  // What goes on after the first picture: until a second passes without a long task.
  const settledMs = await page.evaluate(async () => {
    const lastEnd = () => Math.max(0, ...globalThis.benchTasks.map(({ startTime, duration }) => startTime + duration));
    while (performance.now() - Math.max(lastEnd(), await globalThis.benchBegin) < 1500)
      await new Promise((go) => setTimeout(go, 100));
    return lastEnd();
  });
  const longestMs = longestOf(await browser.stopTracing());
  const { firstDrawMs, tasks } = await page.evaluate(() => ({
    firstDrawMs: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0,
    tasks: globalThis.benchTasks.map(({ duration }) => duration),
  }));
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await cdp.send('HeapProfiler.collectGarbage');
  const heapMb = (await page.evaluate(() => performance.memory.usedJSHeapSize)) / 1e6;
  await page.close();
  return {
    firstDrawMs,
    canBeginMs,
    busyMs,
    longestMs,
    longSumMs: tasks.reduce((sum, ms) => sum + ms, 0),
    settledMs,
    heapMb,
  };
}
