import { createJournal, type DayEntry } from '@larkhold/engine';
import { createKit, type Kit } from '@larkhold/store';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import type { App } from '../../shell/app-context.ts';
import './lark-routines.ts';
import type { LarkRoutines } from './lark-routines.ts';

/** Routines over a kit and a diary that are kept in memory. */
async function routinesOf(days: DayEntry[] = []) {
  const element = document.createElement('lark-routines');
  let kit: Kit = createKit();
  const stood = {
    days,
    get kit() {
      return kit;
    },
  };
  const show = () => {
    const view: Partial<App['view']> = { today: '2026-11-25', kit, journal: { ...createJournal(), days: stood.days } };
    const act: Partial<App['act']> = {
      newId: () => 'own-1',
      instant: () => '2026-11-25T07:00:00Z',
      changeKit: async (changes) => {
        kit = { ...kit, ...(typeof changes === 'function' ? changes(kit) : changes) };
        show();
        return true;
      },
      putDay: async (day) => {
        stood.days = [...stood.days.filter(({ date }) => date !== day.date), day];
        show();
        return true;
      },
    };
    element.app = { view, act } as App;
  };
  show();
  document.body.append(element);
  await element.updateComplete;
  return { element, stood };
}

async function press(element: LarkRoutines, words: string) {
  const found = [...element.renderRoot.querySelectorAll('button')].find((one) =>
    (one.getAttribute('aria-label') ?? one.textContent ?? '').trim().startsWith(words),
  );
  found!.click();
  await new Promise((resolve) => setTimeout(resolve, 10));
  await element.updateComplete;
}

function type(element: LarkRoutines, selector: string, text: string) {
  const field = element.renderRoot.querySelector<HTMLInputElement | HTMLTextAreaElement>(selector)!;
  field.value = text;
  field.dispatchEvent(new InputEvent('input'));
}

const said = (element: LarkRoutines) => element.renderRoot.querySelector('[role=status]')?.textContent;

test('a routine is ticked off and logged as minutes of work; it makes no drill; it can be undone', async () => {
  const { element, stood } = await routinesOf([{ date: '2026-11-25', note: 'Wet' }]);
  const fold = element.renderRoot.querySelector('details')!;
  fold.open = true;
  const boxes = [...fold.querySelectorAll<HTMLInputElement>('input[type=checkbox]')];
  for (const box of boxes) box.click();
  await element.updateComplete;
  expect(boxes.every(({ checked }) => checked)).toBe(true);
  fold.querySelector<HTMLInputElement>('[name=effort]')!.value = '3';
  await press(element, 'Log as mobility');
  expect(stood.days).toMatchObject([
    { date: '2026-11-25', note: 'Wet', work: [{ kind: 'mobility', minutes: 8, effort: 3 }] },
  ]);
  expect(said(element)).toBe('Logged today: 8\u00a0min of mobility.');
  expect(boxes.some(({ checked }) => checked)).toBe(false);
  await press(element, 'Take it back');
  expect(stood.days[0]?.work).toBeUndefined();
  expect(stood.days[0]?.note).toBe('Wet');
});

test('a routine of one’s own is kept, changed and removed; a broken one is not', async () => {
  const { element, stood } = await routinesOf();
  await press(element, 'New routine');
  await press(element, 'Keep it');
  expect(said(element)).toBe('Not kept: expected a title of 1 to 120 characters.');
  expect(stood.kit.routines).toBeUndefined();
  type(element, '.title', 'Hips');
  type(element, 'textarea', 'Circles, 10\nSquats, 8');
  await press(element, 'Keep it');
  expect(stood.kit.routines).toEqual([
    { id: 'own-1', kind: 'strength', title: 'Hips', lines: ['Circles, 10', 'Squats, 8'], minutes: 15 },
  ]);
  await press(element, 'Change: Hips');
  type(element, '.title', '<b>Hips</b>');
  await press(element, 'Keep it');
  expect(stood.kit.routines?.[0]?.title).toBe('<b>Hips</b>');
  expect(element.renderRoot.querySelector('b')).toBeNull();
  await press(element, 'Remove: <b>Hips</b>');
  expect(stood.kit.routines).toEqual([]);
});

test('has no fault that axe knows', async () => {
  const { element } = await routinesOf();
  for (const fold of element.renderRoot.querySelectorAll('details')) fold.open = true;
  await press(element, 'New routine');
  expect((await axe.run(element)).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
});
