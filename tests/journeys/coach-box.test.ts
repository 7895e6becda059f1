import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchShell } from '../../scripts/browser.mjs';
import { startNginx } from '../box/nginx.ts';
import { holdsFile } from './drill-program.ts';
import { PATIENCE_MS } from './patience.ts';

const dist = fileURLToPath(new URL('../../apps/web/dist', import.meta.url));
const nginx = await startNginx(`root ${dist};`);
let browser: Browser;
beforeAll(async () => {
  browser = await launchShell();
});
afterAll(async () => {
  await browser?.close();
  await nginx?.close();
});

async function openAt(hash: string): Promise<Page> {
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 820, height: 1180 } });
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  await go(page, hash);
  return page;
}

async function go(page: Page, hash: string): Promise<void> {
  await page.goto(`${nginx?.origin}/index.html${hash}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

async function handOver(archer: Page, name: string): Promise<void> {
  await go(archer, '#/files');
  await archer.getByText('Hand over to a coach', { exact: true }).click();
  await archer.getByLabel('Your name, as you call yourself').fill(name);
  await press(archer, 'Put it into the box of Coach Ode');
  await archer.getByText('It is in the box of Coach Ode.').waitFor();
}

test('an archer hands over by the coach’s box, the coach reads it on the squad page and answers, and the archer sees the answer: no file is sent', {
  timeout: 180_000,
}, async () => {
  if (nginx === undefined) {
    console.info('There is no nginx here (apt-get install nginx-light): the journey over a host was not made.');
    return;
  }
  const coach = await openAt('#/coach');
  await coach.getByText('Your box for hand-overs').click();
  await coach.getByLabel('What archers call you').fill('Coach Ode');
  await press(coach, 'Open a box');
  await coach.getByText(/#\/coach\//).waitFor();
  const link = (await coach.locator('p.link').textContent())?.trim() ?? '';
  const hash = link.slice(link.indexOf('#'));

  const archer = await openAt('#/journal');
  await archer.getByRole('button', { name: 'Load a demo journal' }).click();
  await archer.getByText('The demo journal is in here').waitFor();
  await go(archer, hash.slice(0, -12));
  await archer.getByText('This invitation is cut off or changed.').waitFor();
  await go(archer, hash);
  await archer.getByText('Nothing goes there by itself').waitFor();
  await press(archer, 'Accept the invitation');
  await archer.getByText('Accepted. You hand over on the page for files.').waitFor();
  await handOver(archer, 'Ines');

  await press(coach, 'Look into the box');
  await coach.getByRole('row', { name: /Ines/ }).waitFor();
  // The coach's app remembers its archers.
  await coach.reload();
  await coach.getByRole('row', { name: /Ines/ }).getByRole('button').click();
  await coach.getByLabel('Your name').fill('Coach Ode');
  await coach.getByLabel('Comment').fill('Shorter holds this week.');
  const program = { name: 'short.drill.json', mimeType: 'application/json', buffer: Buffer.from(holdsFile(1, 2)) };
  await coach.locator('input[type=file][aria-label="Attach a program (.drill.json)"]').setInputFiles(program);
  await coach.getByText('With Attic holds.').waitFor();
  await press(coach, 'Put the answer into the box');
  await coach.getByText('The answer is in the box. Ines sees it').waitFor();

  // Opening the app is enough, wherever it is opened.
  await go(archer, '#/line');
  await archer.reload();
  await archer.getByRole('link', { name: 'Coach Ode has answered.' }).click();
  await press(archer, 'Read the answer');
  await archer.getByText('Shorter holds this week.').first().waitFor();
  await press(archer, 'Keep the comment on the week’s page');
  await press(archer, 'Add Attic holds to the rack');
  await archer.getByText('Attic holds is in the rack and on the line.').waitFor();
  await press(archer, 'Close');
  await go(archer, '#/week');
  await archer.getByText('Coach Ode: Shorter holds this week.').first().waitFor();
  expect(await archer.getByText('Coach Ode has answered.').count()).toBe(0);

  const files = readdirSync(join(nginx.folder, 'box'), { recursive: true, withFileTypes: true }).filter((one) =>
    one.isFile(),
  );
  expect(files.length).toBe(2);
  for (const file of files) {
    const text = file.name + readFileSync(join(file.parentPath, file.name), 'latin1');
    for (const word of ['Ines', 'Ode', 'Shorter', 'Attic', 'hand-over', 'larkhold']) expect(text).not.toContain(word);
  }

  await press(coach, 'Forget Ines');
  await expect.poll(() => coach.getByRole('row', { name: /Ines/ }).count()).toBe(0);
  await coach.reload();
  expect(await coach.getByRole('row', { name: /Ines/ }).count()).toBe(0);
  await handOver(archer, 'Ines');
  await press(archer, 'Leave Coach Ode');
  await archer.getByText('Left. What you handed over is out of the box.').waitFor();
  await press(coach, 'Look into the box');
  await expect.poll(() => coach.getByRole('row', { name: /Ines/ }).count()).toBe(0);
});
