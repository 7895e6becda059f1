import { type DrillRecord, nextPrograms } from '@larkhold/engine';
import { beforeEach, expect, test } from 'vitest';
import '@larkhold/ui/tokens.css';
import { openTrialApp, type TrialApp, textOf } from '../shell/trial-app.ts';

const today = '2026-11-25';
const HOLDING = { id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002', title: 'Holding' };
let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp('#/line', today);
});

const line = () => trial.page.shadowRoot?.querySelector('lark-line')?.shadowRoot;
const part = (tag: string) => line()?.querySelector(tag)?.shadowRoot;
const title = () => textOf(line()?.querySelector('h1'));
const begin = () => line()?.querySelector<HTMLButtonElement>('.begin');
const act = () => trial.state.app!.act;
const winter = (season: object) => ({
  ...{ format: 'larkhold/season', version: 1, title: 'Winter', blocks: [], tests: [], competitions: [] },
  ...{ restDays: [], dated: [], ...season },
});
const putSeason = (season: object) => act().putSeason(winter(season) as never);
const wednesday = (...titles: string[]) => ({
  blocks: [
    {
      ...{ title: 'Base', from: '2026-11-23', weeks: 4, lighterWeeks: [], keep: 0.6 },
      days: { wednesday: titles.map((one) => ({ title: one })) },
    },
  ],
});
const drill = (date: string, program: { id?: string; title: string }, more: object = {}): DrillRecord => ({
  ...{ id: `${program.title} ${date}`, program: program.title, programId: program.id, date, pain: false, effort: 4 },
  ...{ startedAt: `${date}T05:00:00Z`, endedAt: `${date}T05:10:00Z` },
  reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 5000, heldMs: 5000, outcome: 'held' }],
  ...more,
});

test('without a season one program is ready, with who says so and what leads on', async () => {
  await expect.poll(title).toBe('Club starter');
  expect(textOf(part('due-today'))).toContain('Two or three mornings a week');
  expect(textOf(part('leads-on'))).toMatch(/What today counts for.*counts in full/);
  expect(textOf(begin())).toBe('Begin');
  expect(await trial.faults()).toEqual([]);
});

test('two are due side by side: the second comes when the first is done, or at a press', async () => {
  await putSeason(wednesday('Holding', 'Flexibility'));
  await expect.poll(title).toBe('Holding');
  expect(textOf(part('due-today'))).toContain('Week 1 of 4 in “Base”.');
  expect(textOf(part('due-today'))).toContain('After it: Flexibility');
  part('due-today')?.querySelector('button')?.click();
  await expect.poll(title).toBe('Flexibility');
  await act().chooseProgram(HOLDING.id);
  await expect.poll(title).toBe('Holding');
  await act().putDrill(drill(today, HOLDING));
  await expect.poll(title).toBe('Flexibility');
  expect(textOf(part('due-today'))).toContain('Holding: done today.');
  expect(textOf(begin())).toBe('Begin');
  expect(await trial.faults()).toEqual([]);
});

test('a rest day comes with its reason first, and no key begins it', async () => {
  await act().putDrill(drill('2026-11-24', HOLDING));
  await expect.poll(() => textOf(part('rest-day'))).toMatch(/^A rest day Nothing is planned today: two or three/);
  expect(textOf(part('rest-day'))).toContain('The next one is Friday');
  expect(textOf(begin())).toBe('Drill all the same');
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'Space', cancelable: true }));
  expect(line()?.querySelector('lark-drill')).toBeNull();
  expect(await trial.faults()).toEqual([]);
});

test('the day before a competition is for rest, and what is drilled all the same is less', async () => {
  await putSeason({ competitions: [{ title: 'Club shoot', day: '2026-11-26', importance: 'minor' }] });
  await expect.poll(() => textOf(part('rest-day'))).toContain('The competition is tomorrow');
  expect(textOf(begin())).toBe('Drill all the same');
});

test('with pain nothing is offered at all', async () => {
  await act().putDay({ date: today, pain: true });
  await expect.poll(() => textOf(part('rest-day'))).toContain('Nothing is offered today');
  expect(begin()).toBeNull();
});

test('a test is due alone; a program that nobody has is reported', async () => {
  await putSeason({ tests: [{ day: today, program: { title: 'Baseline test' } }] });
  await expect.poll(title).toBe('Baseline test');
  expect(textOf(part('due-today'))).toContain('A test is due today');
  await putSeason(wednesday('Nobody has this'));
  await expect.poll(() => textOf(part('rest-day'))).toContain('Due today: Nobody has this');
});

test('what the archer chooses is for today only, and the season says what it has', async () => {
  await putSeason(wednesday('Holding'));
  await act().chooseProgram('5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1003');
  await expect.poll(title).not.toBe('Holding');
  expect(textOf(part('due-today'))).toContain('The season has Holding.');
  await act().changeKit({ programDay: '2026-11-24' });
  await expect.poll(title).toBe('Holding');
});

test('at the top of a ladder the next programs are offered; one press takes one for today', async () => {
  const starter = trial.state.app!.view.programs.find((one) => one.title === 'Club starter')!;
  for (let at = 0; at < 60; at++) {
    const date = new Date(Date.UTC(2026, 6, 25) + at * 2 * 86_400_000).toISOString().slice(0, 10);
    const { todaysPrescription } = await import('../shell/todays-prescription.ts');
    const view = { ...trial.state.app!.view, today: date };
    const { blocks } = todaysPrescription({ journal: view.journal, kit: view.kit, today: date }, starter);
    const reps = blocks.flatMap(({ block, sets, reps: count, holdMs }) =>
      Array.from({ length: sets * count }, (_, rep) => ({
        ...{ block, set: Math.floor(rep / count), rep: rep % count, hand: 'usual' as const },
        ...{ prescribedMs: holdMs, heldMs: holdMs, outcome: 'held' as const },
      })),
    );
    await act().putDrill(drill(date, starter, { reps }));
  }
  const [next] = nextPrograms(starter);
  await expect.poll(() => textOf(part('leads-on'))).toContain('What comes after Club starter');
  const button = [...(part('leads-on')?.querySelectorAll('button') ?? [])].find((one) =>
    textOf(one).includes(next!.title),
  );
  button?.click();
  await expect.poll(title).toBe(next!.title);
});
