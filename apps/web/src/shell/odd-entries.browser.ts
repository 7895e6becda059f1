import { createJournal, type Journal } from '@larkhold/engine';
import { openStore, type Store } from '@larkhold/store';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { hrefOf } from './routing.ts';
import { openTrialApp, textOf } from './trial-app.ts';

const unheard: unknown[] = [];
const onUnheard = (event: PromiseRejectionEvent): void => void unheard.push(event.reason);

beforeEach(() => {
  unheard.length = 0;
  window.addEventListener('unhandledrejection', onUnheard);
});
afterEach(() => {
  window.removeEventListener('unhandledrejection', onUnheard);
});

const drill = {
  ...{ id: 'good', program: 'Attic holds', date: '2026-11-24', effort: 4, pain: false },
  ...{ startedAt: '2026-11-24T06:00:00Z', endedAt: '2026-11-24T06:10:00Z' },
  reps: [{ ...{ block: 0, set: 0, rep: 0, hand: 'usual' }, prescribedMs: 2000, heldMs: 2000, outcome: 'held' }],
};
const note = { id: 'scrap', text: 'Elbow up', madeAt: '2026-11-24T06:00:00Z' };

/** Opens the app over a store, at a page. */
async function openApp(store: Store, hash: string) {
  const reported: unknown[] = [];
  document.body.replaceChildren();
  const report = (error: unknown): void => void reported.push(error);
  const { state, page, saved } = await openTrialApp(hash, '2026-11-25', { store, report });
  const odd = () => page.shadowRoot?.querySelector('lark-odd-entries')?.shadowRoot;
  const place = () => page.shadowRoot?.querySelector('main > :last-child')?.shadowRoot;
  const go = async (to: string) => {
    location.hash = to;
    await new Promise((resolve) => setTimeout(resolve));
    await expect.poll(() => place()?.querySelector('h1')?.textContent?.trim() ?? '').not.toBe('');
    // Parts of a page are drawn after it.
    await new Promise((resolve) => setTimeout(resolve, 50));
  };
  const press = (words: string) =>
    [...(odd()?.querySelectorAll('button') ?? [])].find((one) => textOf(one) === words)?.click();
  return { state, page, saved, reported, odd, place, go, press };
}

async function putRaw(name: string, rows: readonly [table: string, key: string, value: unknown][]): Promise<void> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open(name);
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const writing = database.transaction([...new Set(rows.map(([table]) => table))], 'readwrite');
  for (const [table, key, value] of rows) writing.objectStore(table).put(value, key);
  await new Promise((resolve) => {
    writing.oncomplete = resolve;
  });
  database.close();
}

const pages = ['#/journal', '#/week', '#/trends', '#/rack', '#/kit', '#/coach', '#/milestones', '#/plan', '#/line'];

test('half a character as an id, a scrap made on a rainy evening, odd days on the disk: every page is drawn, and says so', async () => {
  const name = `odd-${performance.now()}`;
  (await openStore({ name })).close();
  await putRaw(name, [
    ['drills', 'good', drill],
    ['drills', 'half \ud83c', { ...drill, id: 'half \ud83c' }],
    ['drills', 'odd day', { ...drill, id: 'odd day', date: '2026-13-45' }],
    ['notes', 'scrap', { ...note, madeAt: 'on a rainy evening' }],
    ['days', '0026-01-01', { date: '0026-01-01', note: 'Rome' }],
    ['weeks', '2026-W99', { week: '2026-W99', goal: 'none' }],
    ['opened', '\udfff', { id: '\udfff', program: { id: '\udfff', title: 'Half' } }],
  ]);
  const store = await openStore({ name });
  const { go, odd, page, press, saved } = await openApp(store, '#/line');
  for (const hash of pages) await go(hash);
  await go('#/kit');
  expect(odd()?.querySelectorAll('li')).toHaveLength(6);
  await go('#/rack');
  expect(textOf(odd())).toContain('Program: ');
  await go('#/week');
  expect(textOf(odd())).toMatch(/Week page: .*Note: |Note: .*Week page: /);
  await go('#/journal');
  expect(odd()?.querySelectorAll('li')).toHaveLength(3);
  expect(page.app?.view.journal.drills.map(({ id }) => id)).toEqual(['good']);

  press('Save as a file');
  expect(JSON.parse(saved[0]?.text ?? '')).toEqual({
    ...{ table: 'days', key: '0026-01-01', message: expect.stringContaining('date') },
    value: { date: '0026-01-01', note: 'Rome' },
  });
  press('Remove');
  await expect.poll(() => textOf(odd())).toContain('Remove for good');
  press('Remove for good');
  await expect.poll(() => odd()?.querySelectorAll('li').length).toBe(2);
  expect(await store.setAside()).toHaveLength(5);
  expect(unheard).toEqual([]);
});

test('entries that pass every check and yet can’t be drawn are left out and reported; the others are kept; one that is removed is gone', async () => {
  const store = await openStore({ name: `undrawn-${performance.now()}` });
  await store.putDrill({ ...drill } as Journal['drills'][number]);
  const rows = {
    drills: [drill, { ...drill, id: 'odd', date: 'the thirteenth' }],
    days: [{ date: 'one fine day', note: 'x' }],
    weeks: [{ week: 'some week' }],
    notes: [note, { ...note, id: 'odd', madeAt: 7 }],
    milestones: [{ id: 'odd', text: 'A minute', setDay: 'soon' }],
  };
  const journal = { ...createJournal(), ...rows } as unknown as Journal;
  let shown = journal;
  const removed: string[] = [];
  const strange = new Proxy(store, {
    get(target, key) {
      if (key === 'journal') return async () => shown;
      if (key === 'removeListed')
        return async (table: 'drills', id: string) => {
          removed.push(`${table}/${id}`);
          shown = { ...shown, [table]: shown[table].filter((one) => one.id !== id) };
        };
      return Reflect.get(target, key);
    },
  });
  const { go, odd, place, page, press, reported } = await openApp(strange, '#/line');
  for (const hash of pages) {
    await go(hash);
    expect(place()?.querySelector('.undrawn')).toBeNull();
  }
  expect(page.app?.view.oddEntries.map(({ table, key }) => `${table}/${key}`).sort()).toEqual([
    ...['days/one fine day', 'drills/odd', 'milestones/odd', 'notes/odd', 'weeks/some week'],
  ]);
  expect(reported.length).toBeGreaterThan(0);
  await go('#/journal');
  const entries = () => place()?.querySelector('month-drills')?.shadowRoot?.querySelectorAll('lark-drill-entry');
  await expect.poll(() => entries()?.length).toBe(1);
  expect(textOf(odd())).toContain('Drill: It can’t be drawn (');
  press('Remove');
  await expect.poll(() => textOf(odd())).toContain('Remove for good');
  press('Remove for good');
  await expect.poll(() => removed).toEqual(['drills/odd']);
  await expect.poll(() => textOf(odd())).not.toContain('Drill: ');
  expect(unheard).toEqual([]);
});

test('a page that fails of itself says so, offers everything as a file, and is drawn again when it can be', async () => {
  const store = await openStore({ name: `fails-${performance.now()}` });
  const { go, page, place, saved } = await openApp(store, '#/journal');
  await go('#/journal');
  const app = page.app;
  if (!app) throw new TypeError('no app');
  const broken = new Proxy(app.view, {
    get(view, key) {
      if (key === 'journal') throw new Error('no such luck');
      return Reflect.get(view, key);
    },
  });
  page.app = { ...app, view: broken, act: { ...app.act, leaveOut: () => false } };
  await expect.poll(() => textOf(place())).toContain('Something in Larkhold failed here: no such luck');
  place()?.querySelectorAll<HTMLButtonElement>('.undrawn button')[1]?.click();
  await expect.poll(() => saved.length).toBe(1);
  page.app = app;
  await expect.poll(() => textOf(place()?.querySelector('h1'))).toBe('Journal');
  expect(place()?.querySelector('.undrawn')).toBeNull();
  expect(unheard).toEqual([]);
});

test('a link to an id that is half a character is a link', () => {
  expect(hrefOf('rack', 'half \ud83c')).toBe('#/rack/half%20%EF%BF%BD');
});
