import {
  answerHandOver,
  builtInPrograms,
  createHandOver,
  createJournal,
  emptySeason,
  formatHandOver,
  formatJournal,
  type Journal,
} from '@larkhold/engine';
import { createKit, formatBackup } from '@larkhold/store';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import './file-in.ts';
import { openTrialApp } from './trial-app.ts';

const ours: Journal = {
  ...createJournal(),
  days: [{ date: '2026-11-24', note: 'Ours', editedAt: '2026-11-24T20:00:00Z' }],
};
const theirs: Journal = {
  ...createJournal(),
  days: [
    { date: '2026-11-23', note: 'New' },
    { date: '2026-11-24', note: 'Older', editedAt: '2026-11-23T20:00:00Z' },
  ],
};
const program = { ...builtInPrograms[0]!, id: '0b6c1d6e-5a43-4c1e-9a52-6f0f3c1f7a11', title: 'Short and steady' };
const backup = formatBackup({
  ...{ format: 'larkhold/backup', version: 2, madeAt: '2026-11-24T20:00:00Z' },
  ...{ kit: { ...createKit(), hand: 'left' }, opened: [{ id: program.id, program }], ...theirs },
});

async function open(text: string, journal = ours) {
  const element = document.createElement('file-in');
  const { store } = await openTrialApp(element, journal);
  document.body.append(element);
  await element.updateComplete;
  const drop = element.renderRoot.querySelector('file-drop');
  drop?.dispatchEvent(new CustomEvent('files-take', { detail: [new File([text], 'file.json')] }));
  await expect.poll(() => element.renderRoot.querySelector('.notice')).not.toBeNull();
  const press = (words: string) =>
    [...element.renderRoot.querySelectorAll('button')].find((one) => one.textContent?.trim() === words)?.click();
  return { element, store, press };
}

test('a backup is shown before it is imported, and all of it can be undone', async () => {
  const { element, store, press } = await open(backup);
  const shown = element.renderRoot.querySelector('.notice')?.textContent?.replaceAll(/\s+/g, ' ');
  expect(shown).toContain('2 entries to add, 0 to change, 0 the same. 1 is newer here and stays as it is.');
  expect(shown).toContain('Short and steady');
  expect(shown).toMatch(/1\sday or week written on both sides/);
  expect(shown).toContain('what is here is kept. Left out: note: “Older”');
  expect(await store.journal()).toEqual(ours);

  element.renderRoot.querySelector<HTMLInputElement>('input[type=checkbox]')?.click();
  press('Restore');
  await expect.poll(async () => (await store.kit()).hand).toBe('left');
  expect((await store.journal()).days.map(({ note }) => note).sort()).toEqual(['New', 'Ours']);
  expect((await store.programs()).map(({ title }) => title)).toEqual(['Short and steady']);

  await expect.poll(() => element.renderRoot.textContent).toContain('was restored');
  press('Undo');
  await expect.poll(async () => (await store.kit()).hand).toBe('right');
  expect(await store.journal()).toEqual(ours);
  expect(await store.programs()).toEqual([]);
});

test('a backup’s kit never tells this device when it was last backed up, nor where to', async () => {
  const { element, store, press } = await open(
    backup.replace(/"backup":\s*\{[^}]*\}/, '"backup":{"everyDays":7,"lastAt":"2026-11-24T20:00:00Z","toFolder":true}'),
  );
  expect((await store.kit()).backup).toEqual({ toFolder: false });
  element.renderRoot.querySelector<HTMLInputElement>('input[type=checkbox]')?.click();
  press('Restore');
  await expect.poll(async () => (await store.kit()).hand).toBe('left');
  expect((await store.kit()).backup).toEqual({ toFolder: false });
});

test('no file allows a line to be said at full draw, nor takes back what was allowed here', async () => {
  const answer = (programId: string) => ({ programId, allowed: ['Reach'], silenced: [] });
  const forged = backup.replace('"kit": {', `"kit": {"callAnswers":${JSON.stringify([answer('forged')])},`);
  expect(forged).toContain('forged');
  const { element, store, press } = await open(forged);
  await store.changeKit(() => ({ callAnswers: [answer('ours')] }));
  element.renderRoot.querySelector<HTMLInputElement>('input[type=checkbox]')?.click();
  press('Restore');
  await expect.poll(async () => (await store.kit()).hand).toBe('left');
  expect((await store.kit()).callAnswers).toEqual([answer('ours')]);
});

test('without the tick a backup leaves the kit as it is', async () => {
  const { element, store, press } = await open(backup);
  press('Restore');
  await expect.poll(() => element.renderRoot.textContent).toContain('was restored');
  expect((await store.kit()).hand).toBe('right');
});

test('a device on which nothing was done yet takes over everything, kit included, at one press', async () => {
  const { element, store, press } = await open(backup, createJournal());
  await expect.poll(() => element.shadowRoot?.activeElement?.textContent?.trim()).toBe('Restore');
  press('Restore');
  await expect.poll(async () => (await store.kit()).hand).toBe('left');
});

test('a program says what it is, and goes to the rack only when asked', async () => {
  const { element, store, press } = await open(JSON.stringify(program));
  expect(element.renderRoot.textContent).toContain('A program: Short and steady');
  expect(await store.programs()).toEqual([]);
  const given: File[][] = [];
  element.addEventListener('lark-open-program', (event) => event instanceof CustomEvent && given.push(event.detail));
  press('Add to the rack');
  expect(given[0]?.[0]?.name).toBe('file.json');
});

test('while another file is read, the one before can no longer be imported; of two, the last one picked is shown', async () => {
  const { element, store } = await open(backup);
  const give = (name: string, text: Promise<string>) => {
    const file = Object.assign(new File([], name), { text: () => text });
    element.renderRoot.querySelector('file-drop')?.dispatchEvent(new CustomEvent('files-take', { detail: [file] }));
  };
  let arrive = (_text: string): void => undefined;
  give(
    'slow.json',
    new Promise((resolve) => {
      arrive = resolve;
    }),
  );
  await element.updateComplete;
  expect(element.renderRoot.querySelector('.notice')).toBeNull();
  give('quick.json', Promise.resolve(formatJournal(theirs)));
  await expect.poll(() => element.renderRoot.querySelector('h3')?.textContent).toBe('A journal: quick.json');
  arrive('{');
  await new Promise((resolve) => setTimeout(resolve));
  await element.updateComplete;
  expect(element.renderRoot.querySelector('h3')?.textContent).toBe('A journal: quick.json');
  expect(await store.journal()).toEqual(ours);
});

test('a bad file is refused with its place, and changes nothing', async () => {
  const { element, store } = await open(formatJournal(theirs).replace('"New"', '7'));
  expect(element.renderRoot.textContent).toContain('At /days/0/note');
  expect(await store.journal()).toEqual(ours);
});

test('a coach’s program asks before it takes the place of the archer’s own, shows the next sessions under both, and the old one is kept', async () => {
  const harder = {
    ...program,
    title: 'Longer',
    blocks: program.blocks.map((block) => ({ ...block, hold: 20, ladder: undefined })),
  };
  const text = formatHandOver(
    answerHandOver(
      createHandOver({
        ...{ journal: ours, programs: [program], archer: 'Ines', archerId: 'ines', madeAt: '2026-11-24T20:00:00Z' },
        ...{ from: '2026-11-01', to: '2026-11-25', includesNotes: false },
      }),
      { by: 'Coach Ode', comment: '', madeAt: '2026-11-24T21:00:00Z', program: harder },
    ),
  );
  const { element, store, press } = await open('{}');
  await store.putProgram(program);
  await expect.poll(() => element.app?.view.programs.some(({ title }) => title === 'Short and steady')).toBe(true);
  const drop = element.renderRoot.querySelector('file-drop');
  drop?.dispatchEvent(new CustomEvent('files-take', { detail: [new File([text], 'answer.json')] }));
  await expect.poll(() => element.renderRoot.querySelector('program-swap')).not.toBeNull();
  const swap = element.renderRoot.querySelector('program-swap');
  if (!swap) throw new TypeError('no question');
  swap.app = element.app;
  await swap.updateComplete;
  const shown = swap.renderRoot.textContent?.replaceAll(/\s+/g, ' ') ?? '';
  expect(shown).toContain('Longer would take the place of your Short and steady');
  expect(swap.renderRoot.querySelectorAll('tbody tr')).toHaveLength(4);
  const cells = [...swap.renderRoot.querySelectorAll('tbody td')].map((cell) => cell.textContent ?? '');
  expect(cells[0]).not.toBe(cells[1]);
  expect(cells[1]).toMatch(/20\s?s/);
  expect((await store.programs()).map(({ title }) => title)).toEqual(['Short and steady']);

  press('Replace mine');
  await expect.poll(async () => (await store.programs()).map(({ title }) => title)).toEqual(['Longer']);
  await expect.poll(() => element.app?.view.replaced?.title).toBe('Short and steady');
  await expect
    .poll(() => [...element.renderRoot.querySelectorAll('button')].some((one) => one.textContent?.trim() === 'Undo'))
    .toBe(true);
  press('Undo');
  await expect.poll(async () => (await store.programs()).map(({ title }) => title)).toEqual(['Short and steady']);
});

test('a coach’s program that the rack has already is used as it is', async () => {
  const power = builtInPrograms.find(({ title }) => title === 'Power');
  if (!power) throw new TypeError('no program');
  const text = formatHandOver(
    answerHandOver(
      createHandOver({
        ...{ journal: ours, programs: [], archer: 'Ines', archerId: 'ines', madeAt: '2026-11-24T20:00:00Z' },
        ...{ from: '2026-11-01', to: '2026-11-25', includesNotes: false },
      }),
      // From a coach who reads another language.
      { by: 'Coach Ode', comment: '', madeAt: '2026-11-24T21:00:00Z', program: { ...power, title: 'Kraft' } },
    ),
  );
  const { element, store, press } = await open(text);
  await expect.poll(() => element.renderRoot.textContent).toContain('Your rack has it already');
  expect(element.renderRoot.querySelector('program-swap')).toBeNull();
  press('Use today');
  await expect.poll(() => element.app?.view.chosen.title).toBe('Power');
  await expect.poll(() => element.renderRoot.textContent).toContain('Power is in the rack and on the line.');
  expect(await store.programs()).toEqual([]);
});

test('a large cut-off file is read beside the page: the screen says how far it is, the page goes on, and it can be left', async () => {
  const day = JSON.stringify({ date: '2026-11-23', note: 'x'.repeat(3000) });
  const large = `{"format":"larkhold/journal","version":3,"drills":[],"weeks":[],"days":[\n${`${day},\n`.repeat(4000)}`;
  const { element, store } = await open('{}');
  const drop = element.renderRoot.querySelector('file-drop');
  let longestMs = 0;
  let lastMs = performance.now();
  const beat = setInterval(() => {
    longestMs = Math.max(longestMs, performance.now() - lastMs);
    lastMs = performance.now();
  }, 5);
  drop?.dispatchEvent(new CustomEvent('files-take', { detail: [new File([large], 'large.json')] }));
  await expect.poll(() => element.renderRoot.querySelector('progress')).not.toBeNull();
  await expect.poll(() => element.renderRoot.textContent, { timeout: 20_000 }).toContain('Line 4,001, column 3,033.'); // just after the last comma
  clearInterval(beat);
  console.info(`12 MB cut off: the page was busy for ${longestMs.toFixed(0)} ms at the longest`);

  drop?.dispatchEvent(new CustomEvent('files-take', { detail: [new File([large], 'again.json')] }));
  await expect.poll(() => element.renderRoot.querySelector('progress')).not.toBeNull();
  [...element.renderRoot.querySelectorAll('button')].find((one) => one.textContent === 'Stop reading')?.click();
  await expect.poll(() => element.renderRoot.textContent).toContain('again.json was left.');
  expect(element.renderRoot.querySelector('progress')).toBeNull();
  expect(await store.journal()).toEqual(ours);
});

test('a file over the stated size is refused without being read', async () => {
  const { element } = await open('{}');
  const huge = Object.assign(new File([], 'huge.json'), {
    text: () => Promise.reject(new Error('read')),
    stream: () => {
      throw new Error('read');
    },
  });
  Object.defineProperty(huge, 'size', { value: 1.2e9 });
  element.renderRoot.querySelector('file-drop')?.dispatchEvent(new CustomEvent('files-take', { detail: [huge] }));
  await expect.poll(() => element.renderRoot.textContent).toContain('This file is too big');
});

test.each(['dark', 'light', 'contrast'])('axe finds nothing and nothing overflows 320 px, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const { element } = await open(backup);
  element.style.display = 'block';
  element.style.width = '288px';
  expect(element.scrollWidth).toBeLessThanOrEqual(288);
  expect((await axe.run(element, { resultTypes: ['violations'] })).violations).toEqual([]);
});

const dated = (madeAt: string) => ({
  ...{ by: 'Kim', madeAt, from: '2026-11-25', to: '2026-12-22' },
  sessions: [{ day: '2026-11-25', programs: [{ title: 'Power' }], minutes: 15 }],
});
const answered = (madeAt: string) =>
  formatHandOver(
    answerHandOver(
      createHandOver({ journal: ours, archerId: 'a', archer: 'Ines', from: '2026-11-01', to: '2026-11-25', madeAt }),
      { by: 'Kim', madeAt, comment: '', dated: dated(madeAt) },
    ),
  );

test('a coach’s days are shown before they are accepted, and are due then', async () => {
  const { element, store, press } = await open(answered('2026-11-24T10:00:00Z'));
  const shown = element.renderRoot.querySelector('.notice')?.textContent?.replaceAll(/\s+/g, ' ') ?? '';
  expect(shown).toContain('Power, 15 minutes each');
  expect(shown).not.toContain('count there');
  expect(element.app?.view.chosen.title).toBe('Club starter');
  press('Put these days in my season');
  await expect.poll(async () => (await store.season())?.format).toBe('larkhold/season');
  await expect.poll(() => element.app?.view.chosen.title).toBe('Power');
  const [due] = element.app?.view.season.due ?? [];
  expect(due).toMatchObject({ kind: 'program', minutes: 15, because: { rule: 'coach', by: 'Kim' } });
  await expect.poll(() => element.renderRoot.textContent).toContain('Undo');
  press('Undo');
  await expect.poll(() => element.app?.view.season.own).toBeUndefined();
});

test('an overlap with an earlier month is reported and asked about; once accepted, both are kept and the later one counts', async () => {
  const earlier = { ...dated('2026-11-20T10:00:00Z'), sessions: [] };
  const document = { ...emptySeason('Winter'), dated: [earlier] };
  const journal = { ...ours, season: { document, editedAt: '2026-11-20T10:00:00Z' } };
  const { element, press } = await open(answered('2026-11-24T10:00:00Z'), journal);
  expect(element.app?.view.season.due[0]?.kind).toBe('rest');
  const shown = element.renderRoot.querySelector('.notice')?.textContent?.replaceAll(/\s+/g, ' ') ?? '';
  expect(shown).toMatch(/What Kim wrote overlaps with a later answer.*the later written ones count there/);
  press('Put these days in my season');
  await expect.poll(() => element.app?.view.season.own?.dated.length).toBe(2);
  expect(element.app?.view.season.due).toMatchObject([{ kind: 'program', program: { title: 'Power' } }]);
});
