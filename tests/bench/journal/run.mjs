// Ten years of a drill a day with 30 reps, and a squad of 30 over two years: what they cost in the engine, and in the built app in a real Chromium.
// Prints milliseconds and the ratio of the median to the aim; never fails on a time.
// Usage: npm run bench:journal [-- runs]
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, createServer, preview } from 'vite';
import { launchChromium } from '../../../scripts/browser.mjs';
import { measurePages } from './opened-pages.mjs';

const runs = Number(process.argv[2] ?? 7);
const lastDay = new Date().toISOString().slice(0, 10);
const app = fileURLToPath(new URL('../../../apps/web', import.meta.url));

const sort = (numbers) => [...numbers].sort((a, b) => a - b);
const medianOf = (numbers) => sort(numbers)[Math.floor(numbers.length / 2)];

/** The processor's time is printed beside the clock's: on a machine with other work the clock counts that work too. */
function print(title, results) {
  const busy = `${loadavg()[0]?.toFixed(1)} at work on ${availableParallelism()} processors`;
  console.log(`\n${title}, ms, ${busy}\n${''.padEnd(48)}   least  median    most     CPU     aim  median to aim`);
  for (const { name, aimMs, tookMs, cpuMs } of results) {
    const median = medianOf(tookMs);
    const figures = [sort(tookMs)[0], median, sort(tookMs).at(-1), medianOf(cpuMs)];
    const aim = aimMs === undefined ? '' : `${String(aimMs).padStart(8)}${(median / aimMs).toFixed(2).padStart(15)}`;
    console.log(`${name.padEnd(48)}${figures.map((ms) => (ms?.toFixed(0) ?? '').padStart(8)).join('')}${aim}`);
  }
}

const folder = await mkdtemp(join(tmpdir(), 'larkhold-bench-'));
const outDir = join(folder, 'app');
async function keep(name, text) {
  const path = join(folder, `${name}.json`);
  await writeFile(path, text);
  return path;
}

const loader = await createServer({
  ...{ root: app, configFile: false, logLevel: 'error', appType: 'custom' },
  optimizeDeps: { noDiscovery: true },
  server: { middlewareMode: true, hmr: false, ws: false },
  ssr: { noExternal: [/@larkhold/], resolve: { conditions: ['@larkhold/source', 'module', 'node', 'import'] } },
});
let files;
try {
  const { createParts, createFiles } = await loader.ssrLoadModule(
    fileURLToPath(new URL('./parts.ts', import.meta.url)),
  );
  const results = createParts(lastDay).map(({ name, aimMs, work }) => {
    work();
    const tookMs = [];
    const cpuMs = [];
    for (let run = 0; run < runs; run += 1) {
      const [startMs, startCpu] = [performance.now(), process.cpuUsage()];
      work();
      const { user, system } = process.cpuUsage(startCpu);
      tookMs.push(performance.now() - startMs);
      cpuMs.push((user + system) / 1000);
    }
    return { name, aimMs, tookMs, cpuMs };
  });
  print('The engine, in Node', results);
  const { phone, tablet, squad } = createFiles(lastDay);
  files = { phone: await keep('phone', phone), tablet: await keep('tablet', tablet), squad: [] };
  for (const [archer, text] of squad.entries()) files.squad.push(await keep(`archer-${archer}`, text));
} finally {
  await loader.close();
}

await build({ root: app, logLevel: 'error', build: { outDir, emptyOutDir: true } });
const server = await preview({
  root: app,
  logLevel: 'error',
  build: { outDir },
  preview: { port: 0, host: '127.0.0.1' },
});
const browser = await launchChromium();
try {
  print('The app, in Chromium', await measurePages(browser, server.resolvedUrls.local[0], files, runs));
} finally {
  await browser.close();
  await server.close();
  await rm(folder, { recursive: true });
}
