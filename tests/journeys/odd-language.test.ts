import { builtInPrograms } from '@larkhold/engine';
import { afterAll, describe, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { everyPage, goTo, unfold } from './every-page.ts';

afterAll(leaveAll);

// "C" is what a browser on a bare Linux machine gives; the others are no tags of BCP 47, or odd ones.
const languages = ['C', '', 'en_US.UTF-8', 'x', 'de-', 'tlh-Latn-x-klingon', 'en-US-u-nu-arab', '🏹'];

describe.concurrent('a browser whose language is odd', () => {
  it.each(languages)('%o: every page is drawn, and nothing fails', async (language) => {
    const { page, context, faults, leave } = await arrive('about.html');
    await context.addInitScript((tag) => {
      Object.defineProperty(Navigator.prototype, 'language', { get: () => tag, configurable: true });
      Object.defineProperty(Navigator.prototype, 'languages', { get: () => [tag], configurable: true });
    }, language);
    await page.goto(page.url().replace('about.html', '#/journal'));
    await page.getByRole('button', { name: 'Load a demo journal' }).click();
    await page.locator('lark-drill-entry').first().waitFor();
    for (const hash of everyPage) {
      await goTo(page, hash, { id: builtInPrograms[0]?.id ?? '', drill: 'none' });
      await unfold(page, 1);
      expect([hash, await page.locator('.undrawn').count()]).toEqual([hash, 0]);
    }
    await page.goto(`${page.url().split('#')[0]}#/trends`);
    await page.locator('.u-over').first().waitFor();
    expect(faults).toEqual([]);
    await leave();
  });
});
