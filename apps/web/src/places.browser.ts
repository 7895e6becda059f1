import { type DrillRecord, formatProgram } from '@larkhold/engine';
import { openStore, type Store } from '@larkhold/store';
import { beforeEach, expect, test } from 'vitest';
import type { LarkApp } from './lark-app.ts';
import type { AppState } from './shell/app-state.ts';
import { openTrialApp, type TrialApp } from './shell/trial-app.ts';

let state: AppState;
let page: LarkApp;
let saved: TrialApp['saved'];

let faults: TrialApp['faults'];
const newId = () => '00000000-0000-4000-8000-000000000001';

const open = async (store?: Store) => {
  ({ state, page, saved, faults } = await openTrialApp('#/line', '2026-11-25', { newId, ...(store && { store }) }));
};
beforeEach(() => open());

/** Goes to a place and waits until it is drawn. */
async function goTo(hash: string, tag: string): Promise<ShadowRoot> {
  location.hash = hash;
  return expect
    .poll(async () => {
      await page.updateComplete;
      return page.shadowRoot?.querySelector(tag)?.shadowRoot?.querySelector('h1') ?? null;
    })
    .not.toBeNull()
    .then(() => page.shadowRoot?.querySelector(tag)?.shadowRoot as ShadowRoot);
}

function buttonOf(root: ShadowRoot, words: RegExp): HTMLButtonElement {
  const found = [...root.querySelectorAll('button')].find((button) => words.test(button.textContent ?? ''));
  if (!found) throw new TypeError(`no button says ${words}`);
  return found;
}

test('a first run is ready: the first built-in program, its numbers, and the button that begins has the focus', async () => {
  const line = await goTo('#/line', 'lark-line');
  expect(line.querySelector('h1')?.textContent).toBe('Club starter');
  const numbers = line.querySelector('lark-prescription')?.shadowRoot?.querySelector('.large')?.textContent;
  // bannockburnbowmen.org, coaching corner: 5 reps of 5 s, as the program's source says.
  expect(numbers?.replaceAll('\u00a0', ' ')).toBe('5 × 5 s');
  expect(line.activeElement?.textContent?.trim()).toBe('Begin');
  expect(await faults()).toEqual([]);
});

test('every place passes axe, empty and with the demo journal, in each theme', async () => {
  for (const theme of ['dark', 'light', 'contrast'] as const) {
    document.documentElement.dataset.theme = theme;
    for (const [hash, tag] of [
      ['#/journal', 'lark-journal'],
      ['#/kit', 'lark-kit'],
      ['#/rack', 'lark-rack'],
    ] as const) {
      await goTo(hash, tag);
      expect(await faults()).toEqual([]);
    }
  }
  await state.app?.act.loadDemo();
  const journal = await goTo('#/journal', 'lark-journal');
  const entryOf = () =>
    journal.querySelector('month-drills')?.shadowRoot?.querySelector('lark-drill-entry')?.shadowRoot;
  await expect.poll(() => entryOf()?.querySelector('summary')).toBeTruthy();
  entryOf()?.querySelector('summary')?.click();
  const ribbon = () => entryOf()?.querySelector('lark-hold-ribbon[picks]');
  await expect.poll(() => ribbon()?.shadowRoot?.querySelector('[role=slider]')).toBeTruthy();
  ribbon()?.dispatchEvent(new CustomEvent('lark-pick', { detail: { index: 0 } }));
  await expect.poll(() => entryOf()?.querySelector('lark-rep-answer')).toBeTruthy();
  expect(await faults()).toEqual([]);
}, 60_000);

test('the demo journal comes and goes without a trace', async () => {
  await state.app?.act.loadDemo();
  expect(state.app?.view.journal.drills.length).toBeGreaterThan(50);
  await state.app?.act.removeDemo();
  expect(state.app?.view.journal).toEqual({ drills: [], days: [], weeks: [] });
});

test('a broken file shows every problem with its place, and the rack is as it was', async () => {
  const rack = await goTo('#/rack', 'lark-rack');
  const before = state.app?.view.programs.length;
  const text = '{\n  "format": "larkhold/program", "version": 1,\n  "title": "", "tool": "hand", "blocks": []\n}';
  const input = rack.querySelector('input');
  const files = new DataTransfer();
  files.items.add(new File([text], 'broken.drill.json'));
  if (!input) throw new TypeError('the rack has no file input');
  input.files = files.files;
  input.dispatchEvent(new Event('change'));
  await expect.poll(() => rack.querySelector('lark-file-answer')?.shadowRoot?.querySelectorAll('li').length).toBe(3);
  const problems = rack.querySelector('lark-file-answer')?.shadowRoot?.textContent ?? '';
  // Line and column counted by hand in the text above.
  expect(problems).toMatch(/Line 3, column 12.*\/title/s);
  expect(state.app?.view.programs.length).toBe(before);
  expect(await faults()).toEqual([]);
});

test('a program file is opened, asks before it is kept beside one of its id, and is chosen for today', async () => {
  const rack = await goTo('#/rack', 'lark-rack');
  const [first] = state.app?.view.programs ?? [];
  if (!first) throw new TypeError('the rack is empty');
  const text = formatProgram({ ...first, id: undefined, title: 'Attic mornings' });
  const file = () => new File([text], 'attic.drill.json');
  page.incoming = [file()];
  await expect.poll(() => state.app?.view.openedIds.size).toBe(1);
  page.incoming = [file()];
  await expect.poll(() => rack.querySelector('lark-file-answer')?.shadowRoot?.querySelector('dialog')?.open).toBe(true);
  expect(await faults()).toEqual([]);
  buttonOf(rack.querySelector('lark-file-answer')?.shadowRoot as ShadowRoot, /Replace/).click();
  await expect.poll(() => rack.querySelector('.said')?.textContent).toBe('Replaced: Attic mornings.');
  expect(state.app?.view.openedIds.size).toBe(1);
  const program = await goTo('#/rack/00000000-0000-4000-8000-000000000001', 'lark-program');
  expect(await faults()).toEqual([]);
  buttonOf(program.querySelector('lark-share')?.shadowRoot as ShadowRoot, /Save as a file/);
  buttonOf(program, /Use today/).click();
  await expect.poll(() => state.app?.view.chosen.title).toBe('Attic mornings');
});

test('where storage is refused the app says so, offers everything as a file, and works on', async () => {
  const refusing = {
    open: () => {
      throw new DOMException('private window', 'SecurityError');
    },
  };
  page.remove();
  await open(await openStore({ indexedDB: refusing as unknown as IDBFactory }));
  const line = await goTo('#/line', 'lark-line');
  const banner = page.shadowRoot?.querySelector('.banner');
  expect(banner?.textContent).toContain('This browser keeps nothing for this page.');
  expect(line.querySelector('.begin')).not.toBeNull();
  buttonOf(page.shadowRoot as ShadowRoot, /Save everything as a file/).click();
  await expect.poll(() => saved.length).toBe(1);
  await state.app?.act.changeKit({ units: 'imperial' });
  expect(state.app?.view.kit.units).toBe('imperial');
});

test('the journal is handed over as one file', async () => {
  await state.app?.act.loadDemo();
  await state.app?.act.saveBackup();
  expect(saved[0]?.name).toBe('larkhold-2026-11-25.backup.json');
  expect(saved[0]?.text).toContain('"format": "larkhold/backup"');
});

test('a wrong outcome is corrected in one press, and undone in another', async () => {
  const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 5000, heldMs: 3000, outcome: 'short' } as const;
  const record: DrillRecord = {
    ...{ id: 'one', program: 'Club starter', date: '2026-11-25', reps: [rep] },
    ...{ startedAt: '2026-11-25T06:00:00+00:00', endedAt: '2026-11-25T06:02:00+00:00' },
  };
  await state.app?.act.putDrill(record);
  const journal = await goTo('#/journal/one', 'lark-journal');
  const entryOf = () =>
    journal.querySelector('month-drills')?.shadowRoot?.querySelector('lark-drill-entry')?.shadowRoot;
  await expect
    .poll(() => entryOf()?.querySelector('lark-rep-answer')?.shadowRoot?.querySelector('button'))
    .toBeTruthy();
  const entry = entryOf() as ShadowRoot;
  buttonOf(entry.querySelector('lark-rep-answer')?.shadowRoot as ShadowRoot, /Held/).click();
  await expect.poll(() => state.app?.view.journal.drills[0]?.reps[0]).toMatchObject({ outcome: 'held', heldMs: 5000 });
  await expect.poll(() => entry.querySelector('.undo')).toBeTruthy();
  buttonOf(entry, /Undo/).click();
  await expect.poll(() => state.app?.view.journal.drills[0]?.reps[0]).toEqual(rep);
});
