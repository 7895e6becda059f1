import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { type FilmTruth, writeFilm } from '../fixtures/sight/write-film.ts';
import { arrive, leaveAll } from './archer.ts';
import { phase, takeProgram } from './drill-program.ts';
import { storedDrills } from './stored-rows.ts';

/**
 * The film begins with the camera, some seconds after the drill: long holds leave room for that. The first is let down after 4 s; from there on
 * drill and film go together.
 */
const FILM = { reps: [{ holdS: 4, restS: 9.4 }, { holdS: 16.5 }], firstMs: 10_800 } as const;
const PROGRAM = JSON.stringify({
  format: 'larkhold/program',
  version: 1,
  title: 'Watched holds',
  tool: 'band',
  blocks: [{ title: 'Holds', drill: 'holding', sets: 1, reps: 2, draw: 3, hold: 15, letDown: 3, rest: { seconds: 10 } }],
});
const PATIENCE = { timeout: 60_000 };
/** A minute and a half of real time, and what a busy machine adds. */
const LONG = 240_000;

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

/** Everything on the device that could be a picture. */
function keptThings(page: Page) {
  return page.evaluate(async () => {
    const binary: string[] = [];
    const look = (value: unknown, path: string): void => {
      if (value instanceof Blob || value instanceof ArrayBuffer || ArrayBuffer.isView(value)) binary.push(path);
      else if (typeof value === 'string' && value.length > 20_000) binary.push(path);
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
    return { binary, cached, local: JSON.stringify({ ...localStorage }).length };
  });
}

describe('a drill with the camera', () => {
  it(
    'logs an early let-down with no press, plays the hold back in the rest, works offline, sends nothing and keeps no picture',
    async () => {
      const { page, context, faults, leave } = await arrive('#/kit', { flags: withCamera });
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
      await takeProgram(page, PROGRAM, 'Watched holds');
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.getByText(/^The camera is on|^Let both hands/).waitFor(PATIENCE);
      await phase(page, 'Rest').waitFor(PATIENCE);

      // The last hold, in the rest, and gone with the draw that follows.
      const mirror = page.locator('lark-second-mirror canvas');
      await mirror.waitFor(PATIENCE);
      await expect
        .poll(
          () =>
            mirror.evaluate((canvas) => {
              const { width, height } = canvas as HTMLCanvasElement;
              const pixels =
                (canvas as HTMLCanvasElement).getContext('2d')?.getImageData(0, 0, width, height).data ?? [];
              return new Set(pixels).size;
            }),
          PATIENCE,
        )
        .toBeGreaterThan(60);
      await phase(page, 'Draw').waitFor(PATIENCE);
      await expect.poll(() => mirror.count(), PATIENCE).toBe(0);

      await page.getByText('How was it?').waitFor(PATIENCE);
      expect(await page.locator('video').count()).toBe(0);
      const [record] = await storedDrills(page);
      const [early, whole] = record?.reps ?? [];
      const [first] = truth.holds;
      const heldMs = (first?.toMs ?? 0) - (first?.fromMs ?? 0);
      expect(early).toMatchObject({ outcome: 'short', prescribedMs: 15_000 });
      expect(Math.abs((early?.seen?.toMs ?? 0) - (early?.seen?.fromMs ?? 0) - heldMs)).toBeLessThan(400);
      // The clock's own time ends where the let-down was seen.
      expect(early?.seen?.toMs).toBe(early?.heldMs);
      expect(whole).toMatchObject({ outcome: 'held', heldMs: 15_000 });

      const { binary, cached, local } = await keptThings(page);
      expect(binary).toEqual([]);
      expect(
        cached.filter((path) => !/\.(js|css|html|svg|png|webm|mp3|json|webmanifest|bin|wasm)$|\/$/.test(path)),
      ).toEqual([]);
      expect(cached.some((path) => path.includes('movenet-lightning'))).toBe(true);
      expect(local).toBeLessThan(2_000);
      expect(sent).toEqual([]);
      expect(faults).toEqual([]);
      await leave();
    },
    LONG,
  );

  it.each<[string, string[], string]>([
    ['refused', ['--use-fake-device-for-media-stream', '--deny-permission-prompts'], 'The camera is not allowed here.'],
    ['absent', ['--deny-permission-prompts', '--use-fake-ui-for-media-stream'], 'There is no camera here.'],
  ])(
    'goes by the clock where the camera is %s',
    async (_name, flags, words) => {
      const { page, leave } = await arrive('#/kit', { flags });
      await switchOn(page);
      await takeProgram(page, PROGRAM.replace('"reps":2', '"reps":1').replace('"hold":15', '"hold":1'), 'Watched holds');
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.getByText(words).waitFor(PATIENCE);
      await page.getByText('How was it?').waitFor(PATIENCE);
      const [record] = await storedDrills(page);
      expect(record?.reps.map(({ outcome, heldMs, seen }) => [outcome, heldMs, seen])).toEqual([
        ['held', 1_000, undefined],
      ]);
      await leave();
    },
    LONG,
  );
});

describe('without having asked for it', () => {
  it(
    'the camera is not touched, and nothing of what sees is loaded',
    async () => {
      const { page, leave } = await arrive('#/kit', { flags: withCamera });
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
      await takeProgram(page, PROGRAM.replace('"reps":2', '"reps":1').replace('"hold":15', '"hold":1'), 'Watched holds');
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.getByText('How was it?').waitFor(PATIENCE);
      expect(await page.evaluate(() => (window as unknown as { opened: number }).opened)).toBe(0);
      expect(asked.filter((url) => /sight|movenet|tfjs/.test(url))).toEqual([]);
      await leave();
    },
    LONG,
  );
});
