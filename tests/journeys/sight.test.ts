import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { type FilmTruth, writeFilm } from '../fixtures/sight/write-film.ts';
import { arrive, leaveAll } from './archer.ts';
import { takeProgram } from './drill-program.ts';
import { storedDrills } from './stored-rows.ts';

/**
 * The camera's film: hands hang, then one hold of 5 s; then it begins again. It starts with the camera, as a drill's getting ready of ten
 * seconds does: the hold begins in the drill's first draw, or, where a busy machine takes long to load what sees, in the hold that follows.
 */
const FILM = { reps: [{ holdS: 5 }], firstMs: 7_500, fps: 10 } as const;
/** Long enough for fourteen rounds of the film: a machine too busy to see one let-down sees one of the next. Only then it takes as long. */
const EARLY_MS = 180_000;
const block = (hold: number) => ({ title: 'Holds', drill: 'holding', sets: 1, reps: 1, hold, letDown: 1 });
const program = (...blocks: object[]) =>
  JSON.stringify({ format: 'larkhold/program', version: 1, title: 'Watched holds', tool: 'band', blocks });
const WATCHED = program(
  { ...block(EARLY_MS / 1_000), draw: 3, rest: { seconds: 8 }, setRest: 8 },
  { ...block(0.5), draw: 0.5, rest: { seconds: 0 } },
);
const SHORT = program({ ...block(1), draw: 0.5, rest: { seconds: 0 } });
const PATIENCE = { timeout: EARLY_MS + 60_000 };
/** Three quarters of a minute of real time, and what a busy machine adds. */
const LONG = 700_000;

const folder = mkdtempSync(join(tmpdir(), 'larkhold-sight-'));
const film = join(folder, 'drill.y4m');
const truth: FilmTruth = writeFilm(film, FILM);

const withCamera = [
  '--use-fake-ui-for-media-stream',
  '--use-fake-device-for-media-stream',
  `--use-file-for-fake-video-capture=${film}`,
];

afterAll(async () => {
  await leaveAll();
  rmSync(folder, { recursive: true });
});

const kept = (page: Page) =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated', undefined, { polling: 100 });

async function switchOn(page: Page): Promise<void> {
  await page.getByRole('checkbox', { name: 'Use the camera in drills' }).check();
  await page.getByRole('button', { name: 'Set up the camera' }).waitFor();
}

/** Writes down, as each rest ends, how many second mirrors there still are: a look from outside may come when the draw is over. */
function countMirrorsAfterRests(page: Page): Promise<void> {
  return page.evaluate(() => {
    const afterRests: number[] = [];
    Object.assign(window, { afterRests });
    const mirrorsIn = (root: Document | ShadowRoot): number =>
      [...root.querySelectorAll('*')].reduce(
        (sum, one) =>
          sum + (one.localName === 'lark-second-mirror' ? 1 : one.shadowRoot ? mirrorsIn(one.shadowRoot) : 0),
        0,
      );
    let before = '';
    addEventListener('lark-change', (event) => {
      const { step } = (event.composedPath()[0] as HTMLElement & { view: { step?: { kind: string } } }).view;
      const kind = step?.kind ?? 'end';
      if (before === 'setRest' && kind !== 'setRest')
        requestAnimationFrame(() => requestAnimationFrame(() => afterRests.push(mirrorsIn(document))));
      before = kind;
    });
  });
}

/** Everything on the device that could hold a picture: bytes and long texts in databases and lists, and what is cached. */
function keptThings(page: Page) {
  return page.evaluate(async () => {
    const large: string[] = [];
    const look = (value: unknown, path: string): void => {
      if (value instanceof Blob || value instanceof ArrayBuffer || ArrayBuffer.isView(value)) large.push(path);
      else if (typeof value === 'string' && value.length > 20_000) large.push(path);
      else if (typeof value === 'object' && value !== null)
        for (const [key, inner] of Object.entries(value)) look(inner, `${path}.${key}`);
    };
    for (const { name = '' } of await indexedDB.databases()) {
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      for (const table of database.objectStoreNames) {
        const rows = await new Promise<unknown[]>((resolve, reject) => {
          const reading = database.transaction(table).objectStore(table).getAll();
          reading.onsuccess = () => resolve(reading.result);
          reading.onerror = () => reject(reading.error);
        });
        look(rows, `${name}/${table}`);
      }
      database.close();
    }
    const cached: string[] = [];
    for (const name of await caches.keys()) {
      for (const { url } of await (await caches.open(name)).keys()) cached.push(new URL(url).pathname);
    }
    const files: string[] = [];
    for await (const name of (await navigator.storage.getDirectory()).keys()) files.push(name);
    return { large, cached, files, local: JSON.stringify({ ...localStorage }).length };
  });
}

/** The scripts that a page loads before anybody asks for anything: its own, and whatever these import. */
function loadedAtOnce(built: string): string[] {
  const files: string[] = [];
  const follow = (name: string): void => {
    if (files.includes(name)) return;
    files.push(name);
    const text = readFileSync(join(built, name), 'utf8');
    for (const [, path = ''] of text.matchAll(/(?:from|import)\s*"(\.\/[^"]+\.js)"/g)) follow(join('assets', path));
  };
  const page = readFileSync(join(built, 'index.html'), 'utf8');
  for (const [, path = ''] of page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)) follow(path);
  return files;
}

it('is not a byte of what every archer loads: neither at once nor for later', () => {
  const built = join(fileURLToPath(new URL('../../apps/web', import.meta.url)), process.env.LARKHOLD_BUILT ?? 'dist');
  const atOnce = loadedAtOnce(built);
  expect(atOnce.length).toBeGreaterThan(3);
  const sight = /createHoldWitness|lark-second-mirror|VideoEncoder|movenet|tfjs|WASM_HAS_SIMD/;
  expect(atOnce.filter((name) => sight.test(readFileSync(join(built, name), 'utf8')))).toEqual([]);
  // What the service worker keeps for everybody.
  const kept = readFileSync(join(built, 'sw.js'), 'utf8');
  const names = [...kept.matchAll(/"?url"?:\s*"([^"]+)"/g)].map(([, name = '']) => name);
  expect(names.length).toBeGreaterThan(20);
  expect(names.filter((name) => /sight|movenet|tfjs|\.wasm|\.bin/.test(name))).toEqual([]);
});

describe.concurrent('a drill with the camera', () => {
  it(
    'logs an early let-down with no press, plays the hold back in the rest, works offline, sends nothing and keeps no picture',
    async ({ expect }) => {
      const { page, context, faults, leave } = await arrive('#/kit/camera', {
        flags: withCamera,
        whole: true,
        serviceWorkers: 'allow',
      });
      const sent: string[] = [];
      page.on('request', (request) => {
        if (request.method() !== 'GET' || request.postData() !== null)
          sent.push(`${request.method()} ${request.url()}`);
      });
      await kept(page);
      await switchOn(page);
      await page.getByRole('button', { name: 'Set up the camera' }).click();
      await page.getByText('Full draw is seen.').waitFor(PATIENCE);
      await page.getByRole('button', { name: 'Done', exact: true }).click();
      expect(await page.locator('video').count()).toBe(0);

      await context.setOffline(true);
      await page.reload();
      await takeProgram(page, WATCHED, 'Watched holds');
      await countMirrorsAfterRests(page);
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.getByText('The camera is on.').waitFor(PATIENCE);

      // The last hold, in the rest, and gone with the draw that follows.
      const mirror = page.locator('lark-second-mirror canvas');
      await mirror.waitFor(PATIENCE);
      await expect
        .poll(
          () =>
            mirror.evaluate((canvas) => {
              const { width, height } = canvas as HTMLCanvasElement;
              const context = (canvas as HTMLCanvasElement).getContext('2d');
              return new Set(context?.getImageData(0, 0, width, height).data).size;
            }),
          PATIENCE,
        )
        .toBeGreaterThan(60);
      await page.getByText('How was it?').waitFor(PATIENCE);
      expect(await page.evaluate(() => (window as unknown as { afterRests: number[] }).afterRests)).toEqual([0]);
      expect(await page.locator('video').count()).toBe(0);
      const [record] = await storedDrills(page);
      const [early, whole] = record?.reps ?? [];
      const [hold] = truth.holds;
      const trueMs = (hold?.toMs ?? 0) - (hold?.fromMs ?? 0);
      expect(early).toMatchObject({ outcome: 'short', prescribedMs: EARLY_MS });
      const { fromMs = 0, toMs = 0 } = early?.seen ?? {};
      expect(Math.abs(toMs - fromMs - trueMs)).toBeLessThan(1_000);
      // The clock's own time ends where the let-down was seen, rounded the other way.
      expect(Math.abs(toMs - (early?.heldMs ?? 0))).toBeLessThanOrEqual(1);
      expect(whole).toMatchObject({ outcome: 'held', heldMs: 500 });

      const { large, cached, files, local } = await keptThings(page);
      expect(large).toEqual([]);
      expect(files).toEqual([]);
      const own = /\.(js|css|html|svg|png|webm|mp3|json|webmanifest|bin|wasm)$|\/$/;
      expect(cached.filter((path) => !own.test(path))).toEqual([]);
      expect(cached.some((path) => path.includes('movenet-lightning'))).toBe(true);
      expect(local).toBeLessThan(2_000);
      expect(sent).toEqual([]);
      expect(faults).toEqual([]);
      await leave();
    },
    LONG,
  );

  it.for<[string, string[], string]>([
    ['refused', ['--use-fake-device-for-media-stream', '--deny-permission-prompts'], 'The camera is not allowed here.'],
    ['absent', ['--deny-permission-prompts', '--use-fake-ui-for-media-stream'], 'There is no camera here.'],
  ])('goes by the clock where the camera is %s', { timeout: LONG }, async ([, flags, words], { expect }) => {
    const { page, leave } = await arrive('#/kit/camera', { flags, whole: true });
    await switchOn(page);
    await takeProgram(page, SHORT, 'Watched holds');
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.getByText(words).waitFor(PATIENCE);
    await page.getByText('How was it?').waitFor(PATIENCE);
    const [record] = await storedDrills(page);
    expect(record?.reps.map(({ outcome, heldMs, seen }) => [outcome, heldMs, seen])).toEqual([
      ['held', 1_000, undefined],
    ]);
    await leave();
  });

  it(
    'is not one where nobody asked for it: the camera is not touched, and nothing of what sees is loaded',
    async ({ expect }) => {
      const { page, leave } = await arrive('#/kit/camera', { flags: withCamera.slice(0, 2), whole: true });
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      await page.evaluate(() => {
        const { mediaDevices } = navigator;
        Object.assign(window, { opened: 0 });
        const open = mediaDevices.getUserMedia.bind(mediaDevices);
        mediaDevices.getUserMedia = (wanted) => {
          Object.assign(window, { opened: 1 });
          return open(wanted);
        };
      });
      await takeProgram(page, SHORT, 'Watched holds');
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.getByText('How was it?').waitFor(PATIENCE);
      expect(await page.evaluate(() => (window as unknown as { opened: number }).opened)).toBe(0);
      expect(asked.filter((url) => /sight|movenet|tfjs/.test(url))).toEqual([]);
      await leave();
    },
    LONG,
  );
});
