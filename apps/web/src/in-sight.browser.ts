import { createJournal, type DrillRecord } from '@larkhold/engine';
import { loadWords, useWords } from '@larkhold/words';
import { afterEach, expect, test } from 'vitest';
import { page as frame } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { leaveTrial, openTrialApp, type TrialApp } from './shell/trial-app.ts';

/** A page that is fetched when it is opened, on a machine with much else to do. */
const LOADED = { timeout: 30_000 };
let trial: TrialApp;

afterEach(leaveTrial);

const inPlace = (place: string, selector: string) =>
  trial.page.shadowRoot?.querySelector(place)?.shadowRoot?.querySelector<HTMLElement>(selector);

/** How much of an element is on the screen, also where something over it scrolls by itself: 0 to 1. */
async function shareInSight(element: Element): Promise<number> {
  return new Promise((tell) => {
    const watch = new IntersectionObserver(([seen]) => {
      watch.disconnect();
      tell(seen?.intersectionRatio ?? 0);
    });
    watch.observe(element);
  });
}

async function openGerman(hash: string, width: number, height: number, text: string): Promise<void> {
  await frame.viewport(width, height);
  document.documentElement.style.fontSize = text;
  useWords(await loadWords('de'));
  trial = await openTrialApp(hash);
  await trial.state.app?.act.changeKit({ language: 'de' });
}

test.each([
  [320, 640],
  [360, 640],
  [390, 844],
  [844, 390],
])('in German and twice the text Save is whole on the bench, at %i x %i', async (width, height) => {
  await openGerman('#/bench/new', width, height, '200%');
  const save = () => inPlace('bench-page', '.bar button.main');
  await expect.poll(() => save()?.textContent?.trim(), LOADED).toBe('Speichern');
  await expect.poll(async () => shareInSight(save()!)).toBeGreaterThan(0.99);
});

test('with twice the text on a phone that lies on its side all four places can be pressed without scrolling', async () => {
  await openGerman('#/kit', 844, 390, '200%');
  const places = () => [...(trial.page.shadowRoot?.querySelectorAll('nav ul a') ?? [])];
  await expect.poll(() => places().length, LOADED).toBe(4);
  for (const place of places()) await expect.poll(() => shareInSight(place)).toBeGreaterThan(0.99);
});

test.each([320, 390])(
  'with twice the text a program of the rack is described in words, not letter by letter, at %i px',
  async (width) => {
    await openGerman('#/rack', width, 844, '200%');
    const told = () => inPlace('lark-rack', 'li p');
    await expect.poll(() => told()?.textContent, LOADED).toContain('min');
    // "Leichter" in twice the text
    expect(told()!.clientWidth).toBeGreaterThan(110);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  },
);

test('a focus of 200 signs is read whole in its field, and stays one line of words', async () => {
  await frame.viewport(360, 640);
  trial = await openTrialApp('#/week');
  const field = () => inPlace('week-page', 'textarea.focus') as HTMLTextAreaElement | null;
  await expect.poll(field, LOADED).toBeTruthy();
  const long = 'Low front shoulder, and wait for the back before the hand. '.repeat(4).slice(0, 200).trim();
  field()!.value = long.replace(', and', ',\n and');
  field()!.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await expect.poll(() => field()?.value).toBe(long);
  const { scrollHeight, clientHeight, scrollWidth, clientWidth } = field()!;
  expect([scrollHeight <= clientHeight + 1, scrollWidth <= clientWidth + 1]).toEqual([true, true]);
  const enter = new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true });
  field()!.dispatchEvent(enter);
  expect(enter.defaultPrevented).toBe(true);
});

test('on a small phone the last drill leads from the top of the journal to itself, opened and in sight', async () => {
  await frame.viewport(360, 640);
  const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 9000, heldMs: 9000, outcome: 'held' } as const;
  const on = (date: string): DrillRecord => ({
    ...{ id: date, program: 'Attic mornings', date, reps: [{ ...rep, rep: 0 }] },
    ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:20:00Z` },
  });
  trial = await openTrialApp('#/journal');
  const drills = ['2026-11-20', '2026-11-23', '2026-11-10'].map(on);
  await trial.state.app?.act.takeIn({ journal: { ...createJournal(), drills } });
  const last = () => inPlace('lark-journal', 'a.last');
  await expect.poll(() => last()?.getAttribute('href'), LOADED).toBe('#/journal/2026-11-23');
  expect(await shareInSight(last()!)).toBe(1);
  last()?.click();
  const entry = () => inPlace('lark-journal', 'month-drills')?.shadowRoot?.querySelector('lark-drill-entry');
  await expect.poll(() => entry()?.renderRoot.querySelector('details')?.open).toBe(true);
  await expect.poll(() => entry()!.getBoundingClientRect().top).toBeLessThan(300);
  expect(entry()!.record?.date).toBe('2026-11-23');
});

test('on a small phone a first run shows its numbers above Begin without scrolling, and on a usual one the way back from a file too', async () => {
  await frame.viewport(360, 640);
  trial = await openTrialApp('#/line');
  const numbers = () => inPlace('lark-line', 'lark-prescription')?.shadowRoot?.querySelector<HTMLElement>('.large');
  const bar = () => inPlace('lark-line', '.bar');
  await expect.poll(() => numbers()?.getBoundingClientRect().height ?? 0, LOADED).toBeGreaterThan(20);
  await expect
    .poll(() => bar()!.getBoundingClientRect().top - numbers()!.getBoundingClientRect().bottom)
    .toBeGreaterThan(0);
  await frame.viewport(390, 844);
  const restore = () => inPlace('lark-line', '.first file-drop');
  await expect
    .poll(() => bar()!.getBoundingClientRect().top - restore()!.getBoundingClientRect().bottom)
    .toBeGreaterThan(0);
});
