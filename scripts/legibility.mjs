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
  ['German', 'de-DE', ['Bereit', 'Ziehen', 'Halten', 'Absetzen', 'Pause']],
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
async function rowOf([language, locale, said], { layout, flipped = false }, [name, width, height, pixelMm, distanceM]) {
  const page = await browser.newPage({ viewport: { width, height }, locale });
  await page.goto(`${server.resolvedUrls.local[0]}#/line`);
  const begin = page.locator('.begin').first();
  await begin.waitFor();
  await page.evaluate(
    async ([distanceM, pixelMm, layout, flipped]) => {
      const { app } = document.querySelector('lark-app');
      await app.act.changeKit((kit) => ({ viewing: { ...kit.viewing, distanceM, flipped }, pixelMm, layout }));
    },
    [distanceM, pixelMm, layout, flipped],
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
    (Math.floor(10 * arc(px, pixelMm, distanceM)) / 10).toFixed(1),
  );
  const share = Math.round((100 * digits * HEIGHT) / Math.min(width, height));
  return `| ${language}, ${layout === 'bow' ? 'bow' : 'numbers first'}${flipped ? ', flipped' : ''} | ${name}, ${width} x ${height} | ${distanceM} m | ${share} % | ${arcs.join(' | ')} |`;
}

const rows = [];
try {
  // Not all at once: each waits for a word that is shown for a moment only.
  for (const language of languages)
    for (const layout of ['bow', 'numbers'])
      for (const some of [screens.slice(0, 3), screens.slice(3)])
        rows.push(...(await Promise.all(some.map((screen) => rowOf(language, { layout }, screen)))));
  const [smallest] = screens;
  const looks = languages.flatMap((language) => ['bow', 'numbers'].map((layout) => [language, layout]));
  rows.push(
    ...(await Promise.all(looks.map(([language, layout]) => rowOf(language, { layout, flipped: true }, smallest)))),
  );
} finally {
  await browser.close();
  await server.close();
}
writeFileSync(
  `${root}docs/legibility.md`,
  `# What can be read from where

Height in minutes of arc of what a drill shows, measured in the built app by \`npm run legibility\`. ISO 9241-3 asks for 16 at the least, and 20 to 22 for
ease. What is next is measured in a hold ("let down") and in a rest ("hold 5 s"), and the smaller is given. Each line is as large as its own words allow: \`<lark-glance>\`
measures them in the font that the device has; the numbers here are those of DejaVu Sans, the widest plain typeface there is. Where a screen is too small for its
distance the line says so before Begin. On a phone the number is always in front of the bow, and the lines below it get the size that the distance asks for
before the number gets the rest. A line that could not be read at the size that fits has its letters narrowed, to 0.77 of their width at the most (0.7 to 0.9 of
the height is a good width, 0.5 the least, from memory of ISO 9241-3); what is next has two lines where that is not enough. Flipped for a mirror everything is as
large; the smallest screen shows it. \`lark-glance-legible.browser.ts\` holds 16 minutes in both languages, straight and flipped.

| words, display | screen | from | number, of the shorter side | number | “Get ready” | “Draw” | “Hold” | “Let down” | rep of reps | what is next |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
${rows.join('\n')}
`,
);
console.log(rows.join('\n'));
