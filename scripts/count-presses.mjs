// Counts presses and screens of scrolling for what archers do most, in the built app on a phone; writes docs/presses.md. Run `npm run build` first.
import { writeFileSync } from 'node:fs';
import { preview } from 'vite';
import { launchChromium } from './browser.mjs';
import { root } from './prepare.mjs';

/** A usual phone and a small one. */
const phones = [
  { width: 390, height: 844 },
  { width: 360, height: 640 },
];
const server = await preview({ root: `${root}apps/web`, logLevel: 'warn', preview: { port: 0, host: '127.0.0.1' } });
const address = server.resolvedUrls.local[0];
const browser = await launchChromium();

/** A counted hand: presses one thing after the other, and scrolls only as far as it has to. */
function hand(page, phone) {
  const counted = { presses: 0, screens: 0 };
  const reach = async (locator) => {
    await locator.waitFor({ timeout: 20_000 });
    const box = await locator.boundingBox();
    if (box && (box.y < 0 || box.y + box.height > phone.height))
      counted.screens += Math.ceil(Math.max(-box.y, box.y + box.height - phone.height) / phone.height);
    await locator.scrollIntoViewIfNeeded();
  };
  const press = async (locator) => {
    await reach(locator);
    await locator.click();
    counted.presses += 1;
  };
  const named = (role, name) => page.getByRole(role, { name }).first();
  return {
    counted,
    reach,
    press,
    button: (name) => press(named('button', name)),
    link: (name) => press(named('link', name)),
    css: (selector) => press(page.locator(selector).first()),
    words: (words) => press(page.getByText(words, { exact: true }).first()),
    field: (label) => press(page.getByLabel(label).first()),
    place: (name) => press(page.locator('nav').first().getByRole('link', { name })),
  };
}

/** Steps that several errands begin with. */
const toWeek = [(h) => h.place('Journal'), (h) => h.link('This week')];
const toKit = (row) => [(h) => h.place('Kit'), (h) => h.link(row)];

const errands = [
  ['Begin the first drill', [(h) => h.button(/^(Begin|Drill all the same)/)]],
  ['Say how the day is', [(h) => h.css('readiness-choice summary'), (h) => h.css('readiness-choice button')]],
  ['Fit the drill into ten minutes', [(h) => h.css('minutes-choice summary'), (h) => h.button('10 min')]],
  ['See why a number is what it is', [(h) => h.css('lark-prescription button')]],
  ['See the coming weeks', [(h) => h.link('The coming weeks')]],
  ['Use another program', [(h) => h.link('Another program'), (h) => h.button(/^Use today: /)]],
  ['Write down arrows', [...toWeek, (h) => h.button('Practice arrows: 6 more')]],
  ['Write down pain', [...toWeek, (h) => h.field('Pain today')]],
  ['Write down how the day felt', [...toWeek, (h) => h.field('Good')]],
  ['Set the focus of the week', [...toWeek, (h) => h.field('Focus: the one thing worked on')]],
  ['Write the review', [...toWeek, (h) => h.field('What went right')]],
  ['See the week’s numbers', [...toWeek, (h) => h.css('week-page .totals summary')]],
  ['See whether it gets better', [(h) => h.place('Journal'), (h) => h.link('Trends')]],
  ['Look at the last drill', [(h) => h.place('Journal'), (h) => h.link(/^Last drill/)]],
  ['Save everything', [...toKit(/^Files/), (h) => h.button('Backup of everything')]],
  ['Open a file', [...toKit(/^Files/), (h) => h.button('Open a file')]],
  [
    'Hand over to a coach',
    [...toKit(/^Files/), (h) => h.words('Hand over to a coach'), (h) => h.button('Save the hand-over')],
  ],
  ['Set the draw weight', [...toKit(/^Bow/), (h) => h.field('Draw weight on the fingers, lb')]],
  ['Say the age', [...toKit(/^Bow/), (h) => h.field('Age')]],
  ['Make the sound softer', [...toKit(/^Sound/), (h) => h.field(/^Level/)]],
  ['Say less in a drill', [...toKit(/^Sound/), (h) => h.field('How much is said')]],
  ['Learn a pedal', [...toKit(/^Controls/), (h) => h.button('Learn')]],
  ['Flip the display for a mirror', [...toKit(/^Display/), (h) => h.field('Flip it for the mirror')]],
  ['Make a program', [(h) => h.place('Rack'), (h) => h.link('New program')]],
];

/** Presses, and screens scrolled on each phone. */
async function countsOf(context, steps) {
  const counts = [];
  for (const phone of phones) {
    const page = await context.newPage();
    await page.setViewportSize(phone);
    page.on('filechooser', () => undefined);
    await page.goto(`${address}#/line`);
    await page.locator('main h1').first().waitFor();
    const h = hand(page, phone);
    for (const step of steps) await step(h);
    counts.push(h.counted);
    await page.close();
  }
  const [usual, small] = counts;
  return [usual.presses, usual.screens, small.screens];
}

const rows = [];
try {
  const context = await browser.newContext({ viewport: phones[0], acceptDownloads: true });
  // A day with a drill due, as in the pictures: what is first on the line differs on a rest day.
  await context.clock.setFixedTime(Date.UTC(2026, 10, 25, 6, 20));
  const first = await context.newPage();
  await first.goto(`${address}#/kit/stored`);
  await first.getByRole('button', { name: /demo/i }).first().click();
  await first.getByRole('button', { name: 'Remove the demo journal' }).waitFor();
  await first.close();
  for (const [name, steps] of errands) rows.push([name, ...(await countsOf(context, steps))]);
} finally {
  await browser.close();
  await server.close();
}
/** What was counted first (commit 16945fc), where it has changed since: presses, screens. */
const first = {
  'Say how the day is': [2, 1],
  'Fit the drill into ten minutes': [2, 1],
  'Write down arrows': [3, 1],
  'Write down pain': [3, 2],
  'Write down how the day felt': [3, 1],
  'Write the review': [3, 3],
  'See the week’s numbers': [3, 3],
  'Look at the last drill': [2, 1],
  'Hand over to a coach': [4, 0],
};
const lines = rows.map(([name, presses, screens, screensOnSmall]) => {
  const [pressesFirst, screensFirst] = first[name] ?? [presses, screens];
  return `| ${name} | ${presses} | ${screens} | ${screensOnSmall} | ${pressesFirst} | ${screensFirst} |`;
});
writeFileSync(
  `${root}docs/presses.md`,
  `# Presses

How many presses it takes from the line, and how many screens have to be scrolled, on a phone of 390 x 844 and
a small one of 360 x 640, with half a year in the journal. Counted by \`npm run presses\` in the built app; typing counts as the press into the field. Saving a drill of 20 reps takes
two presses (effort, Save) without scrolling, and restoring a backup on a line with nothing done yet takes two ("Restore from a file",
"Restore"): \`lark-after-layout.browser.ts\` and \`file-in.browser.ts\` hold that.

| errand | presses | screens, 390 x 844 | screens, 360 x 640 | presses, first counted | screens, 390 x 844, first counted |
| --- | --- | --- | --- | --- | --- |
${lines.join('\n')}
`,
);
console.log(lines.join('\n'));
