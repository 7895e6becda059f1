import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { writeFilm } from '../fixtures/sight/write-film.ts';
import { arrive, leaveAll } from './archer.ts';
import { takeProgram } from './drill-program.ts';
import { storedDrills } from './stored-rows.ts';

/**
 * The film begins with the camera, some seconds after the drill, and what sees takes its time to load on a busy machine: the drill's beginning is
 * put off, and its holds are long. The first is let down after 4 s; from there on drill and film go together.
 */
const FILM = { reps: [{ holdS: 4, restS: 9.4 }, { holdS: 22 }], firstMs: 40_000 } as const;
const PROGRAM = JSON.stringify({
  format: 'larkhold/program',
  version: 1,
  title: 'Watched holds',
  tool: 'band',
  blocks: [
    { title: 'Holds', drill: 'holding', sets: 1, reps: 2, draw: 3, hold: 20, letDown: 3, rest: { seconds: 10 } },
  ],
});
const PATIENCE = { timeout: 60_000 };
/** A minute and a half of real time, and what a busy machine adds. */
const LONG = 240_000;

const folder = mkdtempSync(join(tmpdir(), 'larkhold-sight-'));
const film = join(folder, 'drill.y4m');
writeFilm(film, FILM);

const withCamera = [
  '--use-fake-ui-for-media-stream',
  '--use-fake-device-for-media-stream',
  `--use-file-for-fake-video-capture=${film}`,
];

afterAll(async () => {
  await leaveAll();
  rmSync(folder, { recursive: true });
});

async function switchOn(page: Page): Promise<void> {
  await page.getByRole('checkbox', { name: 'Use the camera in drills' }).check();
  await page.getByRole('button', { name: 'Set up the camera' }).waitFor();
}

describe('a drill with the camera', () => {
  it.each<[string, string[], string]>([
    ['refused', ['--use-fake-device-for-media-stream', '--deny-permission-prompts'], 'The camera is not allowed here.'],
    ['absent', ['--deny-permission-prompts', '--use-fake-ui-for-media-stream'], 'There is no camera here.'],
  ])(
    'goes by the clock where the camera is %s',
    async (_name, flags, words) => {
      const { page, leave } = await arrive('#/kit', { flags });
      await switchOn(page);
      await takeProgram(
        page,
        PROGRAM.replace('"reps":2', '"reps":1').replace('"hold":20', '"hold":1'),
        'Watched holds',
      );
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
      await takeProgram(
        page,
        PROGRAM.replace('"reps":2', '"reps":1').replace('"hold":20', '"hold":1'),
        'Watched holds',
      );
      await page.getByRole('button', { name: 'Begin' }).click();
      await page.getByText('How was it?').waitFor(PATIENCE);
      expect(await page.evaluate(() => (window as unknown as { opened: number }).opened)).toBe(0);
      expect(asked.filter((url) => /sight|movenet|tfjs/.test(url))).toEqual([]);
      await leave();
    },
    LONG,
  );
});
