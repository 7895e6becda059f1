import {
  builtInPrograms,
  createJournal,
  createTrends,
  type Journal,
  layOut,
  markDays,
  milestonesShown,
  notesShown,
  type Program,
  prescribe,
  summarizeWeek,
} from '@larkhold/engine';
import type { KeptAside } from '@larkhold/store';
import {
  drillWords,
  formatDay,
  formatDayFrom,
  formatTimeOfDay,
  placeOfRep,
  repWords,
  say,
  weekTitle,
} from '@larkhold/words';

/** A list whose entries are drawn. */
export type DrawnList = 'opened' | 'drills' | 'days' | 'weeks' | 'notes' | 'milestones';

/** An entry that can't be shown: found damaged and set aside, or good by its schema and yet not to be drawn. */
export interface OddEntry extends KeptAside {
  /** It is still among the others of its list. */
  isListed: boolean;
}

/** What pages are drawn from. */
export interface DrawnView {
  journal: Journal;
  programs: readonly Program[];
  today: string;
}

const lists: readonly DrawnList[] = ['opened', 'drills', 'days', 'weeks', 'notes', 'milestones'];

/**
 * Looks for the entries that no page can draw: each list is tried whole, and halved while it fails, so that a good journal costs one try.
 * @param view what pages are drawn from
 * @returns the entries, by list; none where all can be drawn
 */
export function findOddEntries(view: DrawnView): { table: DrawnList; row: object; message: string }[] {
  return lists.flatMap((table) => {
    const rows: readonly object[] = table === 'opened' ? view.programs : (view.journal[table] ?? []);
    return sift(rows, (some) => tryToDraw(table, some, view.today)).map((found) => ({ table, ...found }));
  });
}

/**
 * How an entry that is still in its list is shown in place of itself.
 * @param table its list
 * @param row as it is kept
 * @param message what is wrong with it
 * @returns the entry
 */
export function oddEntry(table: DrawnList, row: object, message: string): OddEntry {
  const keyName = table === 'days' ? 'date' : table === 'weeks' ? 'week' : 'id';
  return { table, key: String(Reflect.get(row, keyName)), message, value: row, isListed: true };
}

function sift(rows: readonly object[], draw: (rows: readonly object[]) => void): { row: object; message: string }[] {
  if (rows.length === 0) return [];
  try {
    draw(rows);
    return [];
  } catch (error) {
    const [row] = rows;
    const reason = error instanceof Error ? error.message : String(error);
    if (rows.length === 1 && row) return [{ row, message: say('odd.notDrawn', { reason }) }];
    const half = Math.ceil(rows.length / 2);
    return [...sift(rows.slice(0, half), draw), ...sift(rows.slice(half), draw)];
  }
}

/** What pages work out and say of a list's entries. */
function tryToDraw(table: DrawnList, rows: readonly object[], today: string): void {
  if (table === 'opened') {
    for (const program of rows as Program[]) layOut(prescribe({ program, records: [], today }));
    return;
  }
  const journal: Journal = { ...createJournal(), [table]: rows };
  createTrends(journal, today, undefined);
  markDays(journal, today, 56);
  const [program] = builtInPrograms;
  if (program) prescribe({ program, records: journal.drills, days: journal.days, today });
  for (const { date, startedAt, reps, ...drill } of journal.drills) {
    formatDayFrom(date, today);
    formatTimeOfDay(startedAt);
    const record = { date, startedAt, reps, ...drill };
    drillWords(record);
    for (const rep of reps) placeOfRep(rep, record) && repWords(rep);
  }
  for (const { date } of journal.days) formatDay(date);
  for (const page of journal.weeks) weekTitle(page.week) && summarizeWeek(journal, page, 'monday');
  for (const { madeAt } of notesShown(journal.notes ?? [])) formatDayFrom(madeAt.slice(0, 10), today);
  const { open, reached } = milestonesShown(journal.milestones ?? []);
  for (const { setDay, reachedDay } of [...open, ...reached])
    formatDay(setDay, 'year') && reachedDay && formatDay(reachedDay);
}
