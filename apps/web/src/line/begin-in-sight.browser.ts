import { builtInPrograms, type DrillRecord } from '@larkhold/engine';
import { loadWords, useWords } from '@larkhold/words';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { cdp, page as frame } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { leaveTrial, openTrialApp, type TrialApp, textOf } from '../shell/trial-app.ts';

let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp('#/line');
});

afterEach(leaveTrial);

const line = () => trial.page.shadowRoot?.querySelector('lark-line')?.shadowRoot;
const begin = () => line()?.querySelector<HTMLButtonElement>('.begin');
/** The caution of a drawn string. */
const caution = () => line()?.querySelector<HTMLElement>('.bar .string');

/** What keeps the button from being fully seen and pressed; empty when nothing does. */
function hiddenBy(button: HTMLElement | null | undefined): string[] {
  if (!button) return ['no button'];
  const { left, right, top, bottom } = button.getBoundingClientRect();
  const faults: string[] = [];
  if (left < 0 || top < 0 || right > innerWidth || bottom > innerHeight)
    faults.push(`${[left, top, right, bottom]} of ${innerWidth} x ${innerHeight}`);
  if (button.scrollWidth > button.clientWidth + 1) faults.push('its word is cut off');
  for (const [x, y] of [
    [left + 4, top + 4],
    [right - 4, top + 4],
    [left + 4, bottom - 4],
    [right - 4, bottom - 4],
    [(left + right) / 2, (top + bottom) / 2],
  ] as const) {
    let found: Element | null | undefined = document.elementFromPoint(x, y);
    while (found?.shadowRoot) {
      const inner: Element | null = found.shadowRoot.elementFromPoint(x, y);
      if (!inner || inner === found) break;
      found = inner;
    }
    if (found !== button) faults.push(`${found?.localName}.${found?.className} covers ${x}, ${y}`);
  }
  return faults;
}

const sizes = [
  [320, 480],
  [320, 640],
  [360, 640],
  [390, 844],
  [844, 390],
  [667, 320],
  [820, 1180],
  [1180, 820],
  [1440, 900],
] as const;

test.each(sizes.flatMap(([width, height]) => [[width, height, '100%'] as const, [width, height, '200%'] as const]))(
  'at %i x %i and text of %s Begin and the caution of a drawn string are fully on the screen, and stay there when the page is scrolled',
  async (width, height, text) => {
    await frame.viewport(width, height);
    document.documentElement.style.fontSize = text;
    // A program with a long title and much to read before.
    const long = {
      ...builtInPrograms[1]!,
      id: '00000000-0000-4000-8000-00000000aaaa',
      title: 'Haltekraftausdauertraining für kalte Wintermorgende im Dachgeschoss mit '.repeat(2).slice(0, 120),
    };
    await trial.state.app?.act.putProgram(long);
    await trial.state.app?.act.chooseProgram('00000000-0000-4000-8000-00000000aaaa');
    await expect.poll(() => textOf(line()?.querySelector('h1'))).toMatch(/^Haltekraft/);
    await expect.poll(() => hiddenBy(begin())).toEqual([]);
    for (const share of [0, 0.5, 1]) {
      scrollTo(0, document.documentElement.scrollHeight * share);
      await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
      expect([hiddenBy(begin()), hiddenBy(caution())]).toEqual([[], []]);
    }
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  },
);

const longTitle = 'Haltekraftausdauertraining für kalte Wintermorgende im Dachgeschoss mit '.repeat(2).slice(0, 120);

test.each(['100%', '200%'])(
  'in German, turned, and with a browser bar that comes and goes Begin stays whole, text of %s',
  async (text) => {
    document.documentElement.style.fontSize = text;
    try {
      useWords(await loadWords('de'));
      const id = '00000000-0000-4000-8000-00000000aaaa';
      await trial.state.app?.act.putProgram({ ...builtInPrograms[1]!, id, title: longTitle });
      await trial.state.app?.act.chooseProgram(id);
      await trial.state.app?.act.changeKit({ language: 'de' });
      for (const [width, height] of [
        [390, 844],
        [844, 390],
        [390, 844],
        [390, 730],
        [320, 420],
      ] as const) {
        await frame.viewport(width, height);
        await expect.poll(() => [width, height, hiddenBy(begin())]).toEqual([width, height, []]);
        expect(hiddenBy(caution())).toEqual([]);
        expect(textOf(caution())).toMatch(/gespannte Sehne/);
        expect(textOf(begin())).toMatch(/^Beginnen|^Los/);
      }
    } finally {
      useWords(await loadWords('en-GB'));
    }
  },
);

test.each([
  [320, 480],
  [360, 640],
  [844, 390],
] as const)('in forced colours, at %i x %i, Begin is whole', async (width, height) => {
  // What Chromium is asked through its own protocol; vitest's types name no commands.
  const ask = cdp() as unknown as { send(command: string, given: object): Promise<void> };
  const force = (value: string) =>
    ask.send('Emulation.setEmulatedMedia', { features: [{ name: 'forced-colors', value }] });
  await force('active');
  try {
    await frame.viewport(width, height);
    expect(matchMedia('(forced-colors: active)').matches).toBe(true);
    await expect.poll(() => hiddenBy(begin())).toEqual([]);
  } finally {
    await force('none');
  }
});

const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 5000, heldMs: 5000, outcome: 'held' } as const;
const drillOn = (date: string): DrillRecord => ({
  ...{ date, startedAt: `${date}T06:00:00+00:00`, endedAt: `${date}T06:02:00+00:00` },
  ...{ id: date, program: 'Other', reps: [rep], pain: false, effort: 3 },
});

/** What an archer may be when the caution has to be in sight. */
const situations: readonly (readonly [string, () => Promise<unknown>])[] = [
  ['at the first run', async () => undefined],
  ['after a drill', async () => trial.state.app?.act.putDrill(drillOn('2026-11-23'))],
  [
    'under 16, with a compound bow, on a long journal of reasons',
    async () => {
      await trial.state.app?.act.changeKit({ ageBand: '12 to 15', bow: 'compound' });
      await trial.state.app?.act.putDrill(drillOn('2026-11-02'));
    },
  ],
  [
    'after pain, at a light bow again',
    async () => {
      await trial.state.app?.act.putDay({ date: '2026-11-18', pain: true });
      for (const day of [19, 20, 21, 22, 23])
        await trial.state.app?.act.putDay({ date: `2026-11-${day}`, pain: false });
    },
  ],
  [
    'on a day that is better without a drill',
    async () => {
      for (const day of [19, 20, 21, 22, 23, 24]) await trial.state.app?.act.putDrill(drillOn(`2026-11-${day}`));
    },
  ],
  [
    'where today is done',
    async () => trial.state.app?.act.putDrill({ ...drillOn('2026-11-25'), program: trial.state.app.view.chosen.title }),
  ],
];

test.each(situations)(
  '%s the caution of a drawn string is in sight beside Begin, and nothing covers it',
  async (_, arrange) => {
    await arrange();
    await expect.poll(() => textOf(caution())).toMatch(/^Never let go of a drawn string/);
    for (const text of ['100%', '200%']) {
      document.documentElement.style.fontSize = text;
      for (const [width, height] of [
        [320, 480],
        [360, 640],
        [390, 844],
        [667, 320],
      ] as const) {
        await frame.viewport(width, height);
        await expect
          .poll(() => [width, height, text, hiddenBy(caution()), hiddenBy(begin())])
          .toEqual([width, height, text, [], []]);
        // No smaller than small text is at the usual size.
        expect(Number.parseFloat(getComputedStyle(caution()!).fontSize)).toBeGreaterThanOrEqual(14);
      }
    }
  },
);

test('the other cautions of a drill are never folded away', async () => {
  await trial.state.app?.act.changeKit({ ageBand: '12 to 15', bow: 'compound' });
  const numbers = () => line()?.querySelector('lark-prescription')?.shadowRoot;
  const open = () => [...(numbers()?.querySelectorAll('.cautions p') ?? [])].map(textOf);
  await expect.poll(open).toContainEqual(expect.stringContaining('Under 16'));
  expect(open()).toContainEqual(expect.stringContaining('A compound bow pulls hard'));
  // Said once, where the drill begins.
  expect(open().filter((said) => said.includes('drawn string'))).toEqual([]);
  expect(textOf(caution())).toMatch(/^Never let go of a drawn string/);
});

test('with a band there is no string to let go of, and its own caution is said', async () => {
  await trial.state.app?.act.changeKit({ ageBand: 'under 12' });
  const open = () =>
    [...(line()?.querySelector('lark-prescription')?.shadowRoot?.querySelectorAll('.cautions p') ?? [])].map(textOf);
  await expect.poll(open).toContainEqual(expect.stringContaining('Check the band'));
  expect(caution()).toBeNull();
});

test('with pain today there is the reason and nothing to begin, not even by key; on a rest day only the button begins', async () => {
  await trial.state.app?.act.putDay({ date: '2026-11-25', pain: true });
  const rest = () => textOf(line()?.querySelector('rest-day')?.shadowRoot?.querySelector('.reason'));
  await expect.poll(rest).toMatch(/pain/i);
  expect(begin()).toBeNull();
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'Space' }));
  await new Promise((done) => setTimeout(done, 50));
  expect(trial.state.app?.view.isDrilling).toBe(false);
  await trial.state.app?.act.putDay({ date: '2026-11-25' });
  await expect.poll(() => textOf(begin())).toBe('Begin');
  // Common practice, no source: six days in a row are the most (docs/prescription.md names where it is from).
  const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 5000, heldMs: 5000, outcome: 'held' } as const;
  for (const day of [19, 20, 21, 22, 23, 24]) {
    const date = `2026-11-${day}`;
    const at = { date, startedAt: `${date}T06:00:00+00:00`, endedAt: `${date}T06:02:00+00:00` };
    await trial.state.app?.act.putDrill({ ...at, id: date, program: 'Other', reps: [rep], pain: false, effort: 3 });
  }
  await expect.poll(() => textOf(begin())).toBe('Drill all the same');
  expect(begin()?.classList.contains('main')).toBe(false);
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'Space' }));
  await new Promise((done) => setTimeout(done, 50));
  expect(trial.state.app?.view.isDrilling).toBe(false);
  expect(await trial.faults()).toEqual([]);
});

test('done today says what was done and what is next, and beginning again is quiet', async () => {
  const chosen = trial.state.app?.view.chosen;
  const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 5000, heldMs: 5000, outcome: 'held' } as const;
  const record: DrillRecord = {
    ...{ id: 'one', program: chosen?.title ?? '', programId: chosen?.id, date: '2026-11-25', effort: 4, pain: false },
    ...{ startedAt: '2026-11-25T06:00:00+00:00', endedAt: '2026-11-25T06:02:00+00:00' },
    reps: [0, 1, 2, 3, 4].map((at) => ({ ...rep, rep: at })),
  };
  await expect.poll(() => begin()?.classList.contains('main')).toBe(true);
  await trial.state.app?.act.putDrill(record);
  await expect
    .poll(() => textOf(line()?.querySelector('.done')))
    .toMatch(/^Done today 5 of 5 reps held\. 25 s at full draw\./);
  expect(line()?.querySelector('.done lark-hold-ribbon')?.shadowRoot?.querySelector('[role=img]')).not.toBeNull();
  expect(textOf(line()?.querySelector('.next'))).toBe('Next time');
  expect(textOf(begin())).toBe('Begin again');
  expect(begin()?.classList.contains('main')).toBe(false);
  expect(await trial.faults()).toEqual([]);
});
