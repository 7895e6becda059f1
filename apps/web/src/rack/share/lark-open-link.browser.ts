import { builtInPrograms, type Program } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import axe from 'axe-core';
import { afterEach, expect, test } from 'vitest';
import type { App } from '../../shell/app-context.ts';
import './lark-open-link.ts';
import { formatPayload } from './program-link.ts';

const there: Program = { ...builtInPrograms[0]!, id: '6d1a3a0c-52b7-4b8e-8d60-7f1f6a1b2c3d', title: 'Attic mornings' };
const newId = '00000000-0000-4000-8000-000000000001';

async function open(payload: string, programs: readonly Program[] = [...builtInPrograms, there]) {
  const put: Program[] = [];
  const view: Partial<App['view']> = { today: '2026-11-25', programs, kit: createKit() };
  const act: Partial<App['act']> = { newId: () => newId, putProgram: async (program) => put.push(program) > 0 };
  const page = document.createElement('lark-open-link');
  Object.assign(page, { payload, app: { view, act } as App });
  document.body.append(page);
  await page.updateComplete;
  const press = async (words: string) => {
    const roots = [page.renderRoot, page.renderRoot.querySelector('lark-file-answer')?.renderRoot];
    const buttons = roots.flatMap((root) => [...(root?.querySelectorAll('button') ?? [])]);
    const button = buttons.find((one) => one.textContent?.trim() === words);
    if (!button) throw new TypeError(`no button says ${words}`);
    button.click();
    await page.updateComplete;
    await page.renderRoot.querySelector('lark-file-answer')?.updateComplete;
  };
  return { page, put, press, words: () => page.renderRoot.textContent ?? '' };
}

afterEach(() => {
  history.replaceState(null, '', '#');
});

test('a link shows the program, and adds nothing until accepted', async () => {
  const stranger: Program = { ...there, id: undefined, title: 'Attic evenings', author: 'Someone' };
  const { page, put, press, words } = await open(formatPayload(stranger));
  expect(words()).toContain('Attic evenings');
  expect(words()).toContain('by Someone');
  expect(words().replaceAll('\u00a0', ' ')).toContain('25 s'); // at full draw: 5 holds of 5 s
  expect(page.renderRoot.querySelector('lark-timeline-picture')).toBeTruthy();
  expect((await axe.run(page)).violations.map(({ id }) => id)).toEqual([]);
  expect(put).toEqual([]);
  await press('Add to the rack');
  await expect.poll(() => put).toEqual([{ ...stranger, id: newId }]);
  await expect.poll(() => location.hash).toBe(`#/rack/${newId}`);
});

test('one that is there, whole and unchanged, is not offered again', async () => {
  const { page, words } = await open(formatPayload(there));
  expect(words()).toContain('This program is in the rack already.');
  expect(page.renderRoot.querySelector('button')).toBeNull();
});

test('a clash asks: keep both, replace, or leave it', async () => {
  const changed: Program = { ...there, about: 'Slower.' };
  const { page, put, press } = await open(formatPayload(changed));
  await press('Add to the rack');
  expect(page.renderRoot.querySelector('lark-file-answer')?.renderRoot.querySelector('dialog')?.open).toBe(true);
  await press('Leave it');
  await expect.poll(() => page.renderRoot.querySelector('lark-file-answer')).toBeNull();
  expect(put).toEqual([]);
  await press('Add to the rack');
  await press('Keep both');
  await expect.poll(() => put[0]).toEqual({ ...changed, id: newId, title: 'Attic mornings (2)' });
  await press('Add to the rack');
  await press('Replace');
  await expect.poll(() => put[1]).toEqual(changed);
});

test('a broken link says what is wrong with it, and leads to the rack', async () => {
  const { page, put, words } = await open('****');
  expect(words()).toContain('characters in it that do not belong');
  expect(page.renderRoot.querySelector('a')?.getAttribute('href')).toBe('#/rack');
  expect((await axe.run(page)).violations.map(({ id }) => id)).toEqual([]);
  expect(put).toEqual([]);
});
