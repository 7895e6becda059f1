import type { Page } from 'playwright-core';

/**
 * A program file with one block of band holds.
 * @param holdSeconds how long each hold is
 * @param reps how many
 * @param title of the program
 * @param drawSeconds how long each draw is: half a second may be over before a busy machine looks
 * @returns the file's text
 */
export function holdsFile(holdSeconds: number, reps: number, title = 'Attic holds', drawSeconds = 0.5): string {
  return JSON.stringify({
    format: 'larkhold/program',
    version: 1,
    title,
    tool: 'band',
    blocks: [
      {
        title: 'Holds',
        drill: 'holding',
        sets: 1,
        reps,
        draw: drawSeconds,
        hold: holdSeconds,
        letDown: 0.5,
        rest: { seconds: 1 },
      },
    ],
  });
}

/**
 * Opens a program file in the rack and takes it for today.
 * @param page where the app is
 * @param text the file's text
 */
export async function takeProgram(page: Page, text: string, title = 'Attic holds'): Promise<void> {
  const address = page.url().split('#')[0];
  await page.goto(`${address}#/rack`);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a program file' }).click(),
  ]);
  await chooser.setFiles({ name: 'holds.drill.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page
    .locator('li', { hasText: title })
    .getByRole('button', { name: /^Use today/ })
    .click();
  await page.goto(`${address}#/line`);
  await page.getByRole('heading', { name: title }).waitFor();
  await beginButton(page).waitFor();
}

/** What begins today's drill: on a day of rest, and after a drill of the same day, it says otherwise. */
export const beginButton = (page: Page) =>
  page.getByRole('button', { name: /^(Begin|Begin again|Drill all the same)$/ });

/** The word on the glance display. */
export const phase = (page: Page, word: string) => page.locator('lark-glance').getByText(word, { exact: true }).first();
