import { type DrillRecord, formatJournal, type Outcome } from '@larkhold/engine';
import type { Page } from 'playwright-core';
import { storedDrills } from '../journeys/stored-rows.ts';
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

/** Another device's journal comes in: one drill that is new, and one of ours as it was before it was put right. */
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

/** Drops a file on the page of files. The driver's own way to pick one keeps the page's nodes alive, and their number is what a soak watches. */
async function dropFile(page: Page, text: string): Promise<void> {
  await page.locator('file-in file-drop div').evaluate((place, content) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([content], 'other.json', { type: 'application/json' }));
    place.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true, composed: true }));
  }, text);
}
