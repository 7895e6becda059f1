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
/** What the display says in a drill, in the order in which it does. */
const languages = [
  ['English', 'en-GB', ['Get ready', 'Draw', 'Hold', 'Let down', 'Rest']],
  ['German', 'de-DE', ['Bereit', 'Ausziehen', 'Halten', 'Absetzen', 'Pause']],
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
async function rowOf([language, locale, said], layout, [name, width, height, pixelMm, distanceM]) {
  const page = await browser.newPage({ viewport: { width, height }, locale });
  await page.goto(`${server.resolvedUrls.local[0]}#/line`);
  const begin = page.locator('.begin').first();
  await begin.waitFor();
  await page.evaluate(
    async ([distanceM, pixelMm, layout]) => {
      const { app } = document.querySelector('lark-app');
      await app.act.changeKit((kit) => ({ viewing: { ...kit.viewing, distanceM }, pixelMm, layout }));
    },
    [distanceM, pixelMm, layout],
  );
  await begin.click();
  const [ready, draw, hold, letDown, rest] = said;
  const [, getReady] = await sizesAt(page, ready);
  const [, toDraw] = await sizesAt(page, draw);
  const [digits, word, count, nextInHold] = await sizesAt(page, hold);
  const [, down] = await sizesAt(page, letDown);
  const nextInRest = (await sizesAt(page, rest)).at(-1);
  await page.close();
  const arcs = [digits, getReady, toDraw, word, down, count, Math.min(nextInHold, nextInRest)].map((px) =>
    (Math.floor(10 * arc(px, pixelMm, distanceM) + 0.5) / 10).toFixed(0),
  );
  const share = Math.round((100 * digits * HEIGHT) / Math.min(width, height));
  return `| ${language}, ${layout === 'bow' ? 'bow' : 'numbers first'} | ${name}, ${width} x ${height} | ${distanceM} m | ${share} % | ${arcs.join(' | ')} |`;
}

const rows = [];
try {
  for (const [language, layout] of [
    [languages[0], 'bow'],
    [languages[0], 'numbers'],
    [languages[1], 'bow'],
  ]) {
    // Not all at once: each waits for a word that stands for a moment only.
    for (const some of [screens.slice(0, 3), screens.slice(3)])
      rows.push(...(await Promise.all(some.map((screen) => rowOf(language, layout, screen)))));
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
before the number gets the rest; what is next has two lines where one is too wide. A word of the phase has one: where it could not be read at the size that fits, its letters are
narrowed to four fifths at the most, still a good width (0.7 to 0.9 of the height, from memory of ISO 9241-3). \`lark-glance-legible.browser.ts\`
holds it, with the widest typeface there is.

| words, display | screen | from | number, of the shorter side | number | “Get ready” | “Draw” | “Hold” | “Let down” | rep of reps | what is next |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
${rows.join('\n')}
`,
);
console.log(rows.join('\n'));
