import { afterEach, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import './index.ts';
import { loadWords, useWords } from '@larkhold/words';
import { arcMinutesOf } from './legibility.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { trialDrill } from './trial-drill.ts';

afterEach(async () => {
  await page.viewport(414, 896);
});

/** A phone's pixel: 160 to the inch; a tablet's: 132; a desk's: 96. */
const [PHONE, TABLET, DESK] = [25.4 / 160, 25.4 / 132, 25.4 / 96];
const HOLD_AT_MS = 13_000;
const REST_AT_MS = HOLD_AT_MS + 10_000 + 3000;

async function drillAt(width: number, height: number, distanceM: number, pixelMm: number, flipped = false) {
  await page.viewport(width, height);
  const settings = { ...defaultRunnerSettings, viewing: { distanceM }, pixelMm, flipped };
  const { drill, environment } = await trialDrill({ settings });
  Object.assign(drill.style, { position: 'fixed', inset: '0', height: '100%' });
  drill.begin();
  const glance = drill.renderRoot.querySelector('lark-glance')!;
  const pass = async (spanMs: number) => {
    environment.pass(spanMs);
    await drill.updateComplete;
    await glance.updateComplete;
  };
  const find = (selector: string) => glance.renderRoot.querySelector<HTMLElement>(selector)!;
  /** Height of a capital, 0.71 of the font (own: measured on common plain typefaces), in minutes of arc. */
  const arc = (selector: string) =>
    arcMinutesOf(Number.parseFloat(getComputedStyle(find(selector)).fontSize) * 0.71 * pixelMm, distanceM);
  return { drill, glance, pass, find, arc };
}

// ISO 9241-3: 16 minutes of arc at the least.
test.each([
  ['a phone', 390, 844, 2, PHONE],
  ['a small phone', 360, 640, 2, PHONE],
  ['a phone on its side', 844, 390, 2, PHONE],
  ['a tablet', 820, 1180, 3, TABLET],
  ['a tablet on its side', 1180, 820, 3, TABLET],
  ['a desk', 1440, 900, 3, DESK],
] as const)(
  'on %s, %i x %i, phase, rep and what is next are read at %i m',
  async (_, width, height, distanceM, pixelMm) => {
    const { pass, arc, glance, find } = await drillAt(width, height, distanceM, pixelMm);
    await pass(HOLD_AT_MS + 100);
    for (const selector of ['.word', '.count']) expect(arc(selector), selector).toBeGreaterThanOrEqual(15.95);
    expect(arcMinutesOf(glance.digitPx! * 0.71 * pixelMm, distanceM)).toBeGreaterThanOrEqual(16);
    expect(arc('.what')).toBeGreaterThanOrEqual(15.95);
    const ribbon = find('lark-hold-ribbon').getBoundingClientRect();
    expect(ribbon.height).toBeGreaterThan(26);
    expect(ribbon.bottom).toBeLessThanOrEqual(glance.getBoundingClientRect().bottom);
    expect(glance.scrollHeight).toBeLessThanOrEqual(glance.clientHeight + 1);
    // The number is what is looked at most: on a phone 37 % of the shorter side or more, a digit being 0.71 of its font (own: measured).
    if (pixelMm === PHONE) expect((glance.digitPx! * 0.71) / Math.min(width, height)).toBeGreaterThanOrEqual(0.37);
    await pass(REST_AT_MS - HOLD_AT_MS);
    expect(arc('.what')).toBeGreaterThanOrEqual(15.95);
  },
);

// DejaVu, the widest plain typeface there is, is what the machine that tests run on has.
test.each([
  ['a phone', 390, 844],
  ['a small phone', 360, 640],
  ['a phone on its side', 844, 390],
] as const)(
  'on %s, %i x %i, also the long words of a phase and what is next are read at 2 m, whole, in English and German, straight and flipped',
  async (_, width, height) => {
    try {
      for (const [locale, getReady, isFlipped] of [
        ['en-GB', 'Get ready', false],
        ['en-GB', 'Get ready', true],
        ['de', 'Bereit', false],
        ['de', 'Bereit', true],
      ] as const) {
        useWords(await loadWords(locale));
        const { drill, pass, arc, find, glance } = await drillAt(width, height, 2, PHONE, isFlipped);
        expect(glance.flipped).toBe(isFlipped);
        const isWhole = (words: string) => {
          const word = find('.word .narrowed').getBoundingClientRect();
          const place = find('.words').getBoundingClientRect();
          expect(find('.word').textContent).toBe(words);
          expect([word.left >= place.left - 1, word.right <= place.right + 1], words).toEqual([true, true]);
          expect(arc('.word'), words).toBeGreaterThanOrEqual(15.95);
          expect(glance.scrollHeight).toBeLessThanOrEqual(glance.clientHeight + 1);
        };
        await pass(100);
        isWhole(getReady);
        const [draw, letDown] = locale === 'de' ? ['Ziehen', 'Absetzen'] : ['Draw', 'Let down'];
        await pass(10_000);
        isWhole(draw);
        await pass(HOLD_AT_MS + 1000 - 10_100);
        expect(arc('.what'), find('.what').textContent ?? '').toBeGreaterThanOrEqual(15.95);
        await pass(10_000);
        isWhole(letDown);
        await pass(3000);
        expect(arc('.what')).toBeGreaterThanOrEqual(15.95);
        drill.remove();
      }
    } finally {
      useWords(await loadWords('en-GB'));
    }
  },
);

test('a screen that is turned narrows its words again', async () => {
  const { pass, find } = await drillAt(360, 640, 2, PHONE);
  await pass(100);
  const narrowed = () => new DOMMatrix(getComputedStyle(find('.word .narrowed')).transform).a;
  expect(narrowed()).toBeLessThan(0.95);
  await page.viewport(820, 1180);
  await expect.poll(narrowed).toBe(1);
});

test('words too wide for one line at the size that is needed have two on a phone; a coach’s line and a notice never push anything out of sight', async () => {
  const { glance, find, arc, pass } = await drillAt(390, 844, 2, PHONE);
  await pass(REST_AT_MS + 100);
  glance.reps = glance.reps.map((rep) => ({ ...rep, prescribedMs: 100_500 }));
  await glance.updateComplete;
  expect(find('.what').textContent?.replaceAll('\u00a0', ' ')).toBe('hold 100.5 s');
  expect(arc('.what')).toBeGreaterThanOrEqual(15.95);
  expect(find('.what').getBoundingClientRect().height).toBeGreaterThan(
    1.5 * Number.parseFloat(getComputedStyle(find('.what')).fontSize),
  );
  expect(glance.scrollHeight).toBeLessThanOrEqual(glance.clientHeight + 1);
  for (const [width, height] of [
    [360, 640],
    [844, 390],
  ] as const) {
    await page.viewport(width, height);
    glance.call = 'Shoulder blades together, elbow back';
    await glance.updateComplete;
    expect(find('.call').getBoundingClientRect().bottom).toBeLessThanOrEqual(glance.getBoundingClientRect().bottom);
    expect(glance.scrollHeight).toBeLessThanOrEqual(glance.clientHeight + 1);
  }
});

test('in a rest the coming rep and its hold are shown', async () => {
  const { pass, find } = await drillAt(390, 844, 2, PHONE);
  await pass(REST_AT_MS + 100);
  expect(find('.word').textContent).toBe('Rest');
  expect(find('.count').textContent).toBe('2/2');
  expect(find('.next').textContent?.replaceAll('\u00a0', ' ')).toBe('Next: hold 10 s');
});

test('under the bow the drill grows as a ribbon: held, under way, to come', async () => {
  const { pass, find } = await drillAt(390, 844, 2, PHONE);
  const kinds = () =>
    (find('lark-hold-ribbon') as HTMLElementTagNameMap['lark-hold-ribbon']).reps.map(({ outcome }) => outcome);
  await pass(HOLD_AT_MS + 100);
  expect(kinds().slice(0, 2)).toEqual(['now', 'coming']);
  await pass(REST_AT_MS - HOLD_AT_MS);
  expect(kinds().slice(0, 2)).toEqual(['held', 'coming']);
});

test.each(
  [
    [320, 480],
    [360, 640],
    [390, 844],
    [844, 390],
    [667, 320],
    [1180, 820],
  ].flatMap(([width, height]) => [[width!, height!, '100%'] as const, [width!, height!, '200%'] as const]),
)(
  'at %i x %i and text of %s Let down is fully on the screen in a hold, its words whole, and the number is seen',
  async (width, height, text) => {
    document.documentElement.style.fontSize = text;
    const { drill, pass, glance } = await drillAt(width, height, 2, PHONE);
    await pass(HOLD_AT_MS + 100);
    const letDown = drill.renderRoot.querySelector<HTMLElement>('.buttons button')!;
    const box = letDown.getBoundingClientRect();
    expect([box.left >= 0, box.top >= 0, box.right <= width, box.bottom <= height]).toEqual([true, true, true, true]);
    expect(letDown.scrollWidth).toBeLessThanOrEqual(letDown.clientWidth + 1);
    expect(letDown.scrollHeight).toBeLessThanOrEqual(letDown.clientHeight + 1);
    expect(drill.shadowRoot?.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2)).toBe(letDown);
    expect(glance.digitPx).toBeGreaterThan(40);
  },
);
