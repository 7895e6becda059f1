import axe from 'axe-core';
import { afterEach, expect, test } from 'vitest';
import './tokens.css';
import { chartColours } from './chart-colours.ts';
import './trend-chart.ts';
import type { TrendPoint } from '@larkhold/engine';

afterEach(() => {
  location.hash = '';
});

const points: TrendPoint[] = [
  { day: '2026-11-23', values: { hold: 900_000, ratio: 0.9 } },
  { day: '2026-11-24', values: { hold: 0 } },
  { day: '2026-11-25', values: { hold: 600_000, ratio: 1.25 } },
];

async function open(kind: 'hold' | 'ratio' | 'feel') {
  const chart = document.createElement('trend-chart');
  chart.kind = kind;
  chart.points = points;
  chart.step = 'day';
  chart.style.width = '288px';
  document.body.append(chart);
  await chart.updateComplete;
  return chart;
}

test('the chart says what it shows, and the table leads to the days', async () => {
  const chart = await open('hold');
  expect(chart.renderRoot.querySelector('.plot')?.getAttribute('aria-label')).toMatch(/most 15\smin/);
  expect(chart.renderRoot.querySelector('canvas')).not.toBeNull();
  const details = chart.renderRoot.querySelector('details')!;
  details.open = true;
  await expect.poll(() => chart.renderRoot.querySelectorAll('tbody tr').length).toBe(3);
  expect(chart.renderRoot.querySelector('tbody a')?.getAttribute('href')).toBe('#/week/2026-W48/2026-11-25');
});

test('a press on a point opens its day', async () => {
  const chart = await open('hold');
  const over = chart.renderRoot.querySelector<HTMLElement>('.u-over')!;
  const box = over.getBoundingClientRect();
  const place = { clientX: box.left + 2, clientY: box.top + 20, bubbles: true, composed: true };
  over.dispatchEvent(new MouseEvent('mouseenter', place));
  over.dispatchEvent(new MouseEvent('mousemove', place));
  await expect.poll(() => chart.renderRoot.querySelector('.head .dim:not(.unit)')?.textContent).toContain('23');
  for (const name of ['mousedown', 'mouseup', 'click']) over.dispatchEvent(new MouseEvent(name, place));
  expect(location.hash).toBe('#/week/2026-W48/2026-11-23');
});

test('the ratio is shown with its caution, and a trend with no value says so', async () => {
  expect((await open('ratio')).renderRoot.textContent).toContain('It does not predict injury.');
  expect((await open('feel')).renderRoot.textContent).toContain('Nothing yet.');
});

test.each(['dark', 'light', 'contrast'])('axe finds nothing and nothing overflows 320 px, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const chart = await open('ratio');
  chart.renderRoot.querySelector('details')!.open = true;
  await expect.poll(() => chart.renderRoot.querySelectorAll('tbody tr').length).toBe(2);
  expect(chart.scrollWidth).toBeLessThanOrEqual(288);
  expect((await axe.run(chart, { resultTypes: ['violations'] })).violations).toEqual([]);
});

test('the system’s own colours are those of the page, dark or light', async () => {
  const { style } = document.documentElement;
  style.setProperty('--ink', 'CanvasText');
  const seen: string[] = [];
  for (const scheme of ['dark', 'light']) {
    style.colorScheme = scheme;
    await new Promise(requestAnimationFrame); // colours are read once a frame
    await new Promise(requestAnimationFrame);
    seen.push(chartColours().ink);
  }
  style.removeProperty('--ink');
  style.removeProperty('color-scheme');
  expect(seen).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
});

test('a theme that changes within a frame has its own colours at once', () => {
  const inks = ['light', 'dark'].map((theme) => {
    document.documentElement.dataset.theme = theme;
    return chartColours().ink;
  });
  expect(new Set(inks).size).toBe(2);
});
