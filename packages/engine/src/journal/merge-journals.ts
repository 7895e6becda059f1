import type { DrillRecord } from './drill-record.ts';
import { chooseVersion, compareInstants, type Edited } from './edit-order.ts';
import type { Journal, Milestone, NoteScrap } from './journal.ts';

/**
 * Merges two journals: the union of what both hold, each thing once, the later edit where they differ (see `chooseVersion`). Removed things
 * stay as marks. Commutative, associative and idempotent, so devices that exchange files in any order end equal.
 * @param a one journal. @param b another.
 * @returns a new journal, drills in order of time, days and weeks in order. Entries are shared with a and b, not copied.
 * @source own; a union of last-writer-wins registers.
 */
export function mergeJournals(a: Journal, b: Journal): Journal {
  const majorGoal =
    a.majorGoal === undefined || b.majorGoal === undefined
      ? (a.majorGoal ?? b.majorGoal)
      : chooseVersion(a.majorGoal, b.majorGoal);
  const notes = union(a.notes ?? [], b.notes ?? [], (note) => note.id).sort(byMaking);
  const milestones = union(a.milestones ?? [], b.milestones ?? [], (one) => one.id).sort(bySetting);
  return {
    drills: union(a.drills, b.drills, (record) => record.id).sort(byTime),
    days: union(a.days, b.days, (entry) => entry.date).sort((x, y) => compareText(x.date, y.date)),
    weeks: union(a.weeks, b.weeks, (page) => page.week).sort((x, y) => compareText(x.week, y.week)),
    ...(notes.length === 0 ? {} : { notes }),
    ...(milestones.length === 0 ? {} : { milestones }),
    ...(majorGoal === undefined ? {} : { majorGoal }),
  };
}

/**
 * Leaves out what was removed.
 * @param journal any journal.
 * @returns a journal without the marks of removed things.
 */
export function visibleJournal(journal: Journal): Journal {
  const stands = (thing: Edited): boolean => thing.removed !== true;
  return {
    ...journal,
    drills: journal.drills.filter(stands),
    days: journal.days.filter(stands),
    weeks: journal.weeks.filter(stands),
    ...(journal.notes === undefined ? {} : { notes: journal.notes.filter(stands) }),
    ...(journal.milestones === undefined ? {} : { milestones: journal.milestones.filter(stands) }),
  };
}

/**
 * A journal in which nothing has been done yet.
 * @returns an empty journal
 */
export function createJournal(): Journal {
  return { drills: [], days: [], weeks: [] };
}

function union<T extends Edited>(a: readonly T[], b: readonly T[], identityOf: (thing: T) => string): T[] {
  const things = new Map<string, T>();
  for (const side of [a, b]) {
    for (const thing of side) {
      const identity = identityOf(thing);
      const known = things.get(identity);
      things.set(identity, known === undefined ? thing : chooseVersion(known, thing));
    }
  }
  return [...things.values()];
}

function byTime(a: DrillRecord, b: DrillRecord): number {
  return compareText(a.date, b.date) || compareInstants(a.startedAt, b.startedAt) || compareText(a.id, b.id);
}

function byMaking(a: NoteScrap, b: NoteScrap): number {
  return compareInstants(a.madeAt, b.madeAt) || compareText(a.madeAt, b.madeAt) || compareText(a.id, b.id);
}

function bySetting(a: Milestone, b: Milestone): number {
  return compareText(a.setDay, b.setDay) || compareText(a.id, b.id);
}

function compareText(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
