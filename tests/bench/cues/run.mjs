// Plays the same cues in four ways in one page of a real Chromium and prints how late each was heard.
// Usage: npm run bench:cues [-- idle blocked once slow hidden rests hiddenRests long]   (no names: the first six, some eight minutes)
import { loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';
import { launchWithTabs, openTab } from './raw-tabs.mjs';

const steady = (count, everyMs) => Array.from({ length: count }, (_, index) => index * everyMs + (index % 7) * 11);
const restTimes = [0, 400, 60_400, 60_800, 180_800, 181_200];
const loads = {
  idle: { title: 'Idle, 300 cues', times: steady(300, 200), blockMs: 0, everyMs: 0 },
  blocked: { title: 'Main thread blocked 200 ms each second', times: steady(150, 400), blockMs: 200, everyMs: 1000 },
  once: { title: 'Main thread blocked once for 3 s', times: steady(40, 400), blockMs: 3000, everyMs: 0 },
  slow: { title: 'CPU slowed four times', times: steady(75, 400), blockMs: 0, everyMs: 0, cpuRate: 4 },
  hidden: { title: 'Hidden silent page', times: steady(150, 400), blockMs: 0, everyMs: 0, isHidden: true },
  rests: { title: 'A rest of 60 s and one of 120 s', times: restTimes, blockMs: 0, everyMs: 0 },
  hiddenRests: {
    ...{ title: 'The same rests in a hidden silent page', times: restTimes, blockMs: 0, everyMs: 0, isHidden: true },
  },
  // After five minutes a hidden silent page gets its own timers once a minute.
  long: {
    title: 'Hidden silent page for seven minutes',
    times: steady(42, 10_000),
    blockMs: 0,
    everyMs: 0,
    isHidden: true,
  },
};
const ours = 'larkhold cues';
const asked = process.argv.slice(2);
const names = asked.length > 0 ? asked : ['idle', 'blocked', 'once', 'slow', 'hidden', 'rests'];
for (const name of names)
  if (!(name in loads)) throw new RangeError(`there is no load "${name}"; there are ${Object.keys(loads)}`);

const server = await createServer({
  root: fileURLToPath(new URL('.', import.meta.url)),
  configFile: false,
  logLevel: 'error',
  resolve: { conditions: ['@larkhold/source', 'module', 'browser', 'development|production'] },
  optimizeDeps: { include: ['howler', 'tone'] },
  server: { hmr: false, port: 0, fs: { allow: [fileURLToPath(new URL('../../..', import.meta.url))] } },
  cacheDir: fileURLToPath(new URL('../../../node_modules/.vite-bench', import.meta.url)),
});
await server.listen();
const browser = await launchWithTabs();
// A cue that was missed has no time.
const ms = (value) => (value === null ? 'none' : value.toFixed(value < 10 ? 2 : 0)).padStart(8);
try {
  for (const name of names) {
    const { title, cpuRate, isHidden = false, ...load } = loads[name];
    const tab = await openTab(browser, server.resolvedUrls.local[0]);
    await tab.evaluate(`new Promise((resolve) => {
      const look = () => (globalThis.runLoad ? resolve() : setTimeout(look, 50));
      look();
    })`);
    if (cpuRate) await tab.send('Emulation.setCPUThrottlingRate', { rate: cpuRate });
    if (isHidden) await tab.hide();
    const { scores, delayMs, visibility } = await tab.evaluate(
      `globalThis.runLoad(${JSON.stringify({ ...load, isSilent: isHidden })})`,
    );
    await tab.close();
    if (isHidden !== (visibility === 'hidden')) throw new Error(`the page was ${visibility}`);
    const best = scores.find((one) => one.name === ours);
    console.log(
      `\n${title}: ms from plan as heard, ${load.times.length} cues; the sound's own way out takes ${delayMs.toFixed(0)} ms (load ${loadavg()[0].toFixed(1)})`,
    );
    console.log(`${''.padEnd(26)}     p50     p95     p99     max   first  missed   drift  p99 to ours`);
    for (const one of scores) {
      const figures = [one.p50, one.p95, one.p99, one.max, one.first].map(ms).join('');
      const ratio = one === best ? '' : `${(one.p99 / best.p99).toFixed(1)}x`;
      console.log(
        `${one.name.padEnd(26)}${figures}${String(one.missed).padStart(8)}${ms(one.drift)}${ratio.padStart(13)}`,
      );
    }
  }
} finally {
  await browser.close();
  await server.close();
}
