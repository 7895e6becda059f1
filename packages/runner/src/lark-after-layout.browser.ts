import type { DrillRecord } from '@larkhold/engine';
import { afterEach, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import './index.ts';

const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' } as const;
const record: DrillRecord = {
  ...{ id: 'long', program: 'Morning holds', date: '2026-11-25' },
  ...{ startedAt: '2026-11-25T06:30:00+01:00', endedAt: '2026-11-25T07:00:00+01:00' },
  reps: Array.from({ length: 20 }, (_, at) => ({ ...rep, rep: at })),
};

afterEach(async () => {
  await page.viewport(414, 896);
});

/** The page as the app shows it: over the whole screen, and scrolled inside. */
async function show(shown: DrillRecord, flipped = false) {
  const frame = document.createElement('div');
  Object.assign(frame.style, { position: 'fixed', inset: '0', overflowY: 'auto' });
  const after = Object.assign(document.createElement('lark-after'), { record: shown, flipped });
  after.style.minHeight = '100%';
  frame.append(after);
  document.body.append(frame);
  await after.updateComplete;
  return { after, frame };
}

const sizes = [
  [320, 480],
  [360, 640],
  [390, 844],
  [844, 390],
  [1180, 820],
] as const;

test.each(sizes.flatMap(([width, height]) => [[width, height, '100%'] as const, [width, height, '200%'] as const]))(
  'at %i x %i and text of %s Save is on the screen after 20 reps, from the top of the page to its end',
  async (width, height, text) => {
    await page.viewport(width, height);
    document.documentElement.style.fontSize = text;
    const { after, frame } = await show(record);
    for (const share of [0, 1]) {
      frame.scrollTop = frame.scrollHeight * share;
      const box = after.renderRoot.querySelector('button[type=submit]')!.getBoundingClientRect();
      expect(box.top).toBeGreaterThanOrEqual(0);
      expect(box.bottom).toBeLessThanOrEqual(height);
      expect(box.right).toBeLessThanOrEqual(width);
    }
    expect(frame.scrollWidth).toBeLessThanOrEqual(width);
  },
);

test('two presses save a drill of 20 reps on a phone, without scrolling', async () => {
  await page.viewport(390, 844);
  const { after, frame } = await show(record);
  const seven = after.renderRoot.querySelectorAll<HTMLInputElement>('input[name=effort]')[7]!;
  const box = seven.getBoundingClientRect();
  // WCAG 2.2, 2.5.8: 24 by 24 CSS pixels at least.
  expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24);
  expect(box.bottom).toBeLessThan(after.renderRoot.querySelector('.done')!.getBoundingClientRect().top);
  let saved: unknown;
  after.addEventListener('lark-after-done', (event) => {
    saved = (event as CustomEvent).detail.effort;
  });
  seven.click();
  after.renderRoot.querySelector<HTMLElement>('button[type=submit]')!.click();
  expect([saved, frame.scrollTop]).toEqual([7, 0]);
});

test('first it closes the drill, large, also for the mirror; a press sends it away', async () => {
  await page.viewport(390, 844);
  const { after } = await show(record, true);
  const closing = () => after.renderRoot.querySelector<HTMLElement>('.closing');
  expect(closing()?.textContent?.replace(/\s+/g, ' ').trim()).toBe('Done 20 of 20');
  expect(getComputedStyle(closing()!).transform).toBe('matrix(-1, 0, 0, 1, 0, 0)');
  const size = Number.parseFloat(getComputedStyle(closing()!.querySelector('.word')!).fontSize);
  // ISO 9241-3, 16 minutes of arc at 2 m: 9.3 mm; a phone's pixel is 25.4 / 160 mm, a capital 0.7 of the font.
  expect(size * 0.7 * (25.4 / 160)).toBeGreaterThan(9.3);
  closing()!.dispatchEvent(new PointerEvent('pointerdown'));
  await after.updateComplete;
  expect(closing()).toBeNull();
});

// WCAG 2.2, 2.4.11: what has the focus is not wholly covered.
test('what has the focus is never under the closing frame', async () => {
  const { after } = await show(record);
  const [, one] = after.renderRoot.querySelectorAll<HTMLInputElement>('input[name=effort]');
  one!.focus();
  await after.updateComplete;
  const { left, top, width, height } = one!.getBoundingClientRect();
  expect((after.renderRoot as ShadowRoot).elementFromPoint(left + width / 2, top + height / 2)).toBe(one);
});
