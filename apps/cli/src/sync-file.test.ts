import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createMemoryBox, createPairing, formatPairing } from '@larkhold/box';
import { createJournal, formatJournal, parseJournal } from '@larkhold/engine';
import { createKit, formatBackup, parseBackup } from '@larkhold/store';
import { expect, it } from 'vitest';
import { createNodeFolderBox } from './node-folder-box.ts';
import { run } from './run.ts';
import { trialSurroundings } from './trial-surroundings.ts';

const pairing = createPairing();
const secret = formatPairing(pairing);
const dayOf = (date: string, note: string) => ({ ...createJournal(), days: [{ date, note }] });
const journalText = (date: string, note: string) => formatJournal(dayOf(date, note));
const backupText = formatBackup({
  ...{ format: 'larkhold/backup', version: 2, madeAt: '2026-11-20T06:00:00Z', kit: { ...createKit(), hand: 'left' } },
  ...dayOf('2026-11-23', 'calm'),
});

/** Two files of one archer on one machine, and the box between them. */
function twoFiles(box = createMemoryBox()) {
  const around = trialSurroundings({
    'phone.json': journalText('2026-11-24', 'windy'),
    'home.json': backupText,
    secret,
  });
  around.openFolderBox = () => box;
  const sync = (path: string, ...more: string[]) =>
    run(['sync', path, '--folder', 'box', '--secret-file', 'secret', ...more], around);
  return { around, box, sync };
}

it('brings what one file has into the other, and back', async () => {
  const { around, sync } = twoFiles();
  expect(await sync('phone.json', '--title', 'Phone')).toBe(0);
  expect(await sync('home.json')).toBe(0);
  expect(await sync('phone.json')).toBe(0);
  const phone = parseJournal(String(around.files.get('phone.json')));
  const home = parseBackup(String(around.files.get('home.json')));
  if (!phone.ok || !home.ok) throw new Error('a file is not right any more');
  const dates = ['2026-11-23', '2026-11-24'];
  expect(phone.journal.days.map(({ date }) => date).sort()).toEqual(dates);
  expect(home.backup.days.map(({ date }) => date).sort()).toEqual(dates);
  expect(home.backup.kit.hand).toBe('left');
  expect(around.printed()).toContain('Phone');
  // A round in which nothing is new changes nothing.
  const before = around.files.get('phone.json');
  expect(await sync('phone.json', '--json')).toBe(0);
  expect(around.files.get('phone.json')).toBe(before);
});

it('keeps the secret out of what it writes and prints', async () => {
  const { around, sync, box } = twoFiles();
  await sync('phone.json');
  expect(around.files.has('phone.json.box.json')).toBe(true);
  const written = [...around.files].filter(([path]) => path !== 'secret').map(([, content]) => String(content));
  for (const text of [...written, around.printed(), around.complained(), ...box.files.keys()])
    expect(text).not.toContain(pairing.secret);
});

it('takes the secret from a variable, as the whole link too, and says what to do without one', async () => {
  const { around, box } = twoFiles();
  const args = ['sync', 'phone.json', '--folder', 'box'];
  expect(await run(args, around)).toBe(2);
  expect(around.complained()).toContain('--secret-file');
  around.variable = () => `https://larkhold.example/#/box/${secret}\n`;
  expect(await run(args, around)).toBe(0);
  expect(box.files.size).toBe(1);
  around.variable = () => 'nonsense';
  expect(await run(args, around)).toBe(1);
  expect(await run(['sync', 'phone.json'], trialSurroundings({ 'phone.json': journalText('2026-11-24', '') }))).toBe(2);
});

it('does not meet another box with what it knows of this one', async () => {
  const { around, sync } = twoFiles();
  await sync('phone.json');
  around.files.set('secret', formatPairing(createPairing()));
  expect(await sync('phone.json')).toBe(1);
  expect(around.complained()).toContain('not of this box');
});

it('says that the host could not be reached, and leaves the file as it was', async () => {
  const { around, box, sync } = twoFiles();
  box.list = async () => ({ ok: false, trouble: { kind: 'gone' } });
  const before = around.files.get('phone.json');
  expect(await sync('phone.json')).toBe(3);
  expect(around.files.get('phone.json')).toBe(before);
  expect(around.printed()).toContain('could not be reached');
});

it('meets in a real folder, where no half-written file is left', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'larkhold-box-'));
  try {
    const { around, sync } = twoFiles();
    around.openFolderBox = createNodeFolderBox.bind(undefined, folder);
    for (const path of ['phone.json', 'home.json', 'phone.json']) expect(await sync(path)).toBe(0);
    const read = parseJournal(String(around.files.get('phone.json')));
    expect(read.ok && read.journal.days).toHaveLength(2);
    const names = await readdir(folder);
    expect(names.length).toBeGreaterThan(0);
    expect(names.filter((name) => name.includes('part'))).toEqual([]);
    const gone = createNodeFolderBox(join(folder, 'nowhere'));
    expect(await gone.list()).toEqual({ ok: false, trouble: { kind: 'gone' } });
    const box = createNodeFolderBox(folder);
    expect(await box.get('not-there')).toMatchObject({ ok: false, trouble: { kind: 'missing' } });
    for (const name of names) expect(await box.remove(name)).toEqual({ ok: true, value: undefined });
    expect(await box.list()).toEqual({ ok: true, value: [] });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
