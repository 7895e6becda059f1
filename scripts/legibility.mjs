// Measures in the built app how large the words of a drill are from where the archer is, and writes docs/legibility.md. Run `npm run build` first.
import { writeFileSync } from 'node:fs';
import { preview } from 'vite';
import { launchChromium } from './browser.mjs';
import { root } from './prepare.mjs';

// A CSS pixel, millimetres: 160 to the inch on a phone, 132 on a tablet, 96 on a desk; distances as archers put them up. Common practice, no source.
const [PHONE, TABLET, DESK] = [25.4 / 160, 25.4 / 132, 25.4 / 96];
const screens = [
  ['phone', 360, 640, PHONE, 2],
  ['phone', 390, 844, PHONE, 2],
  ['phone on its side', 844, 390, PHONE, 2],
  ['tablet', 820, 1180, TABLET, 3],
  ['tablet on its side', 1180, 820, TABLET, 3],
  ['desk', 1440, 900, DESK, 3],
];
/** Height of a capital or digit as a share of the font size: measured on common plain typefaces. */
const HEIGHT = 0.71;
const arc = (px, pixelMm, distanceM) =>
  (2 * Math.atan((px * HEIGHT * pixelMm) / (2 * distanceM * 1000)) * 180 * 60) / Math.PI;

const server = await preview({ root: `${root}apps/web`, logLevel: 'warn', preview: { port: 0, host: '127.0.0.1' } });
const browser = await launchChromium();
const rows = [];
try {
  for (const layout of ['bow', 'numbers']) {
    for (const [name, width, height, pixelMm, distanceM] of screens) {
      const page = await browser.newPage({ viewport: { width, height } });
      await page.goto(`${server.resolvedUrls.local[0]}#/line`);
      await page
        .getByRole('button', { name: /^Begin/ })
        .first()
        .waitFor();
      await page.evaluate(
        async ([distanceM, pixelMm, layout]) => {
          const { app } = document.querySelector('lark-app');
          await app.act.changeKit((kit) => ({ viewing: { ...kit.viewing, distanceM }, pixelMm, layout }));
        },
        [distanceM, pixelMm, layout],
      );
      await page
        .getByRole('button', { name: /^Begin/ })
        .first()
        .click();
      await page.locator('lark-glance').getByText('Hold', { exact: true }).first().waitFor({ timeout: 30_000 });
      const px = await page.locator('lark-glance').evaluate((glance) => {
        const size = (selector) =>
          Number.parseFloat(getComputedStyle(glance.renderRoot.querySelector(selector)).fontSize);
        return [glance.digitPx, size('.word'), size('.count'), size('.what')];
      });
      const arcs = px.map((one) => arc(one, pixelMm, distanceM).toFixed(0));
      rows.push(
        `| ${layout === 'bow' ? 'bow' : 'numbers first'} | ${name}, ${width} x ${height} | ${distanceM} m | ${arcs.join(' | ')} |`,
      );
      await page.close();
    }
  }
} finally {
  await browser.close();
  await server.close();
}
writeFileSync(
  `${root}docs/legibility.md`,
  `# What can be read from where

Height in minutes of arc of what a hold shows, measured in the built app by \`npm run legibility\`. ISO 9241-3 asks for 16 at the least, and 20 to 22 for
ease. Where a screen is too small for its distance the line says so before Begin, and offers numbers first.

| display | screen | from | number | phase | rep of reps | what is next |
| --- | --- | --- | --- | --- | --- | --- |
${rows.join('\n')}
`,
);
console.log(rows.join('\n'));
