import type { DayEntry } from '@larkhold/engine';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import type { DayChange } from './day-entry.ts';
import './day-entry.ts';

async function open(entry: DayEntry) {
  const element = document.createElement('day-entry');
  element.entry = entry;
  const changes: Partial<DayEntry>[] = [];
  element.addEventListener('day-change', (event) => {
    if (!(event instanceof CustomEvent)) return;
    const { detail }: CustomEvent<DayChange> = event;
    changes.push(detail.changes);
    element.entry = { ...entry, ...element.entry, ...detail.changes };
  });
  document.body.append(element);
  await element.updateComplete;
  const counter = (name: string) => {
    const field = [...element.renderRoot.querySelectorAll('count-field')].find((one) => one.name === name);
    if (!field) throw new Error(`there is no field for ${name}`);
    return field.renderRoot;
  };
  return { element, changes, counter };
}

test('arrows by step and by typing, and a distance', async () => {
  const { element, changes, counter } = await open({ date: '2026-11-25', note: 'Windy' });
  counter('Practice arrows').querySelectorAll('button')[1]?.click();
  await element.updateComplete;
  const field = counter('Scoring arrows').querySelector('input')!;
  field.value = '72';
  field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await element.updateComplete;
  const distance = element.renderRoot.querySelectorAll<HTMLInputElement>('.beside input')[1]!;
  distance.value = '18';
  distance.dispatchEvent(new Event('change', { bubbles: true }));
  expect(changes.at(-1)).toEqual({
    arrows: [
      { kind: 'practice', count: 6 },
      { kind: 'scoring', count: 72, distanceM: 18 },
    ],
  });
  expect(element.entry?.note).toBe('Windy');
});

test('the check at home is put away by place, and arrows bring their place along', async () => {
  const { element, changes, counter } = await open({ date: '2026-11-25' });
  const check = () => element.renderRoot.querySelector('range-check');
  await check()?.updateComplete;
  expect(check()?.renderRoot.textContent).toMatch(/Local rules .* first/);
  expect(check()?.renderRoot.querySelector('button')).toBeNull();

  element.place = 'Garden';
  await element.updateComplete;
  await check()?.updateComplete;
  let dismissed = 0;
  element.addEventListener('range-check-dismiss', () => {
    dismissed += 1;
  });
  check()?.renderRoot.querySelector('button')?.click();
  expect(dismissed).toBe(1);
  element.checkedPlaces = ['Garden'];
  await element.updateComplete;
  expect(check()).toBeNull();
  counter('Practice arrows').querySelectorAll('button')[1]?.click();
  expect(changes.at(-1)).toEqual({ arrows: [{ kind: 'practice', count: 6 }], place: 'Garden' });

  element.place = 'Behind the barn';
  await element.updateComplete;
  expect(check()).not.toBeNull();
});

test('pain is answered yes, no or not at all, and yes brings the advice', async () => {
  const { element, changes } = await open({ date: '2026-11-25' });
  const [no, yes] = element.renderRoot.querySelectorAll<HTMLButtonElement>('.pain button');
  expect(element.renderRoot.textContent).toContain('Tired muscles are not meant.');
  yes!.click();
  await element.updateComplete;
  expect(element.renderRoot.querySelector('.caution')?.textContent).toContain('doctor or physiotherapist');
  yes!.click();
  await element.updateComplete;
  no!.click();
  await element.updateComplete;
  expect([no, yes].map((one) => one!.getAttribute('aria-pressed'))).toEqual(['true', 'false']);
  expect(element.renderRoot.querySelector('.caution')?.textContent).toBe('');
  expect(changes).toEqual([{ pain: true }, { pain: undefined }, { pain: false }]);
});

test.each(['dark', 'light', 'contrast'])('axe finds nothing and nothing overflows 320 px, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const { element } = await open({
    date: '2026-11-25',
    pain: true,
    feel: 4,
    arrows: [{ kind: 'practice', count: 60, distanceM: 30 }],
    work: [{ kind: 'strength', minutes: 40 }],
  });
  element.place = 'Garden';
  element.style.width = '288px';
  await element.updateComplete;
  expect(element.scrollWidth).toBeLessThanOrEqual(288);
  expect((await axe.run(element, { resultTypes: ['violations'] })).violations).toEqual([]);
});
