import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, phase, takeProgram } from './drill-program.ts';
import { unfold } from './every-page.ts';
import { loadDemo, stillScreens } from './every-screen.ts';
import { axeFaults, forcedFaults, motionFaults, nameFaults, spillFaults } from './page-checks.ts';

afterAll(leaveAll);

const desk = { width: 1280, height: 900 };
/** WCAG 2.2, 1.4.10: 320 CSS pixels, which is a desk of 1280 at 400 %. */
const narrow = { width: 320, height: 640 };
/** The desk at 200 %. */
const halved = { width: 640, height: 450 };
/** WCAG 2.2, 1.4.4: text alone twice as large, on a phone. */
const phone = { width: 390, height: 844 };

/** Two frames, so that what hears of a new size has drawn. */
const settle = (page: Page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

/** What axe and a screen reader make of the page. */
const spoken = async (page: Page) => [...(await axeFaults(page)), ...(await nameFaults(page))];

/** Words that a screen reader is given unasked, as they come, from every live region in the drill's display. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    const hear = () => {
      const display = document
        .querySelector('lark-app')
        ?.shadowRoot?.querySelector('lark-line')
        ?.shadowRoot?.querySelector('lark-drill')
        ?.shadowRoot?.querySelector('lark-glance')?.shadowRoot;
      const words = display?.querySelector('[aria-live="polite"]')?.textContent?.trim();
      if (words && words !== heard.at(-1)) heard.push(words);
      requestAnimationFrame(hear);
    };
    hear();
  });
  return () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
}

async function enlargeText(page: Page, size: string): Promise<void> {
  await page.evaluate((value) => {
    document.documentElement.style.fontSize = value;
  }, size);
}

/** Every look a person may need of one screen. The page is left as it was. */
async function otherLooks(page: Page): Promise<string[]> {
  const faults: string[] = [];
  const note = (look: string, found: string[]) => faults.push(...found.map((fault) => `${look}: ${fault}`));
  for (const [look, size] of [
    ['320 px wide', narrow],
    ['at 200 %', halved],
  ] as const) {
    await page.setViewportSize(size);
    await settle(page);
    note(look, await spillFaults(page));
  }
  await page.setViewportSize(phone);
  await enlargeText(page, '200%');
  await settle(page);
  note('text at 200 %', await spillFaults(page));
  await enlargeText(page, '');
  await page.setViewportSize(desk);
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  await settle(page);
  note('forced colours', await forcedFaults(page));
  note('reduced motion', await motionFaults(page));
  await page.emulateMedia({ forcedColors: 'none', reducedMotion: 'no-preference' });
  return faults;
}

/** What a person who does not see the page asks for, page by page. */
const asked: Readonly<Record<string, readonly ['button' | 'link' | 'textbox' | 'region' | 'img' | 'row', RegExp][]>> = {
  '#/line': [
    ['button', /^(Begin|Begin again|Drill all the same)$/], // the demo archer may have drilled today, or rest
    ['button', /^5 min$/],
  ],
  '#/rack': [
    ['button', /^Open a program file$/],
    ['button', /^Use today: .+$/],
  ],
  '#/rack/{id}': [['textbox', /^Link$/]],
  '#/journal': [['link', /week/i]],
  '#/week': [
    ['textbox', /^Practice arrows$/],
    ['button', /^Mo, Monday/],
  ],
  '#/trends': [['img', /^Time at full draw, .+: last .+, least .+, most .+/]],
  '#/coach': [['button', /^Open hand-overs$/]],
  '#/kit': [['link', /^Sound 70/]],
  '#/files': [['button', /^Open a file$/]],
  '#/kit/controls': [['button', /^Learn$/]],
  'kit, learning a key': [['button', /^Take Space bar away from Begin$/]],
  '#/bench/new': [['textbox', /^Title/]],
  'a hand-over at the coach': [['row', /Ines/]],
};

/** Places that between them hold every kind of control; the colours are the same everywhere. */
const alsoInContrast: readonly string[] = ['#/line', '#/rack', '#/week', '#/kit/sound', 'the bench with a mistake'];

describe.concurrent('every screen', () => {
  it('can be used by everyone', async () => {
    const { page, faults, leave } = await arrive('#/kit', { viewport: desk, colorScheme: 'dark' });
    await loadDemo(page);
    const found: string[] = [];
    for (const { name, reach } of stillScreens) {
      await reach(page);
      await unfold(page, 5);
      for (const [role, words] of asked[name] ?? []) {
        expect(await page.getByRole(role, { name: words }).count(), `${name}: ${role} ${words}`).toBeGreaterThan(0);
      }
      found.push(...[...(await spoken(page)), ...(await otherLooks(page))].map((fault) => `${name}: ${fault}`));
    }
    expect(found).toEqual([]);
    expect(faults).toEqual([]);
    await leave();
  });

  it('can be seen on paper and in strong contrast too', async () => {
    const { page, leave } = await arrive('#/kit', { viewport: desk, colorScheme: 'light' });
    await loadDemo(page);
    const found: string[] = [];
    const look = async (theme: string, name: string) =>
      found.push(...(await axeFaults(page, 'colours')).map((fault) => `${theme}, ${name}: ${fault}`));
    for (const { name, reach } of stillScreens) {
      await reach(page);
      await unfold(page, 1);
      await look('paper', name);
      if (!alsoInContrast.includes(name)) continue;
      await page.evaluate(() => document.documentElement.setAttribute('data-theme', 'contrast'));
      await look('contrast', name);
      await page.evaluate(() => document.documentElement.setAttribute('data-theme', 'system'));
    }
    expect(found).toEqual([]);
    await leave();
  });

  it.each(['dark', 'light'] as const)('of a drill can be used by everyone, %s', async (colorScheme) => {
    const { page, faults, leave } = await arrive('#/rack', { colorScheme, viewport: desk });
    const found: string[] = [];
    const examine = async (name: string) => {
      const isDark = colorScheme === 'dark';
      const faults = isDark ? [...(await spoken(page)), ...(await otherLooks(page))] : await axeFaults(page, 'colours');
      found.push(...faults.map((fault) => `${name}: ${fault}`));
    };
    await takeProgram(page, holdsFile(120, 2, 'Attic holds', 3));
    const heard = await listen(page);
    await page.keyboard.press('Enter');
    await phase(page, 'Hold').waitFor();
    expect(await heard()).toEqual(['Get ready', 'Draw', 'Hold']);
    await examine('hold');
    await page.keyboard.press('Escape');
    await page.getByText('Stop the drill?').waitFor();
    await examine('asking whether to stop');
    await page.reload();
    await page.getByRole('group', { name: 'Interrupted drill' }).waitFor();
    await examine('an interrupted drill');
    await page.getByRole('button', { name: 'Go on with it' }).click();
    await page.getByRole('button', { name: 'Resume' }).waitFor();
    await examine('paused');
    await page.keyboard.press('Escape');
    await page.getByText('Stop the drill?').waitFor();
    await page.waitForTimeout(400); // a second press within 300 ms would count as a bounce
    await page.keyboard.press('Escape');
    await page.getByText('How was it?').waitFor();
    await examine('after the drill');
    await page.getByRole('button', { name: 'Skip', exact: true }).click();
    await page.getByRole('heading', { name: 'Logged' }).waitFor();
    await examine('what was logged');
    expect(found).toEqual([]);
    expect(faults).toEqual([]);
    await leave();
  });
});
