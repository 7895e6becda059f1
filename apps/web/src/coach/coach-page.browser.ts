import { builtInPrograms, createHandOver, createJournal, formatHandOver, parseHandOver } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import axe from 'axe-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { App, AppActions } from '../app-context.ts';
import '../look/tokens.css';
import './coach-page.ts';

beforeEach(() => {
  document.documentElement.lang = 'en';
});
afterEach(() => {
  document.body.replaceChildren();
  document.documentElement.removeAttribute('data-theme');
});

const handOver = createHandOver({
  journal: { ...createJournal(), days: [{ date: '2026-11-20', pain: true, note: '<b>Elbow</b>' }] },
  ...{ archer: 'Ines', archerId: 'ines', from: '2026-11-01', to: '2026-11-25', madeAt: '2026-11-25T20:00:00Z' },
  includesNotes: true,
});

async function open() {
  const page = document.createElement('coach-page');
  const saved: { name: string; text: string }[] = [];
  const nothing = async (): Promise<void> => undefined;
  const act: AppActions = {
    ...{ chooseProgram: nothing, putProgram: nothing, removeProgram: nothing, putDrill: nothing, changeKit: nothing },
    ...{ removeDrills: nothing, writeRep: nothing, putRunning: nothing, loadDemo: nothing, removeDemo: nothing },
    ...{ keepStored: nothing, saveBackup: nothing, mergeInto: nothing, replaceJournal: nothing, putDay: nothing },
    ...{ putWeek: nothing, putMajorGoal: nothing },
    setDrilling: () => undefined,
    saveFile: (name, text) => saved.push({ name, text }),
    trySound: () => undefined,
    newId: () => 'new',
    instant: () => '2026-11-26T08:00:00Z',
    storedJournal: async () => createJournal(),
  };
  const app: App = {
    view: {
      ...{ today: '2026-11-28', programs: builtInPrograms, openedIds: new Set<string>(), chosen: builtInPrograms[0]! },
      ...{ journal: createJournal(), kit: createKit(), where: 'disk', persistence: 'kept', isDrilling: false },
    },
    act,
  };
  page.app = app;
  document.body.append(page);
  await page.updateComplete;
  const take = async (files: File[]) => {
    page.renderRoot.querySelector('file-drop')?.dispatchEvent(new CustomEvent('files-take', { detail: files }));
    await expect.poll(() => page.renderRoot.querySelectorAll('tbody tr, .notice').length).toBeGreaterThan(0);
  };
  return { page, take, saved, app };
}

test('a squad shows pain and silence; what cannot be read is told by name', async () => {
  const { page, take } = await open();
  await take([new File([formatHandOver(handOver)], 'ines.json'), new File(['{'], 'cut.json')]);
  expect(page.renderRoot.querySelector('.notice')?.textContent).toContain('cut.json');
  const row = page.renderRoot.querySelector('tbody tr')?.textContent ?? '';
  expect(row).toContain('Ines');
  expect(row).toMatch(/1\sday, last/);
  expect(row).toMatch(/silent for 8\sdays/);
});

test('an answer goes into a file, and the archer’s records stay as they were', async () => {
  const { page, take, saved, app } = await open();
  await take([new File([formatHandOver(handOver)], 'ines.json')]);
  const sheet = page.renderRoot.querySelector('archer-sheet')!;
  sheet.app = app;
  await sheet.updateComplete;
  expect(sheet.renderRoot.textContent).toContain('<b>Elbow</b>');
  const [by, comment] = sheet.renderRoot.querySelectorAll<HTMLInputElement>('form input, form textarea');
  by!.value = 'Coach';
  comment!.value = 'Rest the elbow.';
  for (const field of [by!, comment!]) field.dispatchEvent(new InputEvent('input'));
  await sheet.updateComplete;
  sheet.renderRoot.querySelector('form')?.requestSubmit();
  await expect.poll(() => saved.length).toBe(1);
  const read = parseHandOver(saved[0]!.text);
  expect(read).toEqual({
    ok: true,
    handOver: { ...handOver, answers: [{ by: 'Coach', comment: 'Rest the elbow.', madeAt: '2026-11-26T08:00:00Z' }] },
  });
});

test.each(['dark', 'light', 'contrast'])('axe finds nothing and nothing overflows 320 px, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const { page, take, app } = await open();
  page.style.width = '288px';
  await take([new File([formatHandOver(handOver)], 'ines.json')]);
  const sheet = page.renderRoot.querySelector('archer-sheet')!;
  sheet.app = app;
  await sheet.updateComplete;
  expect(page.scrollWidth).toBeLessThanOrEqual(288);
  expect((await axe.run(page, { resultTypes: ['violations'] })).violations).toEqual([]);
});
