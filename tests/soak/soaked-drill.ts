import { isoWeek } from '@larkhold/engine';
import { beginButton } from '../journeys/drill-program.ts';
import { drillView, passToHold } from '../journeys/fast-time.ts';
import { noteKept } from '../journeys/stored-rows.ts';
import type { KnownRep } from './known-reps.ts';
import { deaths } from './soaked-browser.ts';
import type { Life } from './soaked-life.ts';

/** What can go wrong while a hold is under way. */
export const holdFaults = [
  ...deaths,
  ...(['slept', 'slept with a standing clock', 'Back pressed', 'second tab', 'second tab at work'] as const),
] as const;
export type HoldFault = (typeof holdFaults)[number];

/**
 * Lives one drill, from the line to the line.
 * @param life the drill's reps are added to what it knows
 * @param faults what goes wrong, each in one hold
 * @param isFull the disk has no room from the beginning to the end of the drill
 */
export async function liveDrill(
  life: Life,
  faults: readonly (HoldFault | undefined)[],
  isFull: boolean,
): Promise<void> {
  const { browser, dice, known } = life;
  const reps: KnownRep[] = [];
  known.push(reps);
  await beginButton(browser.page).click();
  await browser.page.locator('lark-drill').waitFor();
  const asked = (await drillView(browser.page))?.progress.repsTotal ?? 1;
  const atRep = faults.map(() => dice.between(0, asked - 1));
  if (isFull) {
    life.count('disk full');
    await browser.fillDisk();
  }
  const toHold = () => passToHold(browser.page, (ms) => browser.pass(ms));
  let isUnderWay = true;
  for (let rep = 0; isUnderWay && (await toHold()); rep++) {
    const fault = faults.find((one, index) => one !== undefined && atRep[index] === rep);
    // What was really held changes what is asked on another day: how long, the screen says.
    const holdMs = (await drillView(browser.page))?.stepMs ?? 0;
    isUnderWay = fault ? await liveFault(life, reps, fault, holdMs) : await liveRep(life, reps, holdMs);
  }
  if (!isUnderWay) return;
  await browser.page.getByText('How was it?').waitFor();
  // The closing frame covers all of it for some seconds; a press sends it away.
  await browser.page.locator('lark-after .closing').dispatchEvent('pointerdown');
  await browser.page.getByRole('button', { name: 'Skip', exact: true }).click();
  await browser.page.getByRole('heading', { name: 'Logged' }).waitFor();
  if (!isFull) return browser.go('#/journal');
  await browser.page.getByText('The device has no room left').first().waitFor();
  await browser.makeRoom();
  // What had no room goes along with this write.
  await browser.go('#/kit/bow');
  const hand = browser.page.getByLabel('Drawing hand');
  await hand.selectOption((await hand.inputValue()) === 'left' ? 'right' : 'left');
  await browser.page.getByText('The device has no room left').waitFor({ state: 'detached' });
}

/** One rep, of whose hold something has passed, as it goes on most days. @returns true: the drill is still under way */
async function liveRep({ browser, dice }: Life, reps: KnownRep[], holdMs: number, passedMs = 0): Promise<boolean> {
  const lot = dice.next();
  const atMs = dice.between(passedMs, holdMs - 500);
  if (lot < 0.25) {
    await browser.pass(atMs - passedMs);
    await browser.page.keyboard.press(lot < 0.15 ? 'KeyL' : 'KeyN');
    reps.push({ outcome: lot < 0.15 ? 'short' : 'skipped', prescribedMs: holdMs, heldMs: atMs });
  } else {
    await browser.pass(holdMs - passedMs);
    reps.push({ outcome: 'held', prescribedMs: holdMs, heldMs: holdMs });
  }
  await browser.pass(1);
  return true;
}

/** A hold is looked at as often or oftener. */
const LOOK_MS = 100;
/** What is on the disk of a hold is renewed as often. */
const RENEWED_MS = 2_000;

/** One rep in which something goes wrong. @returns whether the drill is still under way */
async function liveFault(life: Life, reps: KnownRep[], fault: HoldFault, holdMs: number): Promise<boolean> {
  const { browser, dice } = life;
  life.count(fault);
  if (fault === 'second tab') {
    return liveRep(life, reps, holdMs, await refuseSecondTab(life));
  }
  if (fault === 'second tab at work') {
    await writeInSecondTab(life);
    return liveRep(life, reps, holdMs);
  }
  // As long after a look at the clock that the next one is due, so that the page knows of all of it.
  const livedMs = dice.between(2, Math.floor(holdMs / LOOK_MS) - 5) * LOOK_MS;
  await browser.pass(livedMs);
  if (fault === 'slept') {
    await browser.jump(dice.between(20_000, 3_600_000));
    reps.push({ outcome: 'unsure', prescribedMs: holdMs, heldMs: livedMs });
    await browser.page.getByRole('button', { name: 'Resume' }).click();
    return true;
  }
  if (fault === 'slept with a standing clock') {
    await browser.jumpWall(dice.between(20_000, 28_800_000));
    await browser.pass(200);
    reps.push({ outcome: 'unsure', prescribedMs: holdMs, heldMs: livedMs });
    await browser.page.getByRole('button', { name: 'Resume' }).click();
    return true;
  }
  if (fault === 'Back pressed') {
    await browser.page.goBack();
    await browser.page.locator('lark-drill .question').waitFor();
    return liveRep(life, reps, holdMs, livedMs);
  }
  // What is known of this hold was written down some time before.
  const knownMs = Math.floor(livedMs / RENEWED_MS) * RENEWED_MS;
  reps.push({ outcome: 'unsure', prescribedMs: holdMs, heldMs: knownMs });
  if (knownMs > 0) life.count('cut off with some of the hold on the disk');
  await browser.die(fault, knownMs);
  return pickUp(life);
}

/** Goes on with a drill that was cut off, or closes it. @returns whether it goes on */
async function pickUp({ browser, dice, count }: Life): Promise<boolean> {
  const notice = browser.page.getByRole('group', { name: 'Interrupted drill' });
  if (dice.chance(0.5)) {
    count('closed after it was cut off');
    await notice.getByRole('button', { name: 'Close it' }).click();
    await notice.waitFor({ state: 'detached' });
    return false;
  }
  count('gone on with after it was cut off');
  await notice.getByRole('button', { name: 'Go on with it' }).click();
  await browser.page.getByRole('button', { name: 'Resume' }).click();
  return true;
}

/** @returns milliseconds that it took of the hold */
async function refuseSecondTab({ browser }: Life): Promise<number> {
  const patienceMs = 500;
  const other = await browser.openTab('#/line');
  await other.getByText('runs in another tab of this browser').first().waitFor();
  await beginButton(other).click();
  await browser.pass(patienceMs);
  await other.getByText('Not begun').waitFor();
  await other.close();
  await browser.page.bringToFront();
  return patienceMs;
}

/** While the bow is drawn in one tab, a diary is written in another. */
async function writeInSecondTab({ browser, dice, days }: Life): Promise<void> {
  const day = new Date(browser.nowMs).toISOString().slice(0, 10);
  const note = `Written beside drill ${dice.between(1, 1_000_000)}`;
  const other = await browser.openTab(`#/week/${isoWeek(day)}/${day}`);
  await other.getByLabel('Note', { exact: true }).fill(note);
  await noteKept(other, day, note);
  await other.close();
  await browser.page.bringToFront();
  days.set(day, note);
}
