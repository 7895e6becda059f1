import {
  answerHandOver,
  type DrillRecord,
  formatHandOver,
  formatJournal,
  type Outcome,
  parseProgram,
  shiftDay,
} from '@larkhold/engine';
import type { Page } from 'playwright-core';
import { holdsFile } from '../journeys/drill-program.ts';
import { putRows, storedDrills, storedRows } from '../journeys/stored-rows.ts';
import { correctKnown } from './known-reps.ts';
import type { Life } from './soaked-life.ts';

const outcomeWords = { held: 'Held', short: 'Short', skipped: 'Skipped', unsure: 'Unsure' } as const;
const outcomes: readonly [Outcome, ...Outcome[]] = ['held', 'short', 'skipped', 'unsure'];

/** A drill of the last two months, as it is on the disk, and its place in the model. */
async function pickDrill({ browser, dice, known }: Life): Promise<{ index: number; record: DrillRecord } | undefined> {
  const stored = (await storedDrills(browser.page)).filter(({ removed }) => !removed);
  const index = dice.between(Math.max(0, known.length - 50), known.length - 1);
  const record = stored[index];
  return record && { index, record };
}

/** The archer looks at a drill and puts one of its reps right. */
export async function correctOne(life: Life, page: Page): Promise<void> {
  const { browser, dice, known, count } = life;
  const picked = await pickDrill(life);
  const reps = picked && known[picked.index];
  if (!picked || !reps || reps.length === 0) return;
  const place = dice.between(0, reps.length - 1);
  const outcome = dice.pick(outcomes);
  await browser.go(`#/journal/${encodeURIComponent(picked.record.id)}`, page);
  const entry = page.locator('lark-drill-entry details[open]').first();
  await entry.getByRole('slider').focus();
  await page.keyboard.press('Home');
  for (let step = 0; step < place; step += 1) await page.keyboard.press('ArrowRight');
  // The rep's own answer, not one that is open because it did not go as asked.
  const asked = await entry.getByRole('slider').getAttribute('aria-valuenow');
  if (asked !== String(place + 1)) throw new Error(`rep ${place + 1} was chosen and ${asked} is`);
  const buttons = entry.locator('lark-rep-answer[data-picked]');
  const button = buttons.getByRole('button', { name: outcomeWords[outcome] });
  await button.click();
  await buttons.locator('[aria-pressed=true]', { hasText: outcomeWords[outcome] }).waitFor();
  const rep = reps[place];
  if (rep) correctKnown(rep, outcome);
  count(page === browser.page ? 'corrected' : 'corrected in a second tab');
}

/** The archer throws a drill away. */
export async function removeOne(life: Life): Promise<void> {
  const { browser, known, count } = life;
  const picked = await pickDrill(life);
  if (!picked) return;
  await browser.go(`#/journal/${encodeURIComponent(picked.record.id)}`);
  await browser.page.getByRole('button', { name: 'Remove this drill' }).first().click();
  await browser.page.locator('lark-drill-entry details[open]').waitFor({ state: 'detached' });
  known.splice(picked.index, 1);
  count('removed');
}

/** Another device's journal comes in: one drill that is new, and one of ours as it was before it was corrected. */
export async function takeIn(life: Life, isUndone: boolean): Promise<void> {
  const { browser, known, count } = life;
  const at = new Date(browser.nowMs).toISOString();
  const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 4000, heldMs: 4000, outcome: 'held' } as const;
  const theirs: DrillRecord = {
    id: `other-${browser.nowMs}`,
    program: 'Other device',
    date: at.slice(0, 10),
    startedAt: at,
    endedAt: at,
    reps: [rep],
  };
  const stale = await pickDrill(life);
  const ours = stale ? [{ ...stale.record, editedAt: undefined, reps: [] }] : [];
  const text = formatJournal({ drills: [...ours, theirs], days: [], weeks: [] });
  await browser.go('#/files');
  const { page } = browser;
  await dropFile(page, text);
  await page.locator('file-in').getByRole('button', { name: 'Restore' }).click();
  await page.getByText('other.json was restored.').waitFor();
  if (isUndone) {
    await page.locator('file-in').getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Undone: everything is as it was before.').waitFor();
    count('import undone');
    return;
  }
  known.push([{ outcome: 'held', prescribedMs: 4000, heldMs: 4000 }]);
  count('imported');
}

/** A file that is cut off, large enough to be read beside the page, is refused with its place. */
export async function refuseBroken({ browser, dice, count }: Life): Promise<void> {
  const day = `${JSON.stringify({ date: '2026-01-01', note: 'x'.repeat(2000) })},\n`;
  const text = `{"format":"larkhold/journal","version":3,"drills":[],"weeks":[],"days":[\n${day.repeat(dice.between(10, 600))}`;
  await browser.go('#/files');
  await dropFile(browser.page, text);
  await browser.page.locator('file-in').getByText('the file ends too early').waitFor();
  await browser.page.locator('file-in').getByRole('button', { name: 'Close' }).click();
  count('broken file');
}

/** A coach's answer comes back: its program takes the place of the archer's for a moment, and is taken back. */
export async function hearCoach({ browser, count }: Life): Promise<void> {
  const today = new Date(browser.nowMs).toISOString();
  const [from, to] = [shiftDay(today.slice(0, 10), -7), today.slice(0, 10)];
  const read = parseProgram(holdsFile(9, 2, 'Coach’s holds'));
  if (!read.ok) throw new Error(read.problems[0]?.message);
  const sent = {
    ...({
      format: 'larkhold/hand-over',
      version: 1,
      archerId: 'soak',
      archer: 'Ines',
      madeAt: today,
      from,
      to,
    } as const),
    ...{ includesNotes: false, programs: [], answers: [], weeks: [], days: [], drills: [] },
  };
  const text = formatHandOver(
    answerHandOver(sent, { by: 'Coach Ode', comment: '', madeAt: today, program: read.program }),
  );
  await browser.go('#/files');
  await dropFile(browser.page, text);
  await browser.page.locator('program-swap table').waitFor();
  await browser.page.locator('file-in').getByRole('button', { name: 'Add Coach’s holds to the rack' }).click();
  await browser.page.getByText('Coach’s holds is in the rack and on the line.').waitFor();
  await browser.page.locator('file-in').getByRole('button', { name: 'Undo' }).click();
  await browser.page.getByText('Undone: everything is as it was before.').waitFor();
  count('coach answered');
}

/** A row on the disk is damaged: it is set aside as it is, and all else is as it was. */
export async function damageRow({ browser, count }: Life): Promise<void> {
  const key = `damaged-${browser.nowMs}`;
  const row = { id: key, reps: 'none' };
  await putRows(browser.page, [['drills', key, row]]);
  await browser.page.reload();
  await browser.go('#/journal');
  const isAside = async () =>
    [...(await storedRows(browser.page, 'aside')).keys()].some((one) => one.startsWith(`drills/${key}`));
  for (const giveUpAt = Date.now() + 30_000; !(await isAside()); ) {
    if (Date.now() > giveUpAt) throw new Error('a damaged row was not set aside');
  }
  count('damaged row');
}

/** A part of the app is missing at the host: its page says so, the drill can be reached, and it comes when the host has it again. */
export async function losePart({ browser, count }: Life): Promise<() => Promise<void>> {
  const bringBack = await browser.losePart('trends-page');
  await browser.go('#/trends');
  await browser.page.getByRole('heading', { name: 'This page could not be loaded' }).waitFor();
  await browser.go('#/line');
  count('part missing');
  return async () => {
    await browser.go('#/trends');
    await bringBack();
    await browser.page.getByRole('button', { name: 'Try again' }).click();
    await browser.page.getByRole('heading', { name: 'Trends' }).waitFor();
  };
}

/** Drops a file on the page of files. The driver's own way to pick one keeps the page's nodes alive, and their number is what a soak watches. */
async function dropFile(page: Page, text: string): Promise<void> {
  await page.locator('file-in file-drop div').evaluate((place, content) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([content], 'other.json', { type: 'application/json' }));
    place.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true, composed: true }));
  }, text);
}
