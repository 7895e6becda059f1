import { journalCollections } from '../journal/collections.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import { isSame } from '../journal/edit-order.ts';
import { groupsOf, type MergeRow, type MergeRules, rowOf } from '../journal/field-groups.ts';
import type { Journal, WeekPage } from '../journal/journal.ts';
import { prescribe } from '../prescription/prescribe.ts';
import type { Program } from '../program/program.ts';
import { dayNumber, dayOfNumber, isoWeek } from '../units/calendar-day.ts';
import { createDemoChance, type DemoChance } from './demo-journal-chance.ts';
import { inventDay } from './demo-journal-day.ts';
import { inventDrill } from './demo-journal-drill.ts';
import { backNote, heldNotes, hurtNote, majorGoalWords, shortNotes, weekWords } from './demo-journal-words.ts';

/** Days that the diary spans: 26 weeks. */
const DAYS = 182;
/** The first weeks are drilled with the gentlest program. */
const STARTER_DAYS = 21;
/** The layoff: the morning that hurt is its first day. On its last days the diary says that nothing hurts any more. */
const [HURT_DAY, BACK_DAY] = [84, 103];
/** A baseline test before the main program, then every six weeks; none in the layoff. */
const [FIRST_TEST_DAY, TEST_EVERY_DAYS] = [17, 42];
/** Older than any edit of a real journal, so that whatever the archer writes wins a merge. */
const DEMO_EDITED_AT = '2000-01-01T00:00:00Z';

/** What to invent a diary from. */
export interface DemoJournalInput {
  /** ISO 8601 day: the diary's last. Its drills end the day before, so that today is still to be drilled. */
  endDay: string;
  /** The rack, the gentlest program first; at least one. */
  programs: readonly Program[];
  /** Title or id of the program that is drilled most; default the one called Holding, else the first with a bow, else the first. */
  program?: string;
  /** Another whole number gives another diary; default 7. */
  seed?: number;
}

/**
 * Invents half a year of an archer's diary: three or four mornings a week, holds that grow slowly, some let down early, a layoff after a
 * pain, tests, arrows, feel and week pages. Nobody's own data. The same input gives the same diary. Ids of drills begin with 'demo-'.
 * @param input last day, programs, and which is drilled most
 * @returns a journal
 * @throws RangeError when there is no such day or program, or no programs at all
 * @source own: an invented archer, for showing what the journal looks like
 */
export function createDemoJournal(input: DemoJournalInput): Journal {
  const { starter, main, test } = choosePrograms(input);
  const firstNumber = dayNumber(input.endDay) - DAYS + 1;
  const chance = createDemoChance(input.seed ?? 7);
  const journal: Journal = {
    drills: [],
    days: [],
    weeks: [],
    majorGoal: { text: majorGoalWords, editedAt: DEMO_EDITED_AT },
  };
  let wasLaidOff = false;

  for (let day = 0; day < DAYS; day++) {
    const date = dayOfNumber(firstNumber + day);
    const isOff = day > HURT_DAY && day < BACK_DAY;
    const drill = isOff || day === DAYS - 1 ? undefined : drillOf(day, date);
    if (drill !== undefined) journal.drills.push({ ...drill, editedAt: DEMO_EDITED_AT });
    const entry = inventDay(
      date,
      { hasDrilled: drill !== undefined, isOff, isAsked: isOff && day > HURT_DAY + 2 },
      chance,
    );
    if (entry !== undefined) journal.days.push({ ...entry, editedAt: DEMO_EDITED_AT });
    if (day % 14 === 6) journal.weeks.push(pageOf(isoWeek(date), Math.floor(day / 14)));
  }
  return journal;

  function drillOf(day: number, date: string): DrillRecord | undefined {
    const isTest = day % TEST_EVERY_DAYS === FIRST_TEST_DAY;
    const hurts = day === HURT_DAY;
    if (!isTest && !hurts && day !== BACK_DAY && !isMorning(firstNumber + day, chance)) return undefined;
    const program = isTest ? test : day < STARTER_DAYS ? starter : main;
    const { drills: records, days } = journal;
    const today = prescribe({ program, records, days, today: date });
    if (today.blocks.length === 0 || (today.rest && !hurts)) return undefined;
    const record = inventDrill(
      {
        program,
        blocks: today.blocks,
        date,
        longestHoldSeconds: longestHold(day),
        onFingersLbf: day < STARTER_DAYS ? 28 : 32,
        ...(isTest && { formFailsAtRep: Math.round(7 + day / 25 + chance.between(-1, 1)) }),
        ...(hurts && { hurtsAfterReps: 4 }),
      },
      chance,
    );
    const note = noteOf(record, !wasLaidOff && day >= BACK_DAY, chance);
    wasLaidOff = day >= BACK_DAY;
    return note === undefined ? record : { ...record, note };
  }
}

/**
 * Takes an invented diary out of a journal again: its drills, and its days and weeks where they are still as they were invented.
 * @param journal any journal
 * @param demo the diary as `createDemoJournal` gave it
 * @returns the journal without it; what the archer wrote or changed stays
 */
export function removeDemoJournal(journal: Journal, demo: Journal): Journal {
  const days = new Map(demo.days.map((day) => [day.date, day]));
  const weeks = new Map(demo.weeks.map((week) => [week.week, week]));
  const { majorGoal, ...rest } = journal;
  return {
    ...rest,
    ...(majorGoal !== undefined && !isSame(majorGoal, demo.majorGoal) && { majorGoal }),
    drills: journal.drills.filter((drill) => !drill.id.startsWith('demo-')),
    days: journal.days.flatMap((day) => withoutInvented(day, days.get(day.date), journalCollections.days)),
    weeks: journal.weeks.flatMap((page) => withoutInvented(page, weeks.get(page.week), journalCollections.weeks)),
  };
}

/** What the archer wrote of a page: a merge lays it over what was invented, field by field. */
function withoutInvented<T extends MergeRow>(row: T, invented: T | undefined, rules: MergeRules): T[] {
  if (invented === undefined) return [row];
  const made = groupsOf(invented, rules);
  const groups = [...groupsOf(row, rules)];
  const own = groups.filter(([name, group]) => !isSame(group, made.get(name)));
  if (own.length === groups.length) return [row];
  const key = { [String(rules.keyName)]: row[String(rules.keyName)] };
  return own.length === 0 ? [] : [rowOf(key, new Map(own), row.editedAt) as T];
}

function choosePrograms({ programs, program }: DemoJournalInput) {
  const first = programs[0];
  if (first === undefined) throw new RangeError('programs is empty; expected at least one program');
  const wanted = programs.find((one) => one.id === program || one.title === program);
  if (program !== undefined && wanted === undefined)
    throw new RangeError(`program is '${program}'; expected the title or id of one of the programs`);
  const usual = programs.find((one) => one.title === 'Holding') ?? programs.find((one) => one.tool === 'bow');
  const main = wanted ?? usual ?? first;
  return { starter: first, main, test: programs.find((one) => one.kind === 'test') ?? main };
}

/** Monday, Wednesday and Friday mostly, Saturday now and then. */
function isMorning(number: number, chance: DemoChance): boolean {
  const weekday = (((number + 3) % 7) + 7) % 7;
  if (weekday === 5) return chance.percent(55);
  return (weekday === 0 || weekday === 2 || weekday === 4) && chance.percent(95);
}

/** Grows by a quarter of a second a day, falls back by a tenth over the layoff. */
function longestHold(day: number): number {
  return day < BACK_DAY ? 44 + day * 0.25 : 44 + (day - 26) * 0.25;
}

function noteOf(record: DrillRecord, isBack: boolean, chance: DemoChance): string | undefined {
  if (record.pain) return hurtNote;
  if (isBack) return backNote;
  if (record.reps.some((rep) => rep.outcome === 'short')) return chance.one(shortNotes);
  return chance.percent(35) ? chance.one(heldNotes) : undefined;
}

function pageOf(week: string, turn: number): WeekPage {
  return { week, ...weekWords[turn % weekWords.length], editedAt: DEMO_EDITED_AT };
}
