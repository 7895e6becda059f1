import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { chromiumFlags, findChromium } from '../../scripts/find-chromium.mjs';
import { startNginx } from '../box/nginx.ts';

const dist = fileURLToPath(new URL('../../apps/web/dist', import.meta.url));
const nginx = await startNginx(`root ${dist};`);
let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: findChromium(), args: chromiumFlags });
});
afterAll(async () => {
  await browser?.close();
  await nginx?.close();
});

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

async function openAt(hash: string): Promise<Page> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(`${nginx?.origin}/index.html${hash}`);
  return page;
}

async function write(page: Page, note: string, day: string): Promise<void> {
  await page.evaluate(
    ([date, words]) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('larkhold');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const transaction = request.result.transaction('days', 'readwrite');
          transaction.objectStore('days').put({ date, note: words, editedAt: new Date().toISOString() }, date);
          transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    [day, note] as const,
  );
  await page.reload();
}

test('a phone and a laptop are paired over nginx and end with one journal, and the host’s disk holds nothing that can be read', async () => {
  if (nginx === undefined) {
    console.info('There is no nginx here (apt-get install nginx-light): the journey over a host was not made.');
    return;
  }
  const phone = await openAt('#/box');
  await phone.getByRole('heading', { name: 'All my devices' }).waitFor();
  await write(phone, 'the hall at the mill', '2026-11-24');
  await phone.getByLabel('What do you call this device?').fill('Phone');
  await press(phone, 'Make a box on this host');
  await phone.getByText('The box is made.').waitFor();
  await press(phone, 'Pair another device');
  const link = (await phone.locator('p.link').textContent())?.trim() ?? '';
  expect(link).toContain('#/box/');

  const laptop = await openAt(link.slice(link.indexOf('#')));
  await write(laptop, 'review by the window', '2026-11-23');
  await laptop.getByText('merged into what is here').waitFor();
  await laptop.getByLabel('What do you call this device?').fill('Laptop');
  await press(laptop, 'Pair this device');
  await laptop.getByText(/Paired\. Here are now 0 drills, 2 days/).waitFor();
  await press(phone, 'Meet now');
  await phone.getByText('News of Laptop came in.').waitFor();
  for (const page of [phone, laptop]) {
    await page.goto(`${nginx.origin}/index.html#/week/2026-W48/2026-11-24`);
    await page.getByText('the hall at the mill').or(page.locator('textarea')).first().waitFor();
  }

  const files = readdirSync(join(nginx.folder, 'box'), { recursive: true, withFileTypes: true }).filter((one) =>
    one.isFile(),
  );
  expect(files.length).toBeGreaterThanOrEqual(2);
  const secret = /#\/box\/([^.]+)/.exec(link)?.[1] ?? 'none';
  for (const file of files) {
    const text = readFileSync(join(file.parentPath, file.name), 'latin1');
    expect(text).toMatch(/^age-encryption\.org\/v1/);
    for (const word of ['mill', 'window', 'note', '2026-11-2', 'Phone', 'Laptop', secret])
      expect(text).not.toContain(word);
  }
}, 120_000);
