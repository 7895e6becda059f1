import { formatHandOver, parseHandOver, parseJournal } from '@larkhold/engine';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchShell } from '../../scripts/browser.mjs';
import { type Device, openDevice, saveJournal } from './device.ts';
import { holdsFile } from './drill-program.ts';
import { drillThrough } from './drill-through.ts';
import { outcomesOf, storedDrills } from './stored-rows.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchShell();
});
afterAll(async () => {
  await browser.close();
});

const PROGRAM = { id: '0b6c1d6e-5a43-4c1e-9a52-6f0f3c1f7a11', title: 'Short and steady' };

async function journalOf(device: Device) {
  const read = parseJournal(await saveJournal(device));
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return read.journal;
}

/** The answer as a coach's own program might write it: every record in it is another one. */
function withOtherRecords(text: string): string {
  const read = parseHandOver(text);
  if (!read.ok) throw new Error(read.problems[0]?.message);
  const { drills, days, weeks } = read.handOver;
  const editedAt = '2999-01-01T00:00:00Z';
  return formatHandOver({
    ...read.handOver,
    majorGoal: { text: 'What the coach wants', editedAt },
    drills: drills.map((drill) => ({ ...drill, reps: [], removed: true, editedAt })),
    days: days.map((day) => ({ ...day, feel: 1, editedAt })),
    weeks: weeks.map((week) => ({ ...week, focus: 'What the coach wants', editedAt })),
  });
}

test('an archer hands over, the coach answers with a program, and the archer takes it on', async () => {
  const [archer, coach] = [await openDevice(browser, inject('address')), await openDevice(browser, inject('address'))];
  await archer.page.getByRole('button', { name: 'Load a demo journal' }).click();
  await archer.page.getByText('The demo journal is in here').waitFor();
  await archer.go('#/files');
  await archer.page.getByText('Hand over to a coach', { exact: true }).click();
  await archer.page.getByLabel('Your name, as you call yourself').fill('Ines');
  const sent = await archer.save(() => archer.page.getByRole('button', { name: 'Save the hand-over' }).click());
  const handOver = parseHandOver(sent);
  if (!handOver.ok) throw new Error(handOver.problems[0]?.message);
  expect(handOver.handOver.days.length + handOver.handOver.drills.length).toBeGreaterThan(0);
  expect(sent).not.toContain('"note"');

  await coach.go('#/coach');
  await coach.give('Open hand-overs', 'ines.json', sent);
  await coach.page.getByRole('row', { name: /Ines/ }).waitFor();
  await coach.page.getByLabel('Your name').fill('Coach Ode');
  await coach.page.getByLabel('Comment').fill('Shorter holds this week.');
  await coach.give(
    'Attach a program (.drill.json)',
    'short.drill.json',
    JSON.stringify({ ...JSON.parse(holdsFile(1, 2)), ...PROGRAM }),
  );
  await coach.page.getByText('With Short and steady.').waitFor();
  const answered = await coach.save(() => coach.page.getByRole('button', { name: 'Save the answer' }).click());

  const before = await journalOf(archer);
  await archer.give('Open a file', 'answer.json', withOtherRecords(answered));
  await archer.page.getByRole('button', { name: 'Keep the comment on the week’s page' }).click();
  await archer.page.getByRole('button', { name: 'Add Short and steady to the rack' }).click();
  await archer.page.getByText('Short and steady is in the rack and on the line.').waitFor();
  await archer.page.getByText('Coach Ode: Shorter holds this week.').first().waitFor();
  const after = await journalOf(archer);
  // The program that the archer agreed to, and that it is today's, is all that is new beside the comment.
  const { opened, ownKit, ...records } = after;
  const { opened: openedBefore = [], ownKit: ownKitBefore, ...recordsBefore } = before;
  expect({ ...records, weeks: [] }).toEqual({ ...recordsBefore, weeks: [] });
  expect(opened?.map(({ id }) => id)).toEqual([...openedBefore.map(({ id }) => id), PROGRAM.id]);
  const bare = (kit: object = {}) => ({ ...kit, editedAt: undefined, edits: undefined });
  const programDay = expect.stringMatching(/^\d{4}-\d\d-\d\d$/); // it is today's in the place of the season's
  expect(bare(ownKit)).toEqual(bare({ ...ownKitBefore, programId: PROGRAM.id, programDay }));
  expect(after.weeks.map(({ focus }) => focus)).not.toContain('What the coach wants');
  expect(after.weeks.filter(({ comment }) => comment)).toHaveLength(1);

  await archer.go('#/line');
  await archer.page.getByRole('heading', { name: PROGRAM.title }).waitFor();
  await drillThrough(archer.page);
  const drilled = (await storedDrills(archer.page)).find(({ programId }) => programId === PROGRAM.id);
  // Two holds, or one on a day of rest.
  expect(new Set(outcomesOf(drilled))).toEqual(new Set(['held']));
  await archer.close();
  await coach.close();
});
