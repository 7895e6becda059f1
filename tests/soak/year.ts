import { beginButton, holdsFile, takeProgram } from '../journeys/drill-program.ts';
import { storedDrills, storedRows } from '../journeys/stored-rows.ts';
import { createDice } from './dice.ts';
import { correctOne, damageRow, hearCoach, losePart, refuseBroken, removeOne, takeIn } from './errands.ts';
import { countReps, differences } from './known-reps.ts';
import { type PageSize, SoakedBrowser } from './soaked-browser.ts';
import { type HoldFault, holdFaults, liveDrill } from './soaked-drill.ts';
import type { Life } from './soaked-life.ts';

/** What a soak found. */
export interface SoakReport {
  days: number;
  seed: number;
  drills: number;
  reps: number;
  /** What was done to the app, and how often. */
  survived: Record<string, number>;
  repsLost: number;
  /** What the journal says otherwise than the model, from the first day on that it does. */
  differences: string[];
  /** Errors on the pages. */
  faults: string[];
  /** The page in its second week, and at the end, after it has lived as long as `daysOfLastPage`. */
  early: PageSize;
  late: PageSize;
  daysOfLastPage: number;
}

const DAY_MS = 86_400_000;
/** In a long life the last days end no page, to see what one page gathers. */
const QUIET_DAYS = 30;
const errands = [
  'imported',
  'import undone',
  'corrected',
  'corrected in a second tab',
  'removed',
  'broken file',
  'coach answered',
  'part missing',
  'damaged row',
] as const;
type DayCard = HoldFault | (typeof errands)[number] | 'disk full' | 'nothing';
/** Each kind of trouble once. */
export const cards: readonly DayCard[] = [...holdFaults, ...errands, 'disk full', 'nothing'];
const quietCards = cards.filter((card) => !['tab closed', 'page crashed', 'reloaded', 'browser killed'].includes(card));

/**
 * Lives days of an archer in a real browser on fast time: drills, and everything that goes wrong around them.
 * @param address where the app is served
 * @param days how many
 * @param seed the same seed lives the same days
 * @param onDay hears of each day that is over
 * @returns the result
 */
export async function liveDays(
  address: string,
  days: number,
  seed: number,
  onDay: (day: number) => void = () => {},
): Promise<SoakReport> {
  const dice = createDice(seed);
  const browser = await SoakedBrowser.start(address, Date.UTC(2026, 0, 5, 5, 30));
  const survived: Record<string, number> = {};
  const count = (what: string): void => {
    survived[what] = (survived[what] ?? 0) + 1;
  };
  const life: Life = { browser, dice, known: [], days: new Map(), count };
  let found: string[] = [];
  let early: PageSize | undefined;
  let lastBoot = 0;
  let deck: DayCard[] = [];
  try {
    await takeProgram(browser.page, holdsFile(12, 3));
    for (let day = 0; day < days && found.length === 0; day++) {
      const isQuiet = days > 3 * QUIET_DAYS && day >= days - QUIET_DAYS;
      if (isQuiet) deck = deck.filter((card) => quietCards.includes(card));
      if (deck.length === 0) deck = dice.shuffle(isQuiet ? quietCards : cards);
      const page = browser.page;
      await liveDay(life, deck.pop() ?? 'nothing');
      if (page !== browser.page) lastBoot = day;
      found = [
        ...differences(life.known, await storedLive(browser)),
        ...otherNotes(life.days, await storedRows(browser.page, 'days')),
      ].map((one) => `day ${day}: ${one}`);
      if (day === Math.min(13, days - 1)) early = await browser.size();
      // Never on two days running, as is asked: on a day of rest the drill would be one rep.
      await browser.jump(dice.pick([2, 2, 3]) * DAY_MS - 600_000 + dice.between(0, 1_200_000));
      onDay(day);
    }
    const late = await browser.size();
    const reps = countReps(life.known);
    const kept = countReps((await storedLive(browser)).map((record) => record.reps));
    return {
      ...{ days, seed, drills: life.known.length, reps, survived },
      ...{ repsLost: Math.max(0, reps - kept), differences: found, faults: browser.faults },
      ...{ early: early ?? late, late, daysOfLastPage: days - lastBoot },
    };
  } finally {
    await browser.leave();
  }
}

async function storedLive(browser: SoakedBrowser) {
  return (await storedDrills(browser.page)).filter(({ removed }) => !removed);
}

/** A sentence for each note of the diary that is not on the disk as it was written. */
function otherNotes(known: ReadonlyMap<string, string>, stored: ReadonlyMap<string, unknown>): string[] {
  return [...known].flatMap(([day, note]) => {
    const kept: unknown = Object(stored.get(day)).note;
    return kept === note ? [] : [`${day}: “${note}” was written, ${JSON.stringify(kept)} is kept`];
  });
}

async function liveDay(life: Life, card: DayCard): Promise<void> {
  const { browser, dice } = life;
  await browser.go('#/line');
  await beginButton(browser.page).waitFor();
  const fault = holdFaults.find((one) => one === card);
  const bringBack = card === 'part missing' ? await losePart(life) : undefined;
  // On most days there is a second, rarer thing that goes wrong.
  const other = card === 'disk full' || !dice.chance(0.2) ? undefined : dice.pick<HoldFault>(['slept', 'second tab']);
  await liveDrill(life, [fault, other], card === 'disk full');
  if (card === 'corrected') await correctOne(life, browser.page);
  if (card === 'corrected in a second tab') {
    const tab = await browser.openTab('#/line');
    await correctOne(life, tab);
    await tab.close();
  }
  if (card === 'imported' || card === 'import undone') await takeIn(life, card === 'import undone');
  if (card === 'removed') await removeOne(life);
  if (card === 'broken file') await refuseBroken(life);
  if (card === 'coach answered') await hearCoach(life);
  if (card === 'damaged row') await damageRow(life);
  await bringBack?.();
}
