// Makes docs/pictures/overview.png from the built app: the line, a hold, the journal, on a phone. Run `npm run build` first.
import { mkdirSync } from 'node:fs';
import { preview } from 'vite';
import { launchChromium } from './browser.mjs';
import { root } from './prepare.mjs';

const folder = `${root}docs/pictures`;
const phone = { width: 390, height: 844 };

/** Waits for a moment of the running drill, so that the picture shows a hold and not a rest. */
async function reachHold(page) {
  await page
    .getByRole('button', { name: /^Begin/ })
    .first()
    .click();
  await page.getByText('Hold', { exact: true }).first().waitFor({ timeout: 30_000 });
  await page.waitForTimeout(1500);
}

mkdirSync(folder, { recursive: true });
const server = await preview({ root: `${root}apps/web`, logLevel: 'warn', preview: { port: 0, host: '127.0.0.1' } });
const browser = await launchChromium();
try {
  const page = await browser.newPage({ viewport: phone, colorScheme: 'dark', deviceScaleFactor: 2 });
  const shots = [];
  const shoot = async () => shots.push((await page.screenshot()).toString('base64'));
  await page.goto(server.resolvedUrls.local[0]);
  await page
    .getByRole('button', { name: /^Begin/ })
    .first()
    .waitFor();
  await shoot();
  await reachHold(page);
  await shoot();
  await page.goto(`${server.resolvedUrls.local[0]}#/kit/stored`);
  await page.reload();
  await page.getByRole('button', { name: /demo/i }).first().click();
  await page.goto(`${server.resolvedUrls.local[0]}#/journal`);
  await page.waitForTimeout(1000);
  await shoot();

  const sheet = await browser.newPage({ viewport: { width: 3 * phone.width + 80, height: phone.height + 40 } });
  await sheet.setContent(
    `<body style="margin:20px;display:flex;gap:20px;background:#fff">${shots
      .map((shot) => `<img width="${phone.width}" height="${phone.height}" src="data:image/png;base64,${shot}">`)
      .join('')}</body>`,
  );
  await sheet.screenshot({ path: `${folder}/overview.png` });
} finally {
  await browser.close();
  await server.close();
}
