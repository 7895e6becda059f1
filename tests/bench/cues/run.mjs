// Plays the same cues in four ways in one page of a real Chromium and prints how late each was heard.
// Usage: npm run bench:cues [-- idle blocked once slow rests]   (no names: all but the three minutes of `rests`)
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';
import { launchChromium } from '../../../scripts/browser.mjs';

const steady = (count, everyMs) => Array.from({ length: count }, (_, index) => index * everyMs + (index % 7) * 11);
const loads = {
  idle: { title: 'Idle, 300 cues', times: steady(300, 200), blockMs: 0, everyMs: 0 },
  blocked: { title: 'Main thread blocked 200 ms each second', times: steady(150, 400), blockMs: 200, everyMs: 1000 },
  once: { title: 'Main thread blocked once for 3 s', times: steady(40, 400), blockMs: 3000, everyMs: 0 },
  slow: { title: 'CPU slowed four times', times: steady(75, 400), blockMs: 0, everyMs: 0, cpuRate: 4 },
  rests: {
    title: 'A rest of 60 s and one of 120 s',
    times: [0, 400, 60_400, 60_800, 180_800, 181_200],
    blockMs: 0,
    everyMs: 0,
  },
};
const ours = 'larkhold cues';
const asked = process.argv.slice(2);
const names = asked.length > 0 ? asked : ['idle', 'blocked', 'once', 'slow'];
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
const browser = await launchChromium();
const ms = (value) => value.toFixed(value < 10 ? 2 : 0).padStart(8);
try {
  for (const name of names) {
    const { title, cpuRate, ...load } = loads[name];
    const page = await browser.newPage();
    page.on('pageerror', (error) => console.error(error.message));
    await page.goto(server.resolvedUrls.local[0]);
    await page.waitForFunction(() => globalThis.runLoad !== undefined);
    if (cpuRate)
      await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: cpuRate });
    const { scores, delayMs } = await page.evaluate((what) => globalThis.runLoad(what), load);
    await page.close();
    const best = scores.find((one) => one.name === ours);
    console.log(
      `\n${title}: ms from plan as heard, ${load.times.length} cues; the sound's own way out takes ${delayMs.toFixed(0)} ms`,
    );
    console.log(`${''.padEnd(26)}     p50     p95     p99     max  missed   drift  p99 to ours`);
    for (const one of scores) {
      const figures = [one.p50, one.p95, one.p99, one.max].map(ms).join('');
      const ratio = one === best ? '' : `${(one.p99 / best.p99).toFixed(0)}x`;
      console.log(
        `${one.name.padEnd(26)}${figures}${String(one.missed).padStart(8)}${ms(one.drift)}${ratio.padStart(13)}`,
      );
    }
  }
} finally {
  await browser.close();
  await server.close();
}
