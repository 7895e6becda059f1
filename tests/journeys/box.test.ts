import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchShell } from '../../scripts/browser.mjs';
import { startNginx, type TrialNginx } from '../box/nginx.ts';
import { holdsFile } from './drill-program.ts';
import { openFirefox, until } from './firefox.ts';
import { PATIENCE_MS } from './patience.ts';
import { storedDrills } from './stored-rows.ts';

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

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const DAY = '2026-11-24';
const dayHash = `#/week/2026-W48/${DAY}`;

/** One line where there is no nginx; all else is the same. */
function journey(name: string, walk: (host: TrialNginx) => Promise<void>): void {
  test(name, async () => {
    if (nginx === undefined)
      console.info('There is no nginx here (apt-get install nginx-light): the journey over a host was not made.');
    else await walk(nginx);
  });
}

async function openAt(hash: string): Promise<Page> {
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 820, height: 1180 } });
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  await page.goto(`${nginx?.origin}/index.html${hash}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}

async function go(page: Page, hash: string): Promise<void> {
  await page.goto(`${nginx?.origin}/index.html${hash}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

/** Makes a box. @returns the pairing link's end */
async function makeBox(page: Page, title: string): Promise<string> {
  await go(page, '#/box');
  await page.getByLabel('What do you call this device?').fill(title);
  await press(page, 'Make a box on this host');
  await page.getByText('The box is made.').waitFor();
  await press(page, 'Pair another device');
  const link = (await page.locator('p.link').textContent())?.trim() ?? '';
  expect(link).toContain('#/box/');
  return link.slice(link.indexOf('#'));
}

async function pair(page: Page, hash: string, title: string): Promise<void> {
  await go(page, hash);
  await page.getByText('merged into what is here').waitFor();
  await page.getByLabel('What do you call this device?').fill(title);
  await press(page, 'Pair this device');
  await page.getByText('Paired. This is what is here now:').waitFor();
}

async function meet(page: Page): Promise<void> {
  await go(page, '#/box');
  await press(page, 'Meet now');
  await page.getByRole('button', { name: 'Meet now', disabled: false }).waitFor();
}

/** A pedal for letting down, and quiet hours. */
async function learnPedal(page: Page): Promise<void> {
  await go(page, '#/kit/controls');
  await page.locator('lark-learn', { hasText: 'Let down now' }).getByRole('button', { name: 'Learn' }).click();
  await page.keyboard.press('F9');
  await go(page, '#/kit/sound');
  await page.getByRole('checkbox', { name: /Quiet hours/ }).check();
}

async function expectPedal(page: Page, isThere: boolean): Promise<void> {
  await go(page, '#/kit/sound');
  expect(await page.getByRole('checkbox', { name: /Quiet hours/ }).isChecked()).toBe(isThere);
  await go(page, '#/kit/controls');
  const learn = page.locator('lark-learn', { hasText: 'Let down now' });
  await learn.getByRole('button', { name: 'Learn' }).waitFor();
  expect(await learn.getByText('F9').count()).toBe(isThere ? 1 : 0);
}

/** Looks through all that lies on the host's disk. */
function expectSealed({ folder }: TrialNginx, hash: string, words: readonly string[]): void {
  const files = readdirSync(join(folder, 'box'), { recursive: true, withFileTypes: true }).filter((one) =>
    one.isFile(),
  );
  expect(files.length).toBeGreaterThan(0);
  const secret = /#\/box\/([^.]+)/.exec(hash)?.[1] ?? 'none';
  for (const file of files) {
    const text = readFileSync(join(file.parentPath, file.name), 'latin1');
    expect(text).toMatch(/^age-encryption\.org\/v1/);
    for (const word of [...words, 'larkhold', 'editedAt', DAY, secret]) expect(file.name + text).not.toContain(word);
  }
}

journey(
  'a phone and a laptop are paired over nginx and end with one journal, and the host’s disk holds nothing that can be read',
  async (host) => {
    const phone = await openAt(dayHash);
    await phone.getByLabel('Note', { exact: true }).fill('the hall at the mill');
    const hash = await makeBox(phone, 'Phone');
    const laptop = await openAt('#/week/2026-W48/2026-11-23');
    await laptop.getByLabel('Note', { exact: true }).fill('review by the window');
    await pair(laptop, hash, 'Laptop');
    await laptop.getByText('2 days of the diary').waitFor();
    await meet(phone);
    await phone.getByText('News of Laptop came in.').waitFor();
    await go(phone, '#/week/2026-W48/2026-11-23');
    await expect.poll(() => phone.getByLabel('Note', { exact: true }).inputValue()).toBe('review by the window');
    // The page is loaded again on the laptop: opening it is enough to have what the phone wrote last.
    await go(phone, dayHash);
    await phone.getByLabel('Practice arrows', { exact: true }).fill('72');
    await meet(phone);
    await go(laptop, '#/kit');
    await laptop.reload();
    await laptop.getByText('Last met the other devices on').waitFor();
    await go(laptop, dayHash);
    await expect.poll(() => laptop.getByLabel('Practice arrows', { exact: true }).inputValue()).toBe('72');
    expectSealed(host, hash, ['mill', 'window', 'Phone', 'Laptop']);
  },
);

journey(
  'a week is written on the laptop with no network while the phone writes one of its days: both end with all of it',
  async (host) => {
    const phone = await openAt(dayHash);
    const hash = await makeBox(phone, 'Phone');
    const laptop = await openAt(dayHash);
    await pair(laptop, hash, 'Laptop');
    await go(laptop, dayHash);
    await laptop.context().setOffline(true);
    await laptop.getByLabel('Focus: the one thing worked on').fill('Low front shoulder');
    await laptop.getByLabel('What went right').fill('Quiet mornings');
    await laptop.getByLabel('Note', { exact: true }).fill('Windy on the laptop');
    await laptop.getByLabel('Practice arrows', { exact: true }).fill('30');
    await laptop.waitForTimeout(1500); // the phone's edit of the arrows is the later one
    await go(phone, dayHash);
    await phone.getByLabel('Practice arrows', { exact: true }).fill('72');
    await phone.getByLabel('Good', { exact: true }).check();
    await meet(phone);
    // The network comes back, and nobody presses anything on the laptop.
    await laptop.context().setOffline(false);
    await expect
      .poll(() => laptop.getByLabel('Practice arrows', { exact: true }).inputValue(), { timeout: 40_000 })
      .toBe('72');
    await meet(phone);
    for (const page of [phone, laptop]) {
      await go(page, dayHash);
      await expect.poll(() => page.getByLabel('Note', { exact: true }).inputValue()).toBe('Windy on the laptop');
      expect(await page.getByLabel('Practice arrows', { exact: true }).inputValue()).toBe('72');
      expect(await page.getByLabel('Good', { exact: true }).isChecked()).toBe(true);
      expect(await page.getByLabel('Focus: the one thing worked on').inputValue()).toBe('Low front shoulder');
      expect(await page.getByLabel('What went right').inputValue()).toBe('Quiet mornings');
    }
    expectSealed(host, hash, ['shoulder', 'Windy', 'Quiet']);
  },
);

journey(
  'a new device is paired and says in one screen what it was given back; then one round is undone and made again',
  async (host) => {
    const phone = await openAt('#/journal');
    await phone.getByRole('button', { name: 'Load a demo journal' }).click();
    await phone.getByText('The demo journal is in here').waitFor();
    await go(phone, '#/kit/bow');
    await phone.getByRole('combobox', { name: 'Bow', exact: true }).selectOption('barebow');
    await go(phone, '#/rack');
    const file = { name: 'attic.drill.json', mimeType: 'application/json', buffer: Buffer.from(holdsFile(1, 2)) };
    await phone.locator('input[aria-label="Program file"]').setInputFiles(file);
    await phone.getByText('Attic holds').first().waitFor();
    const drills = (await storedDrills(phone)).length;
    await learnPedal(phone);
    const hash = await makeBox(phone, 'Phone');
    const tablet = await openAt(hash);
    // Before: it says what it will do, and a new device takes over the controls unless the archer says otherwise.
    await tablet.getByText('Keys and pedals, claps, headset and gamepad, sound').waitFor();
    expect(await tablet.getByLabel('Take over the controls of the device that was used last').isChecked()).toBe(true);
    await pair(tablet, hash, 'Tablet');
    const lines = await tablet.locator('.restored li').allTextContents();
    expect(lines[0]?.replace(/\s/g, ' ')).toBe(`${drills} drills`);
    expect(lines.join('\n')).toMatch(/1\sopened program: .*Attic holds/);
    expect(lines.join('\n')).toMatch(/your bow: Barebow/);
    expect(lines.at(-1)).toBe('the controls of Phone: keys and pedals, sound, screen and distance');
    await tablet.getByText('From now on each device changes its own controls, in the kit.').waitFor();
    expect(await storedDrills(tablet)).toEqual(await storedDrills(phone));
    await expectPedal(tablet, true);

    await go(tablet, '#/box');
    await press(tablet, 'Undo the last round');
    await tablet.getByText('Paused: nothing goes in or out.').waitFor();
    expect(await storedDrills(tablet)).toEqual([]);
    await expectPedal(tablet, false);
    await go(tablet, '#/box');
    await press(tablet, 'Meet again');
    await expect.poll(async () => (await storedDrills(tablet)).length).toBe(drills);
    expectSealed(host, hash, ['Attic', 'barebow']);
  },
);

journey(
  'a device that has controls of its own keeps them, takes another one’s over where the archer asks, and gives them back',
  async () => {
    const phone = await openAt('#/kit');
    await learnPedal(phone);
    const hash = await makeBox(phone, 'Phone');
    const laptop = await openAt('#/kit/display');
    await laptop.getByLabel('Background').selectOption('dark');
    await go(laptop, hash);
    await laptop.getByText('merged into what is here').waitFor();
    expect(await laptop.getByLabel('Take over the controls of the device that was used last').isChecked()).toBe(false);
    await pair(laptop, hash, 'Laptop');
    await laptop.getByText('Sound, screen, controls and backup belong to each device').waitFor();
    await expectPedal(laptop, false);
    await go(laptop, '#/box');
    await press(laptop, 'Use the controls of Phone here');
    await laptop.getByText('This device now has the controls of Phone').waitFor();
    await expectPedal(laptop, true);
    await go(laptop, '#/box');
    await press(laptop, 'Back to the controls of before');
    await laptop.getByText('The controls are as they were before.').waitFor();
    await expectPedal(laptop, false);
    // From then on each goes its own way: what changes on the phone is not copied by a round.
    await go(phone, '#/kit/sound');
    await phone.getByLabel('How much is said').selectOption('most');
    await meet(phone);
    await meet(laptop);
    await go(laptop, '#/kit/sound');
    expect(await laptop.getByLabel('How much is said').inputValue()).toBe('usual');
  },
);

journey('Firefox joins the box of a Chromium, and both end with one journal', async (host) => {
  const phone = await openAt(dayHash);
  await phone.getByLabel('Note', { exact: true }).fill('the hall at the mill');
  const hash = await makeBox(phone, 'Phone');
  const firefox = await openFirefox(`${host.origin}/`);
  if (firefox === undefined) {
    console.info('There is no Firefox here: the box was not tried in a second browser.');
    return;
  }
  try {
    await firefox.go(hash);
    await firefox.wait('>>> box-page >>> button.main');
    await firefox.press('>>> box-page >>> button.main');
    await until(firefox.page, () => {
      const page = document.querySelector('lark-app')?.shadowRoot?.querySelector('box-page');
      return /1\sday of the diary/.test(page?.shadowRoot?.textContent ?? '');
    });
    await firefox.go('#/week/2026-W48/2026-11-23');
    await until(firefox.page, () => {
      const week = document.querySelector('lark-app')?.shadowRoot?.querySelector('week-page')?.shadowRoot;
      const field = [...(week?.querySelectorAll('label') ?? [])]
        .find((one) => one.textContent?.includes('What went right'))
        ?.querySelector('textarea');
      if (!field) return false;
      field.value = 'Written in Firefox';
      field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
      return true;
    });
    // Nobody presses anything: the edit rests, and goes out by itself.
    await expect
      .poll(
        async () => {
          await meet(phone);
          await go(phone, dayHash);
          return phone.getByLabel('What went right').inputValue();
        },
        { timeout: 60_000, interval: 3000 },
      )
      .toBe('Written in Firefox');
  } finally {
    await firefox.leave();
  }
  expectSealed(host, hash, ['mill', 'Firefox']);
});
