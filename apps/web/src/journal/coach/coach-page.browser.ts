import { createHandOver, createJournal, formatHandOver, parseHandOver } from '@larkhold/engine';
import { createSquadShelf, type SquadShelf } from '@larkhold/store';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import { openTrialApp } from '../../shell/files/trial-app.ts';
import './coach-page.ts';

const handOver = createHandOver({
  journal: { ...createJournal(), days: [{ date: '2026-11-15', pain: true, note: '<b>Elbow</b>' }] },
  ...{ archer: 'Ines', archerId: 'ines', from: '2026-11-01', to: '2026-11-25', madeAt: '2026-11-25T20:00:00Z' },
  includesNotes: true,
});

async function open(squad?: SquadShelf) {
  const page = document.createElement('coach-page');
  const { saved } = await openTrialApp(page, createJournal(), squad);
  document.body.append(page);
  await page.updateComplete;
  const take = async (files: File[]) => {
    page.renderRoot.querySelector('file-drop')?.dispatchEvent(new CustomEvent('files-take', { detail: files }));
    await expect.poll(() => page.renderRoot.querySelectorAll('tbody tr, .notice').length).toBeGreaterThan(0);
  };
  const sheet = async () => {
    const found = page.renderRoot.querySelector('archer-sheet');
    if (!found) throw new Error('no hand-over is open');
    found.app = page.app;
    await found.updateComplete;
    return found;
  };
  return { page, take, saved, sheet };
}

test('a squad shows pain and silence; what cannot be read is named', async () => {
  const { page, take } = await open();
  await take([new File([formatHandOver(handOver)], 'ines.json'), new File(['{'], 'cut.json')]);
  await expect.poll(() => page.renderRoot.querySelector('.notice')?.textContent).toContain('cut.json');
  const row = page.renderRoot.querySelector('tbody tr')?.textContent ?? '';
  expect(row).toContain('Ines');
  expect(row).toMatch(/1\sday, last/);
  expect(row).toMatch(/silent for 10\sdays/);
});

test('the table grows file by file, and a file that is gone meanwhile is named', async () => {
  const { page, take } = await open();
  let arrive = (): void => undefined;
  const slow = Object.assign(new File([], 'mo.json'), {
    text: () =>
      new Promise<string>((resolve) => {
        arrive = () => resolve(formatHandOver({ ...handOver, archer: 'Mo', archerId: 'mo' }));
      }),
  });
  const gone = Object.assign(new File([], 'gone.json'), { text: () => Promise.reject(new DOMException('gone')) });
  await take([new File([formatHandOver(handOver)], 'ines.json'), slow, gone]);
  const names = () => [...page.renderRoot.querySelectorAll('tbody th')].map((cell) => cell.textContent?.trim());
  await expect.poll(names).toEqual(['Ines']);
  await expect.poll(() => page.renderRoot.querySelector('[role=status]')?.textContent).toMatch(/2\sfiles to read/);
  arrive();
  await expect.poll(names).toEqual(['Ines', 'Mo']);
  await expect
    .poll(() => page.renderRoot.querySelector('[role=status]')?.textContent?.trim())
    .toBe('gone.json: The file can’t be read.');
});

test('an answer goes into a file, and the archer’s records stay as they were', async () => {
  const { take, saved, sheet: sheetOf } = await open();
  await take([new File([formatHandOver(handOver)], 'ines.json')]);
  const sheet = await sheetOf();
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
    handOver: { ...handOver, answers: [{ by: 'Coach', comment: 'Rest the elbow.', madeAt: '2026-11-25T20:00:00Z' }] },
  });
});

test.each(['dark', 'light', 'contrast'])('axe finds nothing and nothing overflows 320 px, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const { page, take, sheet: sheetOf } = await open();
  page.style.width = '288px';
  await take([new File([formatHandOver(handOver)], 'ines.json')]);
  await sheetOf();
  expect(page.scrollWidth).toBeLessThanOrEqual(288);
  document.documentElement.style.fontSize = '200%';
  expect(page.scrollWidth).toBeLessThanOrEqual(288);
  document.documentElement.style.fontSize = '';
  expect((await axe.run(page, { resultTypes: ['violations'] })).violations).toEqual([]);
});

test('a coach writes days for the coming weeks: one date, every week, minutes; a day outside the span is reported', async () => {
  const { take, saved, sheet } = await open();
  await take([new File([formatHandOver(handOver)], 'ines.json')]);
  const element = await sheet();
  const days = element.renderRoot.querySelector('answer-days')!;
  await days.updateComplete;
  const field = (name: string) => days.renderRoot.querySelector(`[name="${name}"]`) as HTMLInputElement;
  const press = (words: RegExp) =>
    [...days.renderRoot.querySelectorAll('button')].find((one) => words.test(one.textContent ?? ''))?.click();
  field('day').value = '2027-03-01';
  press(/Add the day/);
  await days.updateComplete;
  expect(days.renderRoot.querySelector('[role="status"]')?.textContent).toMatch(/The day must be from/);
  field('day').value = '2026-11-26';
  field('program').value = 'Power';
  field('minutes').value = '20';
  field('weekly').checked = true;
  press(/Add the day/);
  await days.updateComplete;
  field('weekly').checked = false;
  field('program').value = 'Flexibility';
  press(/Add the day/);
  await days.updateComplete;
  expect(days.renderRoot.querySelectorAll('li').length).toBe(4);
  expect(days.renderRoot.querySelector('li')?.textContent).toContain('Power and Flexibility');
  const name = element.renderRoot.querySelector<HTMLInputElement>('form input')!;
  name.value = 'Kim';
  name.dispatchEvent(new Event('input'));
  element.renderRoot.querySelector('form')?.requestSubmit();
  const read = parseHandOver(saved[0]!.text);
  const dated = read.ok ? read.handOver.answers[0]?.dated : undefined;
  expect(dated).toMatchObject({ by: 'Kim', from: '2026-11-25', to: '2026-12-22' });
  expect(dated?.sessions.map(({ day }) => day)).toEqual(['2026-11-26', '2026-12-03', '2026-12-10', '2026-12-17']);
  expect(dated?.sessions[0]).toMatchObject({ minutes: 20, programs: [{ title: 'Power' }, { title: 'Flexibility' }] });
  const { violations } = await axe.run(element, { resultTypes: ['violations'] });
  expect(violations.map(({ id }) => id)).toEqual([]);
});

test('planned against done is on the sheet, in days, reps and seconds', async () => {
  const { take, sheet } = await open();
  const side = (seconds: number, reps: number) => ({ programs: ['Holding'], seconds, reps });
  const plan = {
    ...{ planned: { days: 2, reps: 40, seconds: 1200 }, done: { days: 1, reps: 18, seconds: 500 }, keptDays: 1 },
    days: [{ date: '2026-11-23', planned: side(600, 20), done: side(500, 18) }],
  };
  await take([new File([formatHandOver({ ...handOver, plan })], 'ines.json')]);
  const text = ((await sheet()).renderRoot.textContent ?? '').replaceAll(/\s+/g, ' ');
  expect(text).toContain(
    'Planned: 2 days, 40 reps, 20 min at full draw. Done: 1 day, 18 reps, 8 min 20 s. Kept: 1 of 2.',
  );
});

test('archers stay until they are removed, which can be undone; each has the ribbon of the last drill and days of 28', async () => {
  const shelf = createSquadShelf(`squad-${crypto.randomUUID()}`);
  const rep = {
    block: 0,
    set: 0,
    prescribedMs: 20_000,
    heldMs: 20_000,
    outcome: 'held' as const,
    hand: 'usual' as const,
  };
  const drills = ['2026-11-20', '2026-11-23'].map((date) => ({
    ...{ id: date, date, program: 'Slow mornings', startedAt: `${date}T06:30:00Z`, endedAt: `${date}T06:40:00Z` },
    reps: [0, 1, 2].map((one) => ({ ...rep, rep: one })),
  }));
  const text = formatHandOver({ ...handOver, drills });
  const first = await open(shelf);
  await first.take([new File([text], 'ines.json')]);
  await expect.poll(() => shelf.read()).toEqual([text]);
  first.page.remove();

  const { page } = await open(shelf);
  const row = () => page.renderRoot.querySelector('tbody tr');
  await expect.poll(() => row()?.textContent).toContain('Ines');
  expect(row()?.textContent?.replaceAll(/\s+/g, ' ')).toContain('2 of 28 days');
  expect(row()?.querySelector('lark-hold-ribbon')?.reps).toHaveLength(3);
  row()?.querySelector('button')?.click();
  await page.updateComplete;
  const sheet = page.renderRoot.querySelector('archer-sheet')!;
  sheet.app = page.app;
  await sheet.updateComplete;
  const buttonOf = (root: ParentNode, words: string) =>
    [...root.querySelectorAll('button')].find((one) => one.textContent?.trim() === words);
  buttonOf(sheet.renderRoot, 'Forget Ines')?.click();
  await expect.poll(row).toBeNull();
  expect(await shelf.read()).toEqual([]);
  await expect.poll(() => buttonOf(page.renderRoot, 'Undo')).toBeDefined();
  buttonOf(page.renderRoot, 'Undo')?.click();
  await expect.poll(() => row()?.textContent).toContain('Ines');
  expect(await shelf.read()).toEqual([text]);
});

test('a program of the coach’s own rack goes with the answer', async () => {
  const { take, saved, sheet: sheetOf } = await open();
  await take([new File([formatHandOver(handOver)], 'ines.json')]);
  const { renderRoot, updateComplete } = await sheetOf();
  const [by] = renderRoot.querySelectorAll<HTMLInputElement>('form input');
  by!.value = 'Kim';
  by!.dispatchEvent(new InputEvent('input'));
  const rack = renderRoot.querySelector<HTMLSelectElement>('select[name=rack]')!;
  rack.value = [...rack.options].find(({ text }) => text === 'Power')?.value ?? '';
  rack.dispatchEvent(new Event('change'));
  await updateComplete;
  renderRoot.querySelector('form')?.requestSubmit();
  await expect.poll(() => saved.length).toBe(1);
  const read = parseHandOver(saved[0]!.text);
  expect(read.ok && read.handOver.answers[0]?.program?.title).toBe('Power');
});
