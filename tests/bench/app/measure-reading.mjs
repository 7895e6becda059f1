import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** A journal file of invented drills of 30 reps. */
function journalText(bytes) {
  const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' };
  const reps = Array.from({ length: 30 }, (_, place) => ({ ...rep, rep: place }));
  const at = '2026-01-05T06:30:00Z';
  const drill = { program: 'Invented', date: '2026-01-05', startedAt: at, endedAt: at, reps, effort: 5 };
  const one = JSON.stringify({ id: 'bench-000000', ...drill }).length + 1;
  const drills = Array.from({ length: Math.floor(bytes / one) }, (_, place) => ({
    id: `bench-${String(place).padStart(6, '0')}`,
    ...drill,
  }));
  return JSON.stringify({ format: 'larkhold/journal', version: 2, drills, days: [], weeks: [] });
}

/** The most memory that a process has had since it was last asked to forget it, MB; undefined where the system does not say. */
function peakMb(pid) {
  try {
    return Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024;
  } catch {
    return undefined;
  }
}

function forgetPeak(pid) {
  try {
    writeFileSync(`/proc/${pid}/clear_refs`, '5');
  } catch {
    // Not Linux: the earlier peak is kept.
  }
}

/**
 * What reading a large file costs: the page's process at its peak, and how long the page itself was busy.
 * @param browser the running one
 * @param context a fresh one of it
 * @param address where the built app is served
 * @param folder where the file may lie
 * @param file its size in bytes, and whether its end is cut off
 * @returns megabytes before and at the peak, seconds until it was read, and the page's longest task, milliseconds
 */
export async function measureReading(browser, context, address, folder, { bytes, isCutOff }) {
  const text = journalText(bytes);
  const path = join(folder, isCutOff ? 'cut-off.journal.json' : 'whole.journal.json');
  writeFileSync(path, isCutOff ? text.slice(0, -1000) : text);
  const page = await context.newPage();
  await page.addInitScript(() => {
    globalThis.benchTasks = [];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) globalThis.benchTasks.push(duration);
    }).observe({ type: 'longtask' });
  });
  await page.goto(`${address}#/files`);
  const input = page.locator('files-page input[type="file"]').first();
  await input.waitFor({ state: 'attached' });
  const whole = await browser.newBrowserCDPSession();
  const { processInfo } = await whole.send('SystemInfo.getProcessInfo');
  const renderers = processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
  const peaks = () => Math.max(...renderers.map((pid) => peakMb(pid) ?? Number.NaN));
  for (const pid of renderers) forgetPeak(pid);
  const beforeMb = peaks();
  await page.evaluate(() => globalThis.benchTasks.splice(0));
  const startMs = performance.now();
  await input.setInputFiles(path);
  // What it turned out to be has buttons of its own; while it is read there is only the one that stops.
  await page.locator('file-in .notice button').filter({ hasNotText: /Stop/ }).first().waitFor({ timeout: 240_000 });
  const seconds = (performance.now() - startMs) / 1000;
  const longestMs = Math.max(0, ...(await page.evaluate(() => globalThis.benchTasks)));
  const peak = peaks();
  await page.close();
  return { beforeMb, peakMb: peak, seconds, longestMs };
}
