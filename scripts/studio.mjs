// The built app before a camera: a fixed morning, a clock that only moves when told, a demo journal where asked. Run `npm run build` first.
import { preview } from 'vite';
import { launchChromium } from './browser.mjs';
import { root } from './prepare.mjs';

/** A Wednesday morning, in the week that the demo journal ends with. */
const morning = Date.UTC(2026, 10, 25, 6, 20);
/** A clock can only be stopped at a moment that is still to come. */
const TO_STOP_MS = 20_000;
/** No more at once than a running drill takes for unnoticed. */
const STEP_MS = 1000;

/** Opens the app and the browser. */
export async function openStudio() {
  const server = await preview({ root: `${root}apps/web`, logLevel: 'warn', preview: { port: 0, host: '127.0.0.1' } });
  const browser = await launchChromium();
  const address = server.resolvedUrls.local[0];
  return {
    sitting: (options) => createSitting(browser, address, options),
    browser,
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

/** One archer's device. Looks by size, colours and mirror are changed under way: nothing is begun again for another picture. */
async function createSitting(browser, address, { locale = 'en-GB', hasDemo = false, density = 1 } = {}) {
  const context = await browser.newContext({
    locale,
    timezoneId: 'UTC',
    viewport: { width: 390, height: 844 },
    deviceScaleFactor: density,
  });
  await context.clock.install({ time: morning });
  await context.clock.pauseAt(morning + TO_STOP_MS);
  const page = await context.newPage();
  page.on('pageerror', (error) => console.error(`${page.url()}: ${error.message}`));
  const pass = async (ms) => {
    for (let left = ms; left > 0; left -= STEP_MS) await context.clock.fastForward(Math.min(left, STEP_MS));
  };
  const settle = async () => {
    await pass(400);
    await page.waitForTimeout(120);
  };
  const go = async (hash) => {
    await page.goto(`${address}${hash}`);
    await page.locator('main > :last-child h1').first().waitFor({ timeout: 20_000 });
    await settle();
  };
  const changeKit = (changes) =>
    page.evaluate((given) => {
      const { app } = document.querySelector('lark-app');
      return app.act.changeKit((kit) => ({ ...given, viewing: { ...kit.viewing, ...given.viewing } }));
    }, changes);
  const sitting = { page, context, pass, settle, go, changeKit };
  await go('#/kit/stored');
  if (hasDemo) {
    await page
      .getByRole('button', { name: /demo|Muster|Beispiel/i })
      .first()
      .click();
    const isThere = () => page.evaluate(() => document.querySelector('lark-app').app.view.journal.drills.length > 0);
    while (!(await isThere())) await settle();
  }
  return {
    ...sitting,
    /** Another size and other colours, for the page as it is. */
    async look({ width, height, scheme = 'dark' }) {
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ colorScheme: scheme });
      await settle();
    },
    /** Where the drill is. */
    view: () =>
      page.evaluate(() => {
        const line = document.querySelector('lark-app').shadowRoot.querySelector('lark-line');
        const view = line?.shadowRoot.querySelector('lark-drill')?.view;
        return view && { state: view.state, kind: view.step?.kind, msLeft: view.msLeft, rep: view.progress.repsDone };
      }),
    /** Moves on to the first moment that a drill is as asked for; false where it ended before. */
    async passTo(isThere, limitMs = 900_000) {
      for (let passed = 0; passed < limitMs; passed += STEP_MS) {
        const view = await this.view();
        if (!view) return false;
        if (isThere(view)) return true;
        await pass(STEP_MS);
      }
      return false;
    },
    async begin() {
      await page.locator('.begin').first().click();
      await page.locator('lark-drill').waitFor();
    },
    shoot: () => page.screenshot(),
  };
}

/** A picture as WebP, which the driver does not give by itself. */
export async function shootWebp(page) {
  const session = await page.context().newCDPSession(page);
  const { data } = await session.send('Page.captureScreenshot', {
    format: 'webp',
    quality: 80,
  });
  await session.detach();
  return Buffer.from(data, 'base64');
}
