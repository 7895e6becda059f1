import { beginButton } from '../journeys/drill-program.ts';
import { drillView, passToHold } from '../journeys/fast-time.ts';
import type { KnownRep } from './known-reps.ts';
import { type Death, deaths } from './soaked-browser.ts';
import type { Life } from './soaked-life.ts';

/** What can go wrong while a hold is under way. */
export const holdFaults = [...deaths, 'slept', 'slept with a standing clock', 'Back pressed', 'second tab'] as const;
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
  let stands = true;
  for (let rep = 0; stands && (await toHold()); rep++) {
    const fault = faults.find((one, index) => one !== undefined && atRep[index] === rep);
    // What was really held changes what is asked on another day: how long, the screen says.
    const holdMs = (await drillView(browser.page))?.stepMs ?? 0;
    stands = fault ? await liveFault(life, reps, fault, holdMs) : await liveRep(life, reps, holdMs);
  }
  if (!stands) return;
  await browser.page.getByText('How was it?').waitFor();
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

/** One rep, of whose hold something has passed, as it goes on most days. @returns true: the drill still stands */
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

/** What stands on the disk of a hold is renewed every two seconds, and a busy machine's looks are late. */
const SLACK_MS = 2_500;

/** One rep in which something goes wrong. @returns whether the drill still stands */
async function liveFault(life: Life, reps: KnownRep[], fault: HoldFault, holdMs: number): Promise<boolean> {
  const { browser, dice } = life;
  life.count(fault);
  if (fault === 'second tab') {
    return liveRep(life, reps, holdMs, await refuseSecondTab(life));
  }
  const livedMs = dice.between(200, Math.min(1900, holdMs - 500));
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
    reps.push({ outcome: 'unsure', prescribedMs: holdMs, heldMs: livedMs, slackMs: SLACK_MS });
    await browser.page.getByRole('button', { name: 'Resume' }).click();
    return true;
  }
  if (fault === 'Back pressed') {
    await browser.page.goBack();
    await browser.page.locator('lark-drill .question').waitFor();
    return liveRep(life, reps, holdMs, livedMs);
  }
  // What is known of this hold was written down some time before.
  reps.push({ outcome: 'unsure', prescribedMs: holdMs, heldMs: livedMs, slackMs: SLACK_MS });
  return pickUp(life, fault);
}

/** Ends the page, and goes on with the drill afterwards or closes it. @returns whether it goes on */
async function pickUp({ browser, dice, count }: Life, how: Death): Promise<boolean> {
  await browser.die(how);
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
