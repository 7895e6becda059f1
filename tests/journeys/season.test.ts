import { readFile } from 'node:fs/promises';
import {
  builtInPrograms,
  createHandOver,
  createJournal,
  type DrillRecord,
  dayNumber,
  dayOfNumber,
  formatHandOver,
  type Journal,
  type Prescription,
  parseHandOver,
  prescribe,
  seasonEffects,
  todaysProgram,
} from '@larkhold/engine';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { type Archer, arrive, leaveAll } from './archer.ts';

afterAll(leaveAll);

const HOLDING = builtInPrograms.find(({ title }) => title === 'Holding')!;
const [firstDay, minutes] = ['2026-11-25', 20];
const dayAfter = (day: string, days: number): string => dayOfNumber(dayNumber(day) + days);
const plain = (text: string | null | undefined): string => (text ?? '').replaceAll(/\s+/g, ' ').trim();

/** Goes to the line on a day, as the archer's own clock has it. */
async function morning({ page, context }: Archer, day: string): Promise<void> {
  await context.clock.setFixedTime(`${day}T06:30:00Z`);
  await page.goto(`${page.url().split('#')[0]}#/line`);
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
}

/** What the page knows, through the app's own state. */
const journalOf = (page: Page): Promise<Journal> =>
  page.evaluate(
    () => (document.querySelector('lark-app') as unknown as { app: { view: { journal: Journal } } }).app.view.journal,
  );

/** Writes a drill down as the drill itself does. */
const putDrill = (page: Page, record: DrillRecord): Promise<unknown> =>
  page.evaluate((drill) => {
    const app = document.querySelector('lark-app') as unknown as {
      app: { act: { putDrill(one: DrillRecord): Promise<boolean> } };
    };
    return app.app.act.putDrill(drill);
  }, record);

/** What the season has for a day, and the numbers for it. */
function todays(journal: Journal, today: string): { prescription: Prescription; isDue: boolean } {
  const taken = { takenId: HOLDING.id!, takenDay: firstDay };
  const archer = { bow: 'recurve' as const };
  const { program, season } = todaysProgram({ journal, programs: builtInPrograms, today, archer, ...taken });
  const { drills: records, days } = journal;
  const effects = seasonEffects(season, program, today, taken.takenDay);
  const prescription = prescribe({ program, records, days, today, minutes, archer, ...effects });
  return { prescription, isDue: !prescription.rest && prescription.blocks.length > 0 };
}

function cleanRecord(
  { programTitle, blocks, tool, durationMs }: Prescription,
  date: string,
  pain: boolean,
): DrillRecord {
  const reps = blocks.flatMap(({ block, sets, reps: count, holdMs }) =>
    Array.from({ length: sets * count }, (_, at) => ({
      ...{ block, set: Math.floor(at / count), rep: at % count, hand: 'usual' as const },
      ...{ prescribedMs: holdMs, heldMs: holdMs, outcome: 'held' as const },
    })),
  );
  return {
    ...{ id: `drill ${date}`, program: programTitle, programId: HOLDING.id, date, tool: tool ?? 'bow', durationMs },
    ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:20:00Z`, reps, effort: 5, pain },
  };
}

const heldOf = ({ blocks }: Prescription): number =>
  blocks.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0);

/** Takes the program of these journeys. */
async function takeHolding(page: Page): Promise<void> {
  await page.goto(`${page.url().split('#')[0]}#/rack`);
  await page.getByRole('button', { name: 'Use today: Holding' }).click();
  await page.getByText('On the line', { exact: true }).first().waitFor();
}

describe('a season of mornings', () => {
  it('pain after a drill: rest the next morning, and a way back over a fortnight', async () => {
    const archer = await arrive('#/line', { timezoneId: 'Europe/London' });
    const { page, faults } = archer;
    await morning(archer, firstDay);
    await takeHolding(page);
    const before = todays(await journalOf(page), firstDay).prescription;
    await putDrill(page, cleanRecord(before, firstDay, true));

    await morning(archer, dayAfter(firstDay, 1));
    await page.getByRole('heading', { name: 'A rest day' }).waitFor();
    expect(plain(await page.locator('rest-day .reason').textContent())).toMatch(/pain on 25 November/i);
    const tools: string[] = [];
    for (let at = 1; at <= 14; at++) {
      const day = dayAfter(firstDay, at);
      await morning(archer, day);
      const { prescription, isDue } = todays(await journalOf(page), day);
      tools.push(prescription.rest?.rule === 'painMimed' ? 'mimed' : (prescription.tool ?? 'bow'));
      const question = page.locator('rest-day').getByRole('button', { name: 'No', exact: true });
      if (prescription.rest?.rule === 'painMimed') await question.click();
      else if (isDue) {
        expect(heldOf(prescription)).toBeLessThanOrEqual(heldOf(before));
        await putDrill(page, cleanRecord(prescription, day, false));
      } else {
        // No drill today: the page of what is known asks the open question too.
        await page.goto(`${page.url().split('#')[0]}#/known`);
        await page.locator('known-page').getByRole('button', { name: 'No', exact: true }).click();
      }
      await expect.poll(async () => isAnswered(await journalOf(page), day)).toBe(true);
    }
    expect([...new Set(tools)]).toEqual(['mimed', 'band', 'light-bow', 'bow']);
    await page.goto(`${page.url().split('#')[0]}#/known`);
    await page.getByText('None, as far as you said.').waitFor();
    expect(faults).toEqual([]);
    await archer.leave();
  });

  it('clean mornings of twenty minutes climb, and the page of what is known shows it', async () => {
    const archer = await arrive('#/line', { timezoneId: 'Europe/London' });
    const { page, faults } = archer;
    await morning(archer, firstDay);
    await takeHolding(page);
    const first = todays(await journalOf(page), firstDay).prescription;
    let mornings = 0;
    for (let at = 0; at < 84; at++) {
      const day = dayAfter(firstDay, at);
      const { prescription, isDue } = todays(await journalOf(page), day);
      if (!isDue) continue;
      expect(prescription.durationMs).toBeLessThanOrEqual(minutes * 60_000);
      await putDrill(page, cleanRecord(prescription, day, false));
      mornings += 1;
    }
    // Two or three a week, as it is without a season of one's own.
    expect(mornings).toBeGreaterThanOrEqual(24);
    expect(mornings).toBeLessThanOrEqual(37);
    const last = dayAfter(firstDay, 84);
    await morning(archer, last);
    const longest = (one: Prescription) => Math.max(...one.blocks.map(({ holdMs }) => holdMs));
    const now = todays(await journalOf(page), last).prescription;
    expect(longest(now)).toBeGreaterThan(longest(first));
    await page.goto(`${page.url().split('#')[0]}#/known`);
    const climb = plain(await page.locator('lark-climb p').textContent());
    expect(climb).toMatch(/^From \d+(\.\d)? s in the week of .* to \d+(\.\d)? s now/);
    const [from, to] = [...climb.matchAll(/(\d+(?:\.\d)?) s /g)].map(([, seconds]) => Number(seconds));
    expect(to).toBeGreaterThan(from!);
    await page.goto(`${page.url().split('#')[0]}#/season`);
    await page.getByText('two or three mornings a week').first().waitFor();
    expect(faults).toEqual([]);
    await archer.leave();
  });
});

/** Presses what saves a file. */
async function saved(page: Page, press: () => Promise<void>): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return readFile(await download.path(), 'utf8');
}

/** Gives a file to a file field. */
async function give(page: Page, field: string, name: string, text: string): Promise<void> {
  const file = { name, mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.locator(`input[type=file][aria-label="${field}"]`).setInputFiles(file);
}

describe("a coach's month", () => {
  it('is written in an answer, accepted, due on its days, and comes back in seconds, reps and days', async () => {
    const archer = await arrive('#/coach', { timezoneId: 'Europe/London', acceptDownloads: true });
    const { page, context, faults } = archer;
    const go = (hash: string) => page.goto(`${page.url().split('#')[0]}${hash}`);
    await context.clock.setFixedTime(`${firstDay}T06:30:00Z`);
    await page.reload();
    // The coach opens a hand-over of somebody who has drilled nothing yet, and writes Thursdays until the month is over.
    const thursday = '2026-11-26';
    const handOver = createHandOver({
      ...{ journal: createJournal(), archerId: 'ines', archer: 'Ines', programs: [HOLDING] },
      ...{ from: '2026-10-29', to: firstDay, madeAt: `${firstDay}T06:00:00Z` },
    });
    await give(page, 'Open hand-overs', 'ines.json', formatHandOver(handOver));
    await page.getByLabel('Your name').fill('Kim');
    await page.getByLabel('Comment').fill('Thursdays this month.');
    const days = page.locator('answer-days');
    await days.locator('input[name=day]').fill(thursday);
    await days.locator('select[name=program]').selectOption('Holding');
    await days.getByLabel('Minutes, if they matter').fill('20');
    await days.getByLabel('And the same weekday until the last day').check();
    await days.getByRole('button', { name: 'Add the day' }).click();
    const answer = await saved(page, () => page.getByRole('button', { name: 'Save the answer' }).click());

    // The archer takes the days in: what is between them is rest, with the next day that is not.
    await go('#/files');
    await give(page, 'Open a file', 'answer.json', answer);
    await page.getByRole('button', { name: 'Put these days in my season' }).click();
    await page.getByText('These days are in your season').first().waitFor();
    await morning(archer, dayAfter(thursday, 1));
    await page.getByText(/Kim wrote no drill for today\. The next one is on .*3 December/).waitFor();
    await morning(archer, dayAfter(thursday, 7));
    await page.getByRole('heading', { name: 'Holding' }).waitFor();
    await page.getByText('Kim wrote this day for you.').waitFor();

    // By hand: four holds of 20 s on that day, one of 15 s on a day that nobody planned.
    await putDrill(page, heldRecord(dayAfter(thursday, 7), 4, 20));
    await putDrill(page, heldRecord(dayAfter(thursday, 9), 1, 15));
    await morning(archer, dayAfter(thursday, 11));
    await go('#/files');
    await page.getByText('Hand over to a coach', { exact: true }).click();
    await page.getByLabel('Your name, as you call yourself').fill('Ines');
    const sent = await saved(page, () => page.getByRole('button', { name: 'Save the hand-over' }).click());
    const read = parseHandOver(sent);
    if (!read.ok) throw new Error(read.problems[0]?.message);
    expect(read.handOver.plan).toMatchObject({
      done: { days: 2, reps: 5, seconds: 95 },
      planned: { days: 2 },
      keptDays: 1,
    });
    await go('#/coach');
    await give(page, 'Open hand-overs', 'ines-again.json', sent);
    await page.getByText(/Planned: 2\sdays, .* Done: 2\sdays, 5\sreps, 1\D+35/).waitFor();
    expect(faults).toEqual([]);
    await archer.leave();
  });
});

function heldRecord(date: string, count: number, seconds: number): DrillRecord {
  const held = { prescribedMs: seconds * 1000, heldMs: seconds * 1000, outcome: 'held' as const };
  return {
    ...{ id: `drill ${date}`, program: HOLDING.title, programId: HOLDING.id, date, tool: 'bow' },
    ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:10:00Z`, pain: false },
    reps: Array.from({ length: count }, (_, rep) => ({ block: 0, set: 0, rep, hand: 'usual' as const, ...held })),
  };
}

function isAnswered({ drills, days }: Journal, day: string): boolean {
  return (
    drills.some(({ date, pain }) => date === day && pain === false) ||
    days.some(({ date, pain }) => date === day && pain === false)
  );
}
