// Films of an invented archer through a real Chromium's camera: how well and at what cost they are seen.
// Usage: npm run bench:sight [-- plain early faults ... | beside] [--slow=4]   (no names: the film `early`, and cues and memory beside; some four minutes, never five)
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { createServer } from 'vite';
import { chromiumFlags, findChromium } from '../../../scripts/find-chromium.mjs';
import { measureBeside } from './measure-beside.mjs';

const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const slow = Number(process.argv.find((word) => word.startsWith('--slow='))?.slice(7) ?? 1);
/** Without names it ends within five minutes, whatever the machine: what there is no time for is left out, and it says so. */
const endsAtMs = performance.now() + (asked.length > 0 ? 3_600_000 : 285_000);
const leftMs = () => endsAtMs - performance.now();
const root = fileURLToPath(new URL('../../..', import.meta.url));
const server = await createServer({
  root: fileURLToPath(new URL('.', import.meta.url)),
  configFile: false,
  logLevel: 'error',
  resolve: { conditions: ['@larkhold/source', 'module', 'browser', 'development|production'] },
  optimizeDeps: { include: ['@tensorflow/tfjs-core', '@tensorflow/tfjs-converter', '@tensorflow/tfjs-backend-wasm'] },
  worker: { format: 'es' },
  server: { hmr: false, port: 0, fs: { allow: [root] } },
  cacheDir: `${root}node_modules/.vite-bench-sight`,
});
await server.listen();
const { filmOf } = await server.ssrLoadModule('./films.ts');
const { writeFilm } = await server.ssrLoadModule('../../fixtures/sight/write-film.ts');
const names = (asked.length > 0 ? asked : ['early']).filter((name) => name !== 'beside');
const scripts = new Map(names.map((name) => [name, filmOf(name)]));

const folder = mkdtempSync(join(tmpdir(), 'larkhold-films-'));
const all = { start: [], end: [], known: [] };
// A browser that hangs would hang it too.
const guard = setTimeout(() => {
  console.log('\nno time left: what has not been printed was not measured');
  rmSync(folder, { recursive: true, force: true });
  process.exit(1);
}, leftMs() + 10_000);
guard.unref();
const share = (values, part) =>
  [...values].sort((a, b) => a - b)[Math.max(0, Math.ceil(values.length * part) - 1)] ?? Number.NaN;
const three = (values) =>
  `p50 ${share(values, 0.5).toFixed(0)}, p95 ${share(values, 0.95).toFixed(0)}, worst ${share(values, 1).toFixed(0)} (${values.length})`;
try {
  for (const name of names) {
    const path = join(folder, `${name}.y4m`);
    const truth = writeFilm(path, scripts.get(name));
    const browser = await chromium.launch({
      executablePath: findChromium(),
      args: [
        ...chromiumFlags,
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream',
        `--use-file-for-fake-video-capture=${path}`,
      ],
    });
    try {
      const page = await browser.newPage();
      page.on('pageerror', (error) => console.error(`  page: ${error.message}`));
      page.on('console', (message) => message.type() === 'error' && console.error(`  console: ${message.text()}`));
      await page.goto(server.resolvedUrls.local[0]);
      await page.waitForFunction('globalThis.runSight', undefined, { timeout: 120_000 });
      if (slow > 1)
        await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: slow });
      const filmMs = (truth.frameCount * 1000) / truth.fps;
      const run = await page.evaluate((input) => globalThis.runSight(input), {
        filmMs,
        fps: truth.fps,
        frameCount: truth.frameCount,
      });
      report(name, truth, run, filmMs);
    } finally {
      await browser.close();
      rmSync(path);
    }
  }
  if (asked.length === 0 || asked.includes('beside')) {
    const path = join(folder, 'beside.y4m');
    writeFilm(path, filmOf('plain'));
    await measureBeside(server.resolvedUrls.local[0], path, leftMs);
  }
  if (names.length > 0)
    console.log(
      `\nall films, ms from the truth: start ${three(all.start)}; end ${three(all.end)}; let-down known after ${three(all.known)}`,
    );
} finally {
  await server.close();
  rmSync(folder, { recursive: true });
}

/** Compares what was seen with what was true; the film begins again and again, so instants are counted within it. */
function report(name, truth, run, filmMs) {
  console.log(
    `\n${name}: ${run.trouble ?? 'seen'}; model loaded in ${run.loadMs.toFixed(0)} ms; ${(run.frames / run.seconds).toFixed(1)} frames a second, ` +
      `model ${three(run.poseMs)} ms, all ${three(run.totalMs)} ms; 5 s of replay ${(run.replayBytes / 1000).toFixed(0)} kB, first picture after ${run.firstPictureMs.toFixed(1)} ms`,
  );
  const within = (atMs) => ((atMs % filmMs) + filmMs) % filmMs;
  const near = (atMs, key) => truth.holds.find((hold) => Math.abs(hold[key] - within(atMs)) < 1500);
  for (const event of run.events) {
    if (event.type === 'drawn' || event.type === 'letDown') {
      const key = event.type === 'drawn' ? 'fromMs' : 'toMs';
      const hold = near(event.filmAtMs, key);
      const off = hold && within(event.filmAtMs) - hold[key];
      if (hold) all[event.type === 'drawn' ? 'start' : 'end'].push(Math.abs(off));
      const known = event.knownAtMs - event.atMs + (off ?? 0);
      if (hold && event.type === 'letDown') all.known.push(known);
      console.log(
        `  ${event.type.padEnd(9)} ${(within(event.filmAtMs) / 1000).toFixed(2)} s ${hold ? `off by ${off.toFixed(0)} ms, known after ${known.toFixed(0)}` : 'of no hold'}`,
      );
    } else if (event.type === 'hold') {
      const { rep } = near(event.filmAtMs, 'fromMs') ?? {};
      console.log(
        `  hold      ${JSON.stringify(rep ?? {})}: ${event.form.map(({ part, cm }) => `${part} ${cm.toFixed(1)} cm`).join(', ') || 'nothing moved'}`,
      );
    } else {
      console.log(
        `  ${event.type.padEnd(9)} ${(within(event.filmAtMs) / 1000).toFixed(2)} s ${event.reason ?? event.fullDrawTorsos?.toFixed(2) ?? ''}`,
      );
    }
  }
}
