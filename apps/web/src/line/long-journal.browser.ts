import { builtInPrograms, type DrillRecord, dayNumber, dayOfNumber, foldPast } from '@larkhold/engine';
import { beforeEach, expect, test } from 'vitest';
import '@larkhold/ui/tokens.css';
import { todaysPrescription } from '../shell/todays-prescription.ts';
import { openTrialApp, type TrialApp, textOf } from '../shell/trial-app.ts';

const today = '2026-11-25';
const program = builtInPrograms[0]!;
let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp('#/line', today);
});

const line = () => trial.page.shadowRoot?.querySelector('lark-line')?.shadowRoot;

/** Six hundred mornings up to yesterday. */
function mornings(): DrillRecord[] {
  const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 10_000, heldMs: 10_000, outcome: 'held' } as const;
  const reps = Array.from({ length: 6 }, (_, at) => ({ ...rep, rep: at }));
  return Array.from({ length: 600 }, (_, at) => {
    const date = dayOfNumber(dayNumber(today) - 600 + at);
    const startedAt = `${date}T06:00:00Z`;
    return {
      ...{ id: `m${at}`, program: program.title, programId: program.id, date, startedAt, endedAt: startedAt },
      reps,
    };
  });
}

test('a long journal shows the same numbers as one that was folded at once, and all that is beside them', async () => {
  const drills = mornings();
  await trial.state.app!.act.takeIn({ journal: { drills, days: [], weeks: [] } });
  await expect.poll(() => trial.state.app!.view.journal.drills.length).toBe(600);
  const { view } = trial.state.app!;
  await expect.poll(() => textOf(line()?.querySelector('.begin'))).not.toBe('');
  // From nothing: records that nobody has seen before.
  const fresh = { ...view, journal: structuredClone(view.journal) };
  const shown = todaysPrescription(view, view.chosen);
  expect(todaysPrescription(fresh, view.chosen)).toEqual(shown);
  for (const part of ['then-and-now', 'last-drills', 'lark-day-strip', 'fatigue-fold', 'lark-cue-track']) {
    await expect.poll(() => line()?.querySelector(`.beside ${part}`)).toBeTruthy();
  }
  await expect.poll(() => line()?.querySelector('last-drills')?.shadowRoot?.querySelectorAll('li').length).toBe(5);
});

test('with only the last weeks read: the numbers of the whole and Begin; everything else says that it waits, and then is there', async () => {
  const drills = mornings();
  await trial.state.app!.act.takeIn({ journal: { drills, days: [], weeks: [] } });
  await expect.poll(() => trial.state.app!.view.journal.drills.length).toBe(600);
  const app = trial.state.app!;
  const { view } = app;
  const before = '2026-10-14';
  const past = foldPast({ records: drills, before, programs: [view.chosen] })!;
  const journal = { ...view.journal, drills: drills.filter(({ date }) => date >= before) };
  const { blocks } = todaysPrescription(view, view.chosen);
  const recent = { ...app, view: { ...view, journal, past } };
  // A page of its own: the app's state gives the other one whatever it reads next.
  const page = document.createElement('lark-app');
  page.app = recent;
  trial.page.replaceWith(page);
  const ofLine = (part: string) => page.shadowRoot?.querySelector('lark-line')?.shadowRoot?.querySelector(part);
  await expect.poll(() => textOf(ofLine('.beside'))).toMatch(/Reading the older drills/);
  expect(ofLine('.begin')).toBeTruthy();
  expect(Object(ofLine('lark-prescription')).prescription.blocks).toEqual(blocks);
  expect(ofLine('last-drills, then-and-now, lark-day-strip')).toBeNull();
  // Somebody who has been away for long is not mistaken for somebody new.
  const isNew = () => Boolean(ofLine('.first'));
  page.app = { ...app, view: { ...view, journal: { ...journal, drills: [] } } };
  await expect.poll(isNew).toBe(true);
  page.app = { ...recent, view: { ...recent.view, journal: { ...journal, drills: [] } } };
  await expect.poll(isNew).toBe(false);
  location.hash = '#/journal';
  const main = () => textOf(page.shadowRoot?.querySelector('main'));
  await expect.poll(main).toMatch(/Reading the older drills/);
  expect(page.shadowRoot?.querySelector('lark-journal, backup-notice')).toBeNull();
  page.app = app;
  await expect.poll(() => page.shadowRoot?.querySelector('lark-journal')).toBeTruthy();
  expect(main()).not.toMatch(/Reading the older drills/);
  page.remove();
});
