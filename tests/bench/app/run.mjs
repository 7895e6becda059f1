// What the built app costs in a real Chromium, over a new journal, three years and 20,000 drills, at full speed and with the CPU slowed four
// times: from a cold start to the first picture and to a line that can begin, the longest tasks on the way, the main thread's share of a core
// in a rest, a hold and a pause, and the heap; and what a file of 53 MB costs to read. Prints; never fails on a time.
// Usage: npm run bench:app [-- new|years|many ... start|drill|file ...]
import { mkdtemp, rm } from 'node:fs/promises';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';
import { launchChromium } from '../../../scripts/browser.mjs';
import { fillJournal, letFold } from './fill-journal.mjs';
import { measureDrill } from './measure-drill.mjs';
import { measureReading } from './measure-reading.mjs';
import { measureStart } from './measure-start.mjs';

const journals = { new: 0, years: 3 * 365, many: 20_000 };
const asked = process.argv.slice(2).filter((name) => name in journals);
const names = asked.length > 0 ? asked : Object.keys(journals);
const parts = ['start', 'drill', 'file'].filter((part) => process.argv.includes(part));
const isWanted = (part) => parts.length === 0 || parts.includes(part);
const rates = [1, 4];
const app = fileURLToPath(new URL('../../../apps/web', import.meta.url));
const folder = await mkdtemp(join(tmpdir(), 'larkhold-bench-app-'));

await build({ root: app, logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
const server = await preview({
  root: app,
  logLevel: 'error',
  build: { outDir: folder },
  preview: { port: 0, host: '127.0.0.1' },
});
const address = server.resolvedUrls.local[0];
const browser = await launchChromium();
const row = (cells) =>
  console.log(cells.map((cell, place) => (place === 0 ? String(cell).padEnd(22) : String(cell).padStart(12))).join(''));
try {
  if (isWanted('start')) await measureStarts();
  if (isWanted('drill')) await measureDrills();
  if (isWanted('file')) await measureFiles();
} finally {
  await browser.close();
  await server.close();
  await rm(folder, { recursive: true, force: true });
}

function load() {
  return `${loadavg()[0]?.toFixed(1)} at work on ${availableParallelism()} processors`;
}

async function measureStarts() {
  console.log(`\nStart, from nothing; ms (${load()})`);
  console.log("busy and longest are the main thread's own time, which other work on the machine does not lengthen");
  console.log('unfolded: as after an import, and before: no past was kept for this start');
  row(['journal, CPU', 'first draw', 'can begin', 'busy', 'longest', 'over 50', 'settled', 'heap, MB']);
  for (const name of names) {
    for (const rate of rates) {
      const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: 'en-GB' });
      await fillJournal(context, address, journals[name]);
      const isLong = journals[name] > 500;
      if (isLong) await measureOne(context, `${name}, 1/${rate}, unfolded`, rate);
      if (isLong) await letFold(context, address);
      await measureOne(context, `${name}, 1/${rate}`, rate);
      await context.close();
    }
  }
}

async function measureOne(context, title, rate) {
  const start = await measureStart(browser, context, address, rate);
  const { firstDrawMs, canBeginMs, busyMs, longestMs, longSumMs, settledMs, heapMb } = start;
  row([
    title,
    ...[firstDrawMs, canBeginMs, busyMs, longestMs, longSumMs, settledMs, heapMb].map((one) => one.toFixed(0)),
  ]);
}

async function measureDrills() {
  console.log(`\nA drill; the main thread's share of a core, % (${load()})`);
  row(['journal, CPU', 'draw', 'pictures/s', 'of empty', 'hold', 'rest', 'pause', 'whole rest', 'whole pause']);
  for (const name of names) {
    for (const rate of rates) {
      const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: 'en-GB' });
      await fillJournal(context, address, journals[name]);
      const shares = await measureDrill(browser, context, address, rate);
      row([`${name}, 1/${rate}`, ...shares.map((one) => one.toFixed(2))]);
      await context.close();
    }
  }
}

async function measureFiles() {
  console.log(`\nA file of 53 MB, read; memory of the page's process, MB (${load()})`);
  row(['file', 'before', 'at its peak', 'seconds', 'longest, ms']);
  for (const isCutOff of [true, false]) {
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: 'en-GB' });
    const read = await measureReading(browser, context, address, folder, { bytes: 53e6, isCutOff });
    const { beforeMb, peakMb, seconds, longestMs } = read;
    row([
      isCutOff ? 'its end cut off' : 'whole',
      ...[beforeMb, peakMb, seconds, longestMs].map((one) => one.toFixed(one < 100 ? 1 : 0)),
    ]);
    await context.close();
  }
}
