import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';

afterAll(leaveAll);

/** Sentences of screens, as a reader of each language sees them. */
const sentences = {
  en: ['Load a demo journal', 'How was it?', 'As the browser', 'Skip to the page'],
  de: ['Wie war es?', 'Wie der Browser', 'Ausrüstung', 'Sprache'],
};

/** All scripts that a first load fetches, as one text. */
async function scriptsOf(locale: string, path: string): Promise<string> {
  // Without a service worker, which fetches the rest for later.
  const { page, faults, leave } = await arrive(path, { locale });
  await page.waitForLoadState('networkidle');
  const addresses = await page.evaluate(() =>
    performance.getEntriesByType('resource').map(({ name }) => name.replace(/#.*/, '')),
  );
  const scripts = addresses.filter((address) => address.endsWith('.js'));
  const texts = await Promise.all(scripts.map(async (script) => (await fetch(script)).text()));
  expect(faults).toEqual([]);
  await leave();
  return texts.join('\n');
}

/** Which of the sentences are in a text. */
const found = (language: keyof typeof sentences, text: string): string[] =>
  sentences[language].filter((sentence) => text.includes(sentence));

it.each(['#/line', 'about.html'])('%s loads the texts of one language alone', async (path) => {
  const english = await scriptsOf('en-GB', path);
  expect([found('en', english), found('de', english)]).toEqual([sentences.en, []]);
  if (path === 'about.html') return; // that page is in English
  const german = await scriptsOf('de-AT', path);
  expect([found('en', german), found('de', german)]).toEqual([[], sentences.de]);
});

/** Keeps every heading of the places that the page shows, picture by picture. */
function watchPlaces(): void {
  const seen = new Set<string>();
  Object.assign(window, { seen });
  const look = (): void => {
    const places = document.querySelector('lark-app')?.shadowRoot?.querySelectorAll('nav li') ?? [];
    for (const place of places) seen.add(place.textContent?.trim() ?? '');
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
const seenPlaces = (page: Page): Promise<string[]> =>
  page.evaluate(() => [...(window as unknown as { seen: Set<string> }).seen].sort());
const fetchedTexts = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .flatMap(({ name }) => /(english|german)-[\w-]+\.js$/.exec(name)?.[1] ?? [])
      .sort(),
  );

it('changes its language without a network, and starts in it, with none of the other shown', async () => {
  const { page, context, faults, leave } = await arrive('#/kit/display', {
    before: watchPlaces,
    serviceWorkers: 'allow',
  });
  const language = page.getByLabel('Language');
  await language.waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated', undefined, {
    polling: 100,
  });
  await context.setOffline(true);
  await language.selectOption({ label: 'Deutsch' });
  await page.getByLabel('Sprache').waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('de');

  await page.reload();
  await page.getByLabel('Sprache').waitFor();
  expect(await seenPlaces(page)).toEqual(['Ausrüstung', 'Linie', 'Regal', 'Tagebuch']);
  expect(new Set(await fetchedTexts(page))).toEqual(new Set(['german']));

  // The kept choice is a copy: without it the kit still decides, before anything is shown.
  await page.evaluate(() => localStorage.removeItem('larkhold-language'));
  await page.reload();
  await page.getByLabel('Sprache').waitFor();
  expect(await seenPlaces(page)).toEqual(['Ausrüstung', 'Linie', 'Regal', 'Tagebuch']);

  await page.getByLabel('Sprache').selectOption({ label: 'English' });
  await page.getByLabel('Language').waitFor();
  await page.reload();
  await page.getByLabel('Language').waitFor();
  expect(await seenPlaces(page)).toEqual(['Journal', 'Kit', 'Line', 'Rack']);
  expect(faults).toEqual([]);
  await leave();
});
