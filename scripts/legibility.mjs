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
/** Font sizes of number, phase, rep and what is next, CSS pixels, in the moment in which the phase says a word. */
function sizesAt(page, word) {
  return page.locator('lark-glance').evaluate(async (element, word) => {
    const find = (selector) => element.renderRoot.querySelector(selector);
    while (find('.word')?.textContent !== word) await new Promise(requestAnimationFrame);
    const size = (selector) => Number.parseFloat(getComputedStyle(find(selector)).fontSize);
    return [element.digitPx, size('.word'), size('.count'), size('.what')];
  }, word);
}

/** One row: a drill is begun on a screen and read in a hold, and in the rest after it; what is next is the smaller of the two. */
async function rowOf(layout, [name, width, height, pixelMm, distanceM]) {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.goto(`${server.resolvedUrls.local[0]}#/line`);
  const begin = page.getByRole('button', { name: /^Begin/ }).first();
  await begin.waitFor();
  await page.evaluate(
    async ([distanceM, pixelMm, layout]) => {
      const { app } = document.querySelector('lark-app');
      await app.act.changeKit((kit) => ({ viewing: { ...kit.viewing, distanceM }, pixelMm, layout }));
    },
    [distanceM, pixelMm, layout],
  );
  await begin.click();
  const [, longest] = await sizesAt(page, 'Get ready');
  const [digits, word, count, nextInHold] = await sizesAt(page, 'Hold');
  const nextInRest = (await sizesAt(page, 'Rest')).at(-1);
  await page.close();
  const arcs = [digits, word, longest, count, Math.min(nextInHold, nextInRest)].map((px) =>
    arc(px, pixelMm, distanceM).toFixed(0),
  );
  const share = Math.round((100 * digits * HEIGHT) / Math.min(width, height));
  return `| ${layout === 'bow' ? 'bow' : 'numbers first'} | ${name}, ${width} x ${height} | ${distanceM} m | ${share} % | ${arcs.join(' | ')} |`;
}

const rows = [];
try {
  for (const layout of ['bow', 'numbers']) {
    rows.push(...(await Promise.all(screens.map((screen) => rowOf(layout, screen)))));
  }
} finally {
  await browser.close();
  await server.close();
}
writeFileSync(
  `${root}docs/legibility.md`,
  `# What can be read from where

Height in minutes of arc of what a drill shows, measured in the built app by \`npm run legibility\`. ISO 9241-3 asks for 16 at the least, and 20 to 22 for
ease. What is next is measured in a hold ("let down") and in a rest ("hold 5 s"), and the smaller is given. Each line is as large as its own words allow: \`<lark-glance>\`
measures them in the font that the device has, so on the narrowest screens a narrower typeface gives a little more. Where a screen is too small for its
distance the line says so before Begin. On a phone the number always stands before the bow, and the lines below it get the size that the distance asks for
before the number gets the rest; what is next has two lines where one is too wide; a word of the phase has one, as large as the width allows. \`lark-glance-legible.browser.ts\` holds it.

| display | screen | from | number, of the shorter side | number | “Hold” | “Get ready” | rep of reps | what is next |
| --- | --- | --- | --- | --- | --- | --- | --- | --- |
${rows.join('\n')}
`,
);
console.log(rows.join('\n'));
