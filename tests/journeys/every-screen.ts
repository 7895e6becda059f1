import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { builtInPrograms, createDemoJournal, createHandOver, formatHandOver } from '@larkhold/engine';
import type { Page } from 'playwright-core';
import { holdsFile } from './drill-program.ts';
import { everyPage, goTo } from './every-page.ts';
import { tabAndPress } from './keyboard.ts';
import { storedDrills } from './stored-rows.ts';

/** The app in one state, and the way there. */
export interface Screen {
  name: string;
  reach(page: Page): Promise<void>;
}

/** An invented archer's months, handed over to a coach. */
export const handOverFile = formatHandOver(
  createHandOver({
    ...{ archerId: 'a', archer: 'Ines', from: '2026-01-05', to: '2026-02-01', madeAt: '2026-02-01T18:00:00Z' },
    journal: createDemoJournal({ endDay: '2026-02-01', programs: builtInPrograms }),
  }),
);

async function giveToRack(page: Page, file: string | { name: string; mimeType: string; buffer: Buffer }) {
  await goTo(page, '#/rack', demoIds);
  await page.locator('lark-rack input[type=file]').first().setInputFiles(file);
  await page.getByRole('dialog').waitFor();
}

/** A built-in program, and the last drill of the demo journal once it is loaded. */
export const demoIds = { id: builtInPrograms[0]?.id ?? '', drill: 'none' };

const broken = fileURLToPath(new URL('../fixtures/journeys/broken.drill.json', import.meta.url));
const like = holdsFile(3, 2, builtInPrograms[0]?.title);

/** Everything that can be reached without a drill. */
export const stillScreens: readonly Screen[] = [
  ...everyPage.map((hash) => ({ name: hash, reach: (page: Page) => goTo(page, hash, demoIds) })),
  {
    name: 'a program from a link',
    reach: async (page) => {
      await goTo(page, `#/open/${deflateRawSync(holdsFile(3, 2)).toString('base64url')}`, demoIds);
      await page.getByRole('heading', { name: 'Attic holds' }).waitFor();
    },
  },
  { name: 'the answer to a broken file', reach: (page) => giveToRack(page, broken) },
  {
    name: 'the question about a like program',
    reach: (page) =>
      giveToRack(page, { name: 'like.drill.json', mimeType: 'application/json', buffer: Buffer.from(like) }),
  },
  {
    name: 'a hand-over at the coach',
    reach: async (page) => {
      await goTo(page, '#/coach', demoIds);
      const file = { name: 'ines.json', mimeType: 'application/json', buffer: Buffer.from(handOverFile) };
      await page.locator('input[type=file][aria-label="Open hand-overs"]').setInputFiles(file);
      await page.getByRole('row', { name: /Ines/ }).waitFor();
    },
  },
  {
    name: 'kit, learning a key',
    reach: async (page) => {
      await goTo(page, '#/kit/controls', demoIds);
      await page.getByRole('button', { name: 'Learn' }).first().click();
      await page.getByText(/^Press the key or pedal now/).waitFor();
    },
  },
  {
    name: 'the bench with a mistake',
    reach: async (page) => {
      await goTo(page, '#/bench/new', demoIds);
      await page.locator('#field-blocks-0-reps').fill('0');
      await page.locator('.problem').first().waitFor();
    },
  },
];

/** Loads the demo journal into a fresh profile. */
export async function loadDemo(page: Page, way: 'by pointer' | 'by keyboard' = 'by pointer'): Promise<void> {
  await goTo(page, '#/kit/stored', demoIds);
  if (way === 'by keyboard') await tabAndPress(page, 'Load a demo journal');
  else await page.getByRole('button', { name: 'Load a demo journal' }).click();
  await page.getByRole('button', { name: 'Remove the demo journal' }).waitFor();
  demoIds.drill = (await storedDrills(page)).at(-1)?.id ?? '';
}
