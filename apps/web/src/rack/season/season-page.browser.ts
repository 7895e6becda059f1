import { afterEach, beforeEach, expect, test } from 'vitest';
import { page as window_ } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { parseSeason } from '@larkhold/engine';
import { openTrialApp, type TrialApp, textOf } from '../../shell/trial-app.ts';

let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp('#/season'); // Wednesday 25 November 2026
});

afterEach(() => window_.viewport(1280, 900));

const page = () => trial.page.shadowRoot?.querySelector('season-page')?.shadowRoot;
const part = (tag: string) => page()?.querySelector(tag)?.shadowRoot;
const rows = () => [...(page()?.querySelectorAll('tbody tr') ?? [])].map(textOf);
const own = () => trial.state.app?.view.season.own;
const buttonIn = (root: ShadowRoot | null | undefined, words: RegExp) =>
  [...(root?.querySelectorAll('button') ?? [])].find((one) =>
    words.test(one.getAttribute('aria-label') ?? textOf(one)),
  );

/** Fills in a form by the names of its fields, and sends it. */
function fill(list: string, values: Record<string, string>): void {
  const form = part('season-lists')?.querySelector(`section[aria-labelledby="${list}"] form`) as HTMLFormElement;
  for (const [name, value] of Object.entries(values)) (form.elements.namedItem(name) as HTMLInputElement).value = value;
  form.requestSubmit();
}

async function openFile(name: string, text: string): Promise<void> {
  const drop = part('season-file')?.querySelector('file-drop');
  drop?.dispatchEvent(new CustomEvent('files-take', { detail: [new File([text], name)] }));
}

test('without a season there are two mornings a week, and they say so', async () => {
  await expect.poll(() => rows().length).toBe(16);
  expect(rows()[0]).toContain('Club starter');
  expect(textOf(page()?.querySelector('.forecast'))).toContain('two or three mornings a week');
  for (const theme of ['dark', 'light', 'contrast']) {
    document.documentElement.dataset.theme = theme;
    expect(await trial.faults()).toEqual([]);
  }
});

test('a competition, rest days and a test are set, seen in the weeks, and taken back', async () => {
  await expect.poll(() => part('season-lists')?.querySelectorAll('form').length).toBe(3);
  fill('competitions', { title: 'County indoor', day: '2026-12-12', importance: 'main' });
  await expect
    .poll(() => own()?.competitions)
    .toEqual([{ title: 'County indoor', day: '2026-12-12', importance: 'main' }]);
  await expect.poll(() => rows().join(' ')).toContain('County indoor');
  expect(textOf(page()?.querySelector('.kind'))).toContain('lighter before the competition');
  fill('restDays', { from: '2026-12-24', to: '2026-12-27', why: 'family' });
  await expect.poll(() => rows().join(' ')).toMatch(/Rest days until .*: family/);
  fill('tests', { program: 'Baseline test', day: '2026-12-03' });
  await expect.poll(() => rows().join(' ')).toContain('Baseline test');
  buttonIn(part('season-lists'), /^Remove County indoor/)?.click();
  await expect.poll(() => own()?.competitions.length).toBe(0);
  buttonIn(page(), /^Undo/)?.click();
  await expect.poll(() => own()?.competitions.length).toBe(1);
  expect(await trial.faults()).toEqual([]);
});

test('an impossible value is reported, stays in its field, and changes nothing', async () => {
  await expect.poll(() => part('season-lists')?.querySelectorAll('form').length).toBe(3);
  fill('restDays', { from: '2026-12-27', to: '2026-12-24' });
  await expect.poll(() => textOf(page()?.querySelector('[role="status"]'))).toContain('it would end before it begins');
  expect(own()).toBeUndefined();
  expect(part('season-lists')?.querySelector<HTMLInputElement>('[name="from"]')?.value).toBe('2026-12-27');
});

test('weekdays of one’s own: begun from what there is, changed, given up again', async () => {
  await expect.poll(() => buttonIn(part('season-weekdays'), /Write weekdays/)).toBeDefined();
  buttonIn(part('season-weekdays'), /Write weekdays/)?.click();
  await expect.poll(() => own()?.blocks.length).toBe(1);
  await expect.poll(() => part('season-weekdays')?.querySelector('form')).toBeTruthy();
  const form = part('season-weekdays')?.querySelector('form') as HTMLFormElement;
  const choose = (name: string, title: string) => {
    const select = form.elements.namedItem(name) as HTMLSelectElement;
    select.value = [...select.options].find((option) => textOf(option) === title)!.value;
  };
  choose('tuesday 0', 'Holding');
  choose('tuesday 1', 'Flexibility');
  form.requestSubmit();
  await expect
    .poll(() => own()?.blocks[0]?.days.tuesday?.map(({ title }) => title))
    .toEqual(['Holding', 'Flexibility']);
  await expect.poll(() => rows().filter((row) => /Flexibility/.test(row)).length).toBeGreaterThan(0);
  expect(await trial.faults()).toEqual([]);
  buttonIn(part('season-weekdays'), /Go back/)?.click();
  await expect.poll(() => own()?.blocks.length).toBe(0);
});

test('a season file is saved, refused with its problems, and used with its notices', async () => {
  await expect.poll(() => part('season-file')).toBeTruthy();
  buttonIn(part('season-file'), /Save as a season file/)?.click();
  expect(trial.saved[0]?.name).toBe('two-mornings-a-week.season.json');
  expect(parseSeason(trial.saved[0]!.text).ok).toBe(true);
  await openFile('bad.season.json', '{\n  "format": "larkhold/season",\n  "version": 1,\n  "title": "Winter"\n}');
  await expect.poll(() => textOf(part('season-file'))).toMatch(/bad\.season\.json is not a season.*Line 1, column 1/);
  expect(own()).toBeUndefined();
  const days = Object.fromEntries(
    ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'].map((name) => [
      name,
      [{ title: 'Nobody has this' }],
    ]),
  );
  const block = { title: 'Base', from: '2026-11-23', weeks: 4, days };
  const blocks = [block, { ...block, title: 'Peak', from: '2026-11-30' }];
  const season = { format: 'larkhold/season', version: 1, title: 'Winter', blocks };
  await openFile('winter.season.json', JSON.stringify(season));
  await expect.poll(() => textOf(part('season-file'))).toContain('There is no program “Nobody has this” here');
  const said = textOf(part('season-file'));
  expect(said).toContain('After six days in a row there is a rest day all the same');
  expect(said).toContain('“Base” and “Peak” overlap');
  buttonIn(part('season-file'), /Use this season/)?.click();
  await expect.poll(() => own()?.title).toBe('Winter');
  await expect.poll(() => textOf(page())).toContain('What will not happen as written');
  expect(trial.state.app?.view.season.due[0]).toMatchObject({ kind: 'rest', because: { rule: 'programMissing' } });
});

test('the weeks are handed over as a calendar, each program by its own name', async () => {
  await expect.poll(() => rows().length).toBe(16);
  buttonIn(page(), /calendar/)?.click();
  await expect.poll(() => trial.saved[0]?.name).toBe('two-mornings-a-week-2026-11-25.ics');
  expect(trial.saved[0]?.text.match(/SUMMARY:Club starter/g)?.length).toBe(16);
});

test('a season of blocks, tests and competitions is at most three phone screens long, and says what is next', async () => {
  await window_.viewport(390, 844);
  const days = { monday: [{ title: 'Holding' }], thursday: [{ title: 'Power' }], saturday: [{ title: 'Flexibility' }] };
  const begins = ['2026-11-23', '2026-12-21', '2027-01-18', '2027-02-15', '2027-03-15', '2027-03-22'];
  const blocks = begins.map((from, at) => ({ title: `Block ${at + 1}`, from, weeks: 4, lighterWeeks: [4], days }));
  const competitions = ['2026-12-12', '2027-02-06', '2027-03-06'].map((day) => ({
    ...{ title: `Indoor of ${day}`, day, importance: 'middle' },
  }));
  const tests = [{ day: '2026-12-02', program: { title: 'Baseline test' } }];
  const restDays = [{ from: '2026-12-24', to: '2026-12-27', why: 'family' }];
  const season = parseSeason(
    JSON.stringify({ format: 'larkhold/season', version: 1, title: 'Winter', blocks, competitions, tests, restDays }),
  );
  if (!season.ok) throw new Error(JSON.stringify(season.problems));
  await trial.state.app?.act.putSeason(season.season);
  await expect.poll(() => part('season-weekdays')?.querySelectorAll('form').length).toBe(6);
  await expect.poll(() => textOf(page()?.querySelector('.next'))).toMatch(/^Next date: Baseline test, Wednesday/);
  const [first, second] = page()?.querySelectorAll<HTMLDetailsElement>('.week') ?? [];
  expect([first?.open, second?.open]).toEqual([true, false]);
  // What will not happen as written is never folded.
  const [notice] = page()?.querySelectorAll('.notice .notices li') ?? [];
  expect(textOf(notice)).toContain('“Block 5” and “Block 6” overlap');
  expect(notice?.closest('details')).toBeNull();
  expect(document.documentElement.scrollHeight / 844).toBeLessThanOrEqual(3);
  expect(await trial.faults()).toEqual([]);
});

test('on a small telephone nothing is cut off', async () => {
  await window_.viewport(320, 640);
  await expect.poll(() => buttonIn(part('season-weekdays'), /Write weekdays/)).toBeDefined();
  buttonIn(part('season-weekdays'), /Write weekdays/)?.click();
  await expect.poll(() => part('season-weekdays')?.querySelector('form')).toBeTruthy();
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(320);
  expect(await trial.faults()).toEqual([]);
});
