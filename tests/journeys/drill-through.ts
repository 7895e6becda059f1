import type { Page } from 'playwright-core';
import { beginButton } from './drill-program.ts';

/**
 * Begins today's drill with one press, lets it run to its end in real time, and says nothing about it.
 * @param page on the line
 */
export async function drillThrough(page: Page): Promise<void> {
  await beginButton(page).waitFor();
  await page.keyboard.press('Space');
  await page.getByText('How was it?').waitFor();
  await page.getByRole('button', { name: 'Skip', exact: true }).click();
  await page.getByText('How was it?').waitFor({ state: 'detached' });
}
