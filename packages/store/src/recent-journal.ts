import { isSame, type Past } from '@larkhold/engine';
import type { Adapter, Change, Found } from './adapter.ts';
import type { SetAside } from './integrity-report.ts';
import { foldedTables, namedRows, namesOf, rowsSince } from './lately.ts';
import { isWhole, pastRow, readPast } from './past-row.ts';
import { runningOf } from './running-rows.ts';
import type { RecentJournal } from './store.ts';
import { checkTable, journalOf, put } from './stored-rows.ts';

/**
 * Reads the last weeks of a journal and the past that they go on from.
 * @param adapter where they lie
 * @param others the tables of the journal that are read whole, checked
 * @param today ISO 8601 day
 * @returns them, the latest edit in the whole journal, and the past as a text; undefined where there is no past that still holds, or where one of the
 * rows is damaged
 */
export async function readRecent(
  adapter: Adapter,
  others: Found,
  today: string,
): Promise<{ recent: RecentJournal; latest?: string; text: string } | undefined> {
  const { found, counts } = await adapter.readFew(['past', 'lately'], foldedTables, namedRows);
  const kept = readPast(found.get('past')?.get('past'), found, counts, today);
  if (!kept) return undefined;
  const damaged: SetAside[] = [];
  const few = foldedTables.map((table) => [table, checkTable(table, found.get(table) ?? new Map(), damaged)] as const);
  if (damaged.length > 0) return undefined;
  const all: Found = new Map([...others, ...few]);
  const { past, latest } = kept;
  const running = runningOf(all);
  const recent = { journal: journalOf(all), past, ...(running ? { running } : {}) };
  return { recent, ...(latest === undefined ? {} : { latest }), text: JSON.stringify(past) };
}

/**
 * Writes a folded past and names the rows that are not in it.
 * @param parts the adapter; the journal's tables as they are read, checked; the past of them and their latest edit; a new stamp; whether this past is
 * kept already
 * @returns the changes that were made, none where everything is kept already; undefined where the past is not of all of these rows, or another tab
 * has changed something that is not read here yet
 */
export async function writePast(parts: {
  adapter: Adapter;
  found: Found;
  past: Past;
  latest: string | undefined;
  stamp: string;
  isKnown: boolean;
}): Promise<Change[] | undefined> {
  const { adapter, found, past, latest, stamp } = parts;
  const since = rowsSince(found, past.before);
  const counts = new Map(foldedTables.map((table) => [table, found.get(table)?.size ?? -1]));
  if (!isWhole(past, since, counts)) return undefined;
  const names = namesOf(since);
  const known = found.get('lately') ?? new Map<string, unknown>();
  if (parts.isKnown && known.size === names.length && names.every((name) => known.has(name))) return [];
  const changes = await adapter.update(['lately', 'past'], (now) => {
    if (!isSame(Object.fromEntries(now.get('lately') ?? []), Object.fromEntries(known))) return [];
    return [
      put('past', 'past', pastRow(past, latest)),
      { table: 'lately', do: 'clear' },
      ...names.map((name) => put('lately', name, stamp)),
    ];
  });
  return changes.length > 0 ? changes : undefined;
}
