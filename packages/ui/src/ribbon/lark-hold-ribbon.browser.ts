import axe from 'axe-core';
import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import '../tokens.css';
import './index.ts';
import type { LarkHoldRibbon } from './lark-hold-ribbon.ts';
import type { RibbonRep } from './ribbon-rep.ts';

const rep: RibbonRep = { block: 0, set: 0, prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' };
const mixed: RibbonRep[] = [
  rep,
  { ...rep, heldMs: 12_000, outcome: 'short', why: 'tired' },
  { ...rep, heldMs: 0, outcome: 'skipped' },
  { ...rep, heldMs: 9000, outcome: 'unsure' },
];

async function ribbonOf(reps: readonly RibbonRep[], more: Partial<LarkHoldRibbon> = {}, width = '320px') {
  const frame = document.querySelector('main') ?? document.createElement('main');
  frame.style.width = width;
  const ribbon = Object.assign(document.createElement('lark-hold-ribbon'), { reps, ...more });
  frame.append(ribbon);
  document.body.append(frame);
  await ribbon.updateComplete;
  return ribbon;
}

const pathOf = (ribbon: LarkHoldRibbon, name: string) => ribbon.renderRoot.querySelector(`.${name}`)?.getAttribute('d');

test.each(['dark', 'light', 'contrast'])(
  'axe finds nothing, and a screen reader hears what is drawn, %s',
  async (theme) => {
    document.documentElement.dataset.theme = theme;
    const ribbon = await ribbonOf(mixed);
    const words = ribbon.renderRoot.querySelector('[role=img]')?.getAttribute('aria-label')?.replaceAll('\u00a0', ' ');
    expect(words).toBe(
      '4 reps: 1 held, 1 short, 1 skipped, 1 unsure. Rep 2: 12 s of 30 s, tired. Rep 3: skipped. Rep 4: unsure.',
    );
    await ribbonOf(mixed, { picks: true });
    expect((await axe.run(document.body, { resultTypes: ['violations'] })).violations).toEqual([]);
  },
);

test('how a rep ended is shown by shape: each kind is drawn in a way of its own', async () => {
  const drawnOf = async (one: RibbonRep) => {
    const ribbon = await ribbonOf([one]);
    return ['full', 'hollow', 'missing', 'marks', 'coming'].map((name) => pathOf(ribbon, name)).join('|');
  };
  const shapes = await Promise.all(
    [...mixed, { ...mixed[1]!, why: 'form' as const }, { ...mixed[1]!, why: undefined }].map(drawnOf),
  );
  expect(new Set(shapes).size).toBe(6);
});

test.each([1, 20, 600])('%i strokes stay inside of 320 px', async (count) => {
  const ribbon = await ribbonOf(Array.from({ length: count }, () => rep));
  const box = ribbon.renderRoot.querySelector('svg')!.getBoundingClientRect();
  expect(box.width).toBeGreaterThan(4);
  expect(box.right).toBeLessThanOrEqual(ribbon.getBoundingClientRect().right + 0.5);
  // A stroke is never less than a pixel wide.
  const strokes = pathOf(ribbon, 'full')?.split('M').length ?? 0;
  expect(strokes - 1).toBe(count);
});

test('a rep is chosen with the arrow keys and by pressing its stroke', async () => {
  const ribbon = await ribbonOf(mixed, { picks: true, picked: 0 });
  const picked: number[] = [];
  ribbon.addEventListener('lark-pick', (event) => {
    const { index } = (event as CustomEvent<{ index: number }>).detail;
    picked.push(index);
    ribbon.picked = index;
  });
  await userEvent.tab();
  await userEvent.keyboard('{ArrowRight}{ArrowRight}');
  expect(picked).toEqual([1, 2]);
  await ribbon.updateComplete;
  expect(ribbon.renderRoot.querySelector('[role=slider]')?.getAttribute('aria-valuetext')).toBe('Rep 3: skipped');
  const box = ribbon.renderRoot.querySelector('svg')!.getBoundingClientRect();
  const press = { clientX: box.left + box.width * 0.87, clientY: box.top + box.height / 2, bubbles: true };
  ribbon.renderRoot.querySelector('svg')?.dispatchEvent(new PointerEvent('pointerdown', press));
  expect(picked.at(-1)).toBe(3);
});

test('draws and says a rep as a camera saw it, where one did', async () => {
  // The clock has 30 s of it, the camera 12: the same as one that was let down after 12.
  const seen = await ribbonOf([{ ...rep, seen: { fromMs: 0, toMs: 12_000 } }, rep]);
  const [broken, missing] = [pathOf(seen, 'full'), pathOf(seen, 'missing')];
  const words = seen.renderRoot.querySelector('[role=img]')?.getAttribute('aria-label');
  document.body.replaceChildren();
  const let12 = await ribbonOf([{ ...rep, heldMs: 12_000, outcome: 'short' }, rep]);
  expect([broken, missing]).toEqual([pathOf(let12, 'full'), pathOf(let12, 'missing')]);
  expect(words).toBe(let12.renderRoot.querySelector('[role=img]')?.getAttribute('aria-label'));
});
