import { createJournal } from '@larkhold/engine';
import { createKit, openStore, parseBackup } from '@larkhold/store';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import { createAppState } from '../shell/app-state.ts';
import type { BackupFolder } from '../shell/backup-folder.ts';
import './backup-notice.ts';
import './backup-settings.ts';

const journal = { ...createJournal(), days: [{ date: '2026-11-20', feel: 4 }] };
type Permissions = Pick<BackupFolder, 'queryPermission' | 'requestPermission'>;

/** A real folder of the browser's own; the test says whether the archer permits it. */
async function open(options: { folder?: BackupFolder; leavesChoice?: boolean; name?: string } = {}) {
  const name = options.name ?? `backup-${crypto.randomUUID()}`;
  const store = await openStore({ name });
  if (!options.name) await store.replaceJournal(journal);
  const saved: string[] = [];
  const { folder, leavesChoice } = options;
  const state = createAppState({
    store,
    today: () => '2026-11-25',
    instant: () => '2026-11-25T20:00:00Z',
    newId: () => 'abc123-xyz',
    saveFile: (file) => saved.push(file),
    trySound: () => undefined,
    askForPersistence: async () => 'kept',
    ...(folder ? { pickFolder: async () => (leavesChoice ? undefined : folder) } : {}),
  });
  const settings = document.createElement('backup-settings');
  const notice = document.createElement('backup-notice');
  state.subscribe((app) => {
    settings.app = app;
    notice.app = app;
  });
  await state.reload();
  document.body.append(settings, notice);
  await settings.updateComplete;
  await notice.updateComplete;
  const press = (element: HTMLElement & { renderRoot: ParentNode }, words: string | RegExp) => {
    const found = [...element.renderRoot.querySelectorAll('button')].find((one) =>
      one.textContent?.trim().match(words),
    );
    if (!found) throw new Error(`there is no button ${words}`);
    found.click();
  };
  const choose = (value: string) => {
    const list = settings.renderRoot.querySelector('select')!;
    list.value = value;
    list.dispatchEvent(new Event('change'));
  };
  return { name, store, state, settings, notice, press, choose, saved };
}

async function folderOfItsOwn(): Promise<BackupFolder> {
  const root = await navigator.storage.getDirectory();
  return (await root.getDirectoryHandle(`folder-${crypto.randomUUID()}`, { create: true })) as BackupFolder;
}

async function namesIn(folder: BackupFolder): Promise<string[]> {
  const names: string[] = [];
  for await (const name of folder.keys()) names.push(name);
  return names.sort();
}

test('off at first: nothing is due and nothing is said', async () => {
  const { notice, settings } = await open();
  expect(settings.renderRoot.querySelector('select')?.value).toBe('off');
  expect(notice.renderRoot.textContent?.trim()).toBe('');
});

test('where the browser has no folders the archer is reminded, saves a file, and is left alone', async () => {
  const { notice, settings, choose, press, saved, state } = await open();
  choose('7');
  await expect.poll(() => notice.renderRoot.textContent).toContain('you have not made one yet');
  expect(settings.renderRoot.textContent).toContain('You are reminded instead');
  press(notice, 'Save everything as a file');
  await expect.poll(() => notice.renderRoot.textContent?.trim()).toBe('');
  expect(saved).toEqual(['larkhold-2026-11-25.backup.json']);
  expect(state.app?.view.kit.backup.lastAt).toBe('2026-11-25T20:00:00Z');
  choose('off');
  await expect.poll(() => state.app?.view.kit.backup.everyDays).toBeUndefined();
});

test('a backup goes into the chosen folder, now and when it is due; older ones of this device go, others stay', async () => {
  const folder = await folderOfItsOwn();
  for (let day = 10; day < 22; day += 1)
    await folder.getFileHandle(`larkhold-abc123-2026-10-${day}.backup.json`, { create: true });
  const others = ['larkhold-other1-2026-10-01.backup.json', 'photo.jpg', 'larkhold-2026-10-01.backup.json'];
  for (const name of others) await folder.getFileHandle(name, { create: true });
  const { name, choose, settings, store, state } = await open({ folder });
  choose('1');
  await expect.poll(() => settings.renderRoot.querySelector<HTMLInputElement>('input')).not.toBeNull();
  settings.renderRoot.querySelector<HTMLInputElement>('input')?.click();
  await expect.poll(() => settings.renderRoot.textContent).toContain('The backup is in the folder.');
  const names = await namesIn(folder);
  expect(names.filter((one) => one.startsWith('larkhold-abc123'))).toHaveLength(10);
  expect(names).toEqual(expect.arrayContaining(others));
  const file = await folder.getFileHandle('larkhold-abc123-2026-11-25.backup.json');
  const read = parseBackup(await (await file.getFile()).text());
  expect(read.ok && read.backup.days).toEqual(journal.days);

  // Later, in a page opened again: the folder is known, and the backup is made without a word.
  await folder.removeEntry('larkhold-abc123-2026-11-25.backup.json');
  await store.putKit({ ...createKit(), backup: { everyDays: 1, toFolder: true, lastAt: '2026-11-24T06:00:00Z' } });
  store.close();
  document.body.replaceChildren();
  const again = await open({ folder, name });
  await expect.poll(() => again.state.app?.view.kit.backup.lastAt).toBe('2026-11-25T20:00:00Z');
  expect(await namesIn(folder)).toContain('larkhold-abc123-2026-11-25.backup.json');
  expect(again.notice.renderRoot.textContent?.trim()).toBe('');
  expect(state.app).toBeDefined();
});

test('without leave nothing is written, and one press asks; a folder that is gone is reported', async () => {
  const folder = await folderOfItsOwn();
  const { store, notice, press, state } = await open({ folder });
  await state.app?.act.folderBackup?.choose();
  await state.app?.act.changeKit({ backup: { everyDays: 1, toFolder: true } });
  await expect.poll(() => state.app?.view.kit.backup.lastAt).toBeDefined();

  // The leave lapsed: as it is after a browser was closed.
  const prototype = FileSystemHandle.prototype as unknown as Permissions;
  const { queryPermission, requestPermission } = prototype;
  let leave: PermissionState = 'prompt';
  prototype.queryPermission = async () => leave;
  prototype.requestPermission = async () => {
    leave = 'granted';
    return leave;
  };
  try {
    const fresh = document.createElement('backup-notice');
    await store.putKit({ ...createKit(), backup: { everyDays: 1, toFolder: true, lastAt: '2026-11-01T06:00:00Z' } });
    await state.reload();
    fresh.app = state.app;
    state.subscribe((app) => {
      fresh.app = app;
    });
    notice.replaceWith(fresh);
    await expect.poll(() => fresh.renderRoot.textContent).toContain('The browser asks once more');
    expect(state.app?.view.kit.backup.lastAt).toBe('2026-11-01T06:00:00Z');
    press(fresh, 'Save the backup');
    await expect.poll(() => state.app?.view.kit.backup.lastAt).toBe('2026-11-25T20:00:00Z');
  } finally {
    prototype.queryPermission = queryPermission;
    prototype.requestPermission = requestPermission;
  }
});

test('a folder that is gone, or is on another device only, is reported, and a file is offered', async () => {
  const folder = await folderOfItsOwn();
  const { store, state, notice, press, saved, name } = await open({ folder });
  await state.app?.act.folderBackup?.choose();
  const root = await navigator.storage.getDirectory();
  await root.removeEntry(folder.name, { recursive: true });
  const due = { ...createKit(), backup: { everyDays: 1, toFolder: true, lastAt: '2026-11-01T06:00:00Z' } };
  await store.putKit(due);
  await state.reload();
  await expect.poll(() => notice.renderRoot.textContent).toContain('could not be written to your folder');
  expect(state.app?.view.kit.backup.lastAt).toBe('2026-11-01T06:00:00Z');
  press(notice, 'Save everything as a file');
  await expect.poll(() => notice.renderRoot.textContent?.trim()).toBe('');
  expect(saved).toEqual(['larkhold-2026-11-25.backup.json']);

  await state.app?.act.folderBackup?.forget();
  await store.putKit(due);
  store.close();
  document.body.replaceChildren();
  const again = await open({ folder, name });
  await expect.poll(() => again.notice.renderRoot.textContent).toContain('no folder is chosen on this device');
  expect(again.notice.renderRoot.querySelector('a')?.hash).toBe('#/kit/backup');
  expect(again.settings.renderRoot.textContent).toContain('No folder is chosen on this device.');
  again.press(again.notice, 'Not now');
  await expect.poll(() => again.notice.renderRoot.textContent?.trim()).toBe('');
});

test('a choice of folder that is left changes nothing; off again, folder and reminder are off', async () => {
  const folder = await folderOfItsOwn();
  const { settings, choose, state, notice } = await open({ folder, leavesChoice: true });
  choose('30');
  await expect.poll(() => settings.renderRoot.querySelector('input')).not.toBeNull();
  const tick = settings.renderRoot.querySelector('input')!;
  tick.click();
  await expect.poll(() => tick.checked).toBe(false);
  expect(state.app?.view.kit.backup).toEqual({ everyDays: 30, toFolder: false });
  expect(notice.renderRoot.textContent).toContain('A backup is due');
  choose('off');
  await expect.poll(() => notice.renderRoot.textContent?.trim()).toBe('');
  expect(settings.renderRoot.querySelector('input')).toBeNull();
});

test('nothing is said, and nothing written, while a drill fills the screen', async () => {
  const folder = await folderOfItsOwn();
  const { state, notice, choose } = await open({ folder });
  await state.app?.act.folderBackup?.choose();
  state.app?.act.setDrilling(true);
  await state.app?.act.changeKit({ backup: { everyDays: 1, toFolder: true } });
  await notice.updateComplete;
  expect(await namesIn(folder)).toEqual([]);
  expect(notice.renderRoot.textContent?.trim()).toBe('');
  choose('off');
});

test.each(['dark', 'light', 'contrast'])('axe finds nothing and nothing overflows 320 px, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const { choose, notice, settings } = await open();
  document.body.style.width = '288px';
  choose('7');
  await expect.poll(() => notice.renderRoot.textContent).toContain('A backup is due');
  for (const element of [settings, notice]) {
    expect(element.scrollWidth).toBeLessThanOrEqual(288);
    expect((await axe.run(element, { resultTypes: ['violations'] })).violations).toEqual([]);
  }
  document.body.style.width = '';
});
