import type { DrillRecord } from '@larkhold/engine';
import { afterEach, expect, test } from 'vitest';
import { page as frame } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { leaveTrial, openTrialApp, type TrialApp, textOf } from '../shell/trial-app.ts';

let trial: TrialApp;

afterEach(leaveTrial);

const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' } as const;
const drill = (date: string, reps: number): DrillRecord => ({
  ...{
    id: date,
    program: 'Attic mornings',
    date,
    startedAt: `${date}T06:00:00+00:00`,
    endedAt: `${date}T06:10:00+00:00`,
  },
  reps: Array.from({ length: reps }, (_, at) => ({ ...rep, rep: at })),
});

test('a month shows each day’s holds, arrows and pain in words too, leads to the day, and turns', async () => {
  trial = await openTrialApp('#/journal');
  const { act } = trial.state.app!;
  await act.putDrill(drill('2026-11-23', 4));
  await act.putDrill(drill('2026-10-05', 2));
  await act.putDay({ date: '2026-11-24', arrows: [{ kind: 'practice', count: 60 }], pain: true });
  const month = () => {
    const journal = trial.page.shadowRoot?.querySelector('lark-journal')?.shadowRoot;
    return journal?.querySelector('month-calendar')?.shadowRoot;
  };
  const named = (words: RegExp) =>
    [...(month()?.querySelectorAll('a') ?? [])].find((day) =>
      words.test(day.querySelector('.visually-hidden')?.textContent?.replaceAll('\u00a0', ' ') ?? ''),
    );
  await expect.poll(() => named(/23\b.*: 2 min$/)?.getAttribute('href')).toBe('#/week/2026-W48/2026-11-23');
  expect(named(/24\b.*: nothing held, 60 arrows, pain$/)).toBeDefined();
  expect(month()?.querySelectorAll('a.day')).toHaveLength(30);
  // 1 November 2026 is a Sunday; where weeks begin on Monday six places stay empty before it.
  await act.changeKit({ weekStart: 'monday' });
  await expect.poll(() => month()?.querySelector('li')?.querySelectorAll('.other').length).toBe(6);
  expect(month()?.querySelectorAll('li')).toHaveLength(6);
  const sums = () => [...(month()?.querySelectorAll('.sum') ?? [])].map((sum) => textOf(sum).replaceAll(/\s+/g, ' '));
  expect(sums()[4]).toBe('Week 48 2 min 60 arrows');
  expect(month()?.querySelectorAll('.sum')[4]?.getAttribute('href')).toBe('#/week/2026-W48');
  expect(month()?.querySelectorAll('svg .held')).toHaveLength(1);
  expect(month()?.querySelectorAll('svg .arrows')).toHaveLength(1);
  expect(month()?.querySelectorAll('svg .pain')).toHaveLength(1);
  expect(await trial.faults()).toEqual([]);
  await frame.viewport(320, 640);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(320);
  month()?.querySelector('button')?.click();
  await expect.poll(() => textOf(month()?.querySelector('h2'))).toBe('October 2026');
  await expect
    .poll(() => textOf(month()?.querySelector('[role=status]')))
    .toBe('1 min at full draw on 1 day, 0 arrows.');
});
