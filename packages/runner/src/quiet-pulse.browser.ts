import { expect, test, vi } from 'vitest';
import './index.ts';
import { defaultRunnerSettings, type RunnerSettings } from './runner-settings.ts';
import { trialDrill } from './trial-drill.ts';

// Cues follow from the prescription of the trial: ready at 0 s, draw at 10, hold at 13, half at 18, count at 20, 21 and 22.

async function drillOf(settings: Partial<RunnerSettings> = {}) {
  const { drill, environment } = await trialDrill({ settings: { ...defaultRunnerSettings, ...settings } });
  const glance = drill.renderRoot.querySelector('lark-glance')!;
  const edge = () => glance.renderRoot.querySelector<HTMLElement>('.edge')!;
  /** Whether the edge was brightened while the clock went on. */
  const pulses = async (spanMs: number) => {
    await drill.updateComplete;
    await glance.updateComplete;
    for (const running of edge().getAnimations()) running.cancel();
    environment.pass(spanMs);
    await drill.updateComplete;
    await glance.updateComplete;
    return edge().getAnimations().length;
  };
  return { drill, environment, edge, pulses };
}

test('in quiet hours each cue brightens the edge once, and nothing else does', async () => {
  const { drill, edge, pulses } = await drillOf({ quiet: true });
  drill.begin();
  expect(await pulses(9_000)).toBe(0);
  expect(await pulses(1_100)).toBe(1);
  expect(await pulses(2_000)).toBe(0);
  expect(await pulses(1_000)).toBe(1);
  expect(await pulses(6_000)).toBe(1);
  // A frame around the display, not the display: less than a fifth of it is bright.
  const { clientWidth, clientHeight, offsetWidth, offsetHeight } = edge();
  expect(1 - (clientWidth * clientHeight) / (offsetWidth * offsetHeight)).toBeLessThan(0.2);
});

test('a let-down asked for early is seen at once', async () => {
  const { drill, environment, pulses } = await drillOf({ quiet: true });
  drill.begin();
  environment.pass(15_000);
  expect(await pulses(1_000)).toBe(0);
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'KeyL' }));
  await drill.updateComplete;
  const glance = drill.renderRoot.querySelector('lark-glance')!;
  await glance.updateComplete;
  expect(glance.renderRoot.querySelector('.edge')!.getAnimations()).toHaveLength(1);
});

test('with sound the edge stays dark; without any it takes the place of sound', async () => {
  const { drill, environment, pulses } = await drillOf();
  drill.begin();
  expect(await pulses(10_100)).toBe(0);
  environment.trouble({ kind: 'none', message: 'This device has no sound. Follow the screen.' });
  await drill.updateComplete;
  expect(await pulses(3_000)).toBe(1);
  document.body.replaceChildren();
  const silent = await drillOf({ soundLevel: 0 });
  silent.drill.begin();
  expect(await silent.pulses(10_100)).toBe(1);
});

test('where motion is not wanted it comes and goes without fading', async () => {
  vi.spyOn(window, 'matchMedia').mockReturnValue({
    matches: true,
    addEventListener: () => undefined,
    removeEventListener: () => undefined,
  } as unknown as MediaQueryList);
  const { drill, edge, pulses } = await drillOf({ quiet: true });
  drill.begin();
  expect(await pulses(10_100)).toBe(1);
  const { effect } = edge().getAnimations()[0]!;
  const opacities = (effect as KeyframeEffect).getKeyframes().map(({ opacity }) => opacity);
  expect(new Set(opacities).size).toBe(1);
});
