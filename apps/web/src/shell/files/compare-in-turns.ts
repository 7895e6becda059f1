import { compareJournals, createJournal, type Journal, type JournalComparison } from '@larkhold/engine';
import { nextTask } from '@larkhold/store';

/** Drills that are compared before the page gets a turn, of both sides together. */
const AT_ONCE = 1500;

/**
 * As `compareJournals`, while the page gets turns in between: what a merge makes of a drill depends on that drill alone, so that the drills can be
 * compared in parts.
 * @param ours the journal we have
 * @param incoming the one that would be merged
 * @param atOnce how many drills in one turn
 * @returns the same comparison; the drills it names are in another order
 */
export async function compareInTurns(ours: Journal, incoming: Journal, atOnce = AT_ONCE): Promise<JournalComparison> {
  const count = Math.ceil((ours.drills.length + incoming.drills.length) / atOnce);
  if (count <= 1) return compareJournals(ours, incoming);
  const all = compareJournals(besideDrills(ours), besideDrills(incoming));
  const [mine, theirs] = [drillParts(ours, count), drillParts(incoming, count)];
  const drills = { ...all.drills };
  for (let part = 0; part < count; part++) {
    await nextTask();
    const { drills: some } = compareJournals(mine[part] ?? createJournal(), theirs[part] ?? createJournal());
    for (const verdict of ['added', 'changed', 'kept', 'same', 'removed'] as const) {
      drills[verdict] = [...drills[verdict], ...some[verdict]];
    }
  }
  return {
    ...{ ...all, drills },
    addedCount: all.addedCount + drills.added.length,
    changedCount: all.changedCount + drills.changed.length,
    keptCount: all.keptCount + drills.kept.length,
    sameCount: all.sameCount + drills.same.length,
  };
}

function besideDrills(journal: Journal): Journal {
  const { removed } = journal;
  return { ...journal, drills: [], ...(removed ? { removed: removed.filter(({ of }) => of !== 'drills') } : {}) };
}

/** Drills and the marks of removed ones, those of one id always in the same part. */
function drillParts({ drills, removed = [] }: Journal, count: number): Journal[] {
  const parts = Array.from({ length: count }, () => ({
    ...createJournal(),
    drills: [] as (typeof drills)[number][],
    removed: [] as (typeof removed)[number][],
  }));
  for (const drill of drills) parts[partOf(drill.id, count)]?.drills.push(drill);
  for (const mark of removed) if (mark.of === 'drills') parts[partOf(mark.key, count)]?.removed.push(mark);
  return parts;
}

function partOf(id: string, count: number): number {
  let sum = 0;
  for (let at = 0; at < id.length; at++) sum = (sum * 31 + id.charCodeAt(at)) % 1_000_003;
  return sum % count;
}
