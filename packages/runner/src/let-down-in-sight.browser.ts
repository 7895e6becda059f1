import { loadWords, useWords } from '@larkhold/words';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { cdp, page } from 'vitest/browser';
import './index.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { trialDrill } from './trial-drill.ts';
import { trialPrescription } from './trial-environment.ts';

/** A phone's pixel: 160 to the inch. */
const PHONE = 25.4 / 160;
const HOLD_AT_MS = 13_000;
const LONG_TITLE = 'Haltekraftausdauertraining für kalte Wintermorgende im Dachgeschoss mit '.repeat(2).slice(0, 120);

/** What Chromium is asked through its own protocol; vitest's types name no commands. */
const ask = cdp() as unknown as { send(command: string, given: object): Promise<void> };
const forceColours = (value: 'active' | 'none') =>
  ask.send('Emulation.setEmulatedMedia', { features: [{ name: 'forced-colors', value }] });

beforeEach(async () => useWords(await loadWords('en-GB')));
afterEach(async () => {
  useWords(await loadWords('en-GB'));
  await forceColours('none');
  await page.viewport(414, 896);
});

async function inHold(width: number, height: number) {
  await page.viewport(width, height);
  const plain = trialPrescription();
  const prescription = { ...plain, blocks: plain.blocks.map((block) => ({ ...block, title: LONG_TITLE })) };
  const settings = { ...defaultRunnerSettings, viewing: { distanceM: 2 }, pixelMm: PHONE };
  const { drill, environment } = await trialDrill({ prescription, programTitle: LONG_TITLE, settings });
  Object.assign(drill.style, { position: 'fixed', inset: '0', height: 'auto' });
  drill.begin();
  environment.pass(HOLD_AT_MS + 100);
  await drill.updateComplete;
  await drill.renderRoot.querySelector('lark-glance')!.updateComplete;
  return drill;
}

/** What keeps Let down from being fully seen and pressed, and the display from being whole; empty when nothing does. */
async function faultsOf(drill: HTMLElementTagNameMap['lark-drill']): Promise<string[]> {
  await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
  const button = drill.renderRoot.querySelector<HTMLElement>('.buttons button')!;
  const { left, right, top, bottom } = button.getBoundingClientRect();
  const faults: string[] = [];
  if (left < 0 || top < 0 || right > innerWidth || bottom > innerHeight) {
    faults.push(`${[left, top, right, bottom].map(Math.round)} of ${innerWidth} x ${innerHeight}`);
  }
  if (button.scrollWidth > button.clientWidth + 1 || button.scrollHeight > button.clientHeight + 1) {
    faults.push('its words are cut off');
  }
  for (const [x, y] of [
    [left + 6, top + 6],
    [right - 6, top + 6],
    [left + 6, bottom - 6],
    [right - 6, bottom - 6],
    [(left + right) / 2, (top + bottom) / 2],
  ] as const) {
    const found = drill.shadowRoot?.elementFromPoint(x, y);
    if (found !== button) faults.push(`${found?.localName} covers ${Math.round(x)}, ${Math.round(y)}`);
  }
  const glance = drill.renderRoot.querySelector('lark-glance')!;
  const word = glance.renderRoot.querySelector<HTMLElement>('.word')!.getBoundingClientRect();
  const display = glance.getBoundingClientRect();
  if (word.left < -1 || word.right > innerWidth + 1 || word.top < display.top - 1 || word.bottom > display.bottom + 1) {
    faults.push(`the phase is at ${[word.left, word.top, word.right, word.bottom].map(Math.round)}`);
  }
  if (document.documentElement.scrollWidth > innerWidth) faults.push('the page scrolls sideways');
  return faults;
}

const sizes = [
  [320, 480],
  [360, 640],
  [844, 390],
] as const;

test.each(
  sizes.flatMap(([width, height]) =>
    (['100%', '200%'] as const).flatMap((text) =>
      (['en-GB', 'de'] as const).map((language) => [width, height, text, language] as const),
    ),
  ),
)(
  'at %i x %i, text of %s, in %s and with a title of 120 signs Let down is whole and nothing covers it',
  async (width, height, text, language) => {
    document.documentElement.style.fontSize = text;
    useWords(await loadWords(language));
    const drill = await inHold(width, height);
    expect(drill.renderRoot.querySelector('.buttons button')?.textContent?.trim()).toMatch(
      language === 'de' ? /^Jetzt|Absetzen/ : /^Let down/,
    );
    expect(await faultsOf(drill)).toEqual([]);
  },
);

test('turned in mid-hold, back again, and with a browser bar that comes and goes, Let down stays where it can be pressed and the hold goes on', async () => {
  const drill = await inHold(390, 844);
  const shown = () => drill.renderRoot.querySelector('lark-glance')?.renderRoot.querySelector('.word')?.textContent;
  for (const [width, height] of [
    [844, 390],
    [390, 844],
    [390, 730],
    [390, 844],
    [844, 330],
    [320, 420],
  ] as const) {
    await page.viewport(width, height);
    expect([width, height, await faultsOf(drill)]).toEqual([width, height, []]);
    expect(shown()).toBe('Hold');
  }
});

test.each(sizes)(
  'in forced colours, at %i x %i, Let down is whole and has an edge that can be seen',
  async (width, height) => {
    await forceColours('active');
    expect(matchMedia('(forced-colors: active)').matches).toBe(true);
    const drill = await inHold(width, height);
    expect(await faultsOf(drill)).toEqual([]);
    const { borderTopWidth, borderTopColor } = getComputedStyle(drill.renderRoot.querySelector('.buttons button')!);
    expect(Number.parseFloat(borderTopWidth)).toBeGreaterThanOrEqual(1);
    expect(borderTopColor).not.toBe(getComputedStyle(drill).backgroundColor);
  },
);

test.each([...sizes, [390, 844] as const])(
  'at %i x %i a camera has a room of its own: it covers no word',
  async (width, height) => {
    const drill = await inHold(width, height);
    const camera = document.createElement('div');
    camera.slot = 'sight';
    // As large as the sign in a hold: a row below the display, a column beside it where the screen is lying.
    Object.assign(camera.style, width > height ? { width: '8rem', height: '10rem' } : { height: '4rem' });
    drill.append(camera);
    expect(await faultsOf(drill)).toEqual([]);
    const [sign, display] = [camera, drill.renderRoot.querySelector('lark-glance')!].map((one) =>
      one.getBoundingClientRect(),
    );
    const isApart = sign!.top >= display!.bottom - 1 || sign!.left >= display!.right - 1;
    expect(isApart, JSON.stringify([sign, display])).toBe(true);
  },
);
