import { builtInPrograms, formatProgram, parseHandOver } from '@larkhold/engine';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchChromium } from '../../scripts/browser.mjs';
import { openDevice } from './device.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
});

test('an archer hands over, the coach answers with a program, and the archer takes it on', async () => {
  const [archer, coach] = [await openDevice(browser, inject('address')), await openDevice(browser, inject('address'))];
  await archer.page.getByRole('button', { name: 'Load a demo journal' }).click();
  await archer.page.getByText('The demo journal is in here').waitFor();
  await archer.go('#/week');
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
  const program = { ...builtInPrograms[0]!, id: '0b6c1d6e-5a43-4c1e-9a52-6f0f3c1f7a11', title: 'Short and steady' };
  await coach.give('Attach a program (.drill.json)', 'short.drill.json', formatProgram(program));
  await coach.page.getByText('With Short and steady.').waitFor();
  const answered = await coach.save(() => coach.page.getByRole('button', { name: 'Save the answer' }).click());

  await archer.give('Open a backup, journal or answer', 'answer.json', answered);
  await archer.page.getByRole('button', { name: 'Keep the comment on the week’s page' }).click();
  await archer.page.getByRole('button', { name: 'Take on Short and steady' }).click();
  await archer.page.getByText("Short and steady is in the rack, and today's.").waitFor();
  await archer.page.getByText('Coach Ode: Shorter holds this week.').first().waitFor();
  await archer.go('#/line');
  await archer.page.getByText('Short and steady').first().waitFor();
  await archer.close();
  await coach.close();
});
