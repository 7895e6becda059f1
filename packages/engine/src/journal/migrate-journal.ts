import { type CollectionName, collectionNames, journalCollections } from './collections.ts';

type Content = Record<string, unknown>;

/**
 * Brings the lists of a version 1 journal to version 2: a removed row, which was kept whole, becomes a mark that holds nothing of it.
 * @param file the file's content, as found; it is left as it is.
 * @returns the content of version 2.
 * @throws TypeError where a list is not a list.
 */
export function migrateJournal(file: Content): Content {
  const removed: { of: string; key: string; at: string }[] = [];
  const lists = collectionNames.flatMap((of) => {
    if (file[of] === undefined || of === 'opened') return [];
    return [
      [of, rowsOf(file[of], of).filter((row) => row.removed !== true || !removed.push(markOf(of, row)))] as const,
    ];
  });
  return { ...file, ...Object.fromEntries(lists), ...(removed.length === 0 ? {} : { removed }), version: 2 };
}

function rowsOf(value: unknown, of: string): Content[] {
  if (!Array.isArray(value)) throw new TypeError(`${of}: expected a list`);
  return value.map((row) => Object(row) as Content);
}

function markOf(of: CollectionName, row: Content): { of: string; key: string; at: string } {
  const { editedAt } = row;
  return { of, key: String(row[journalCollections[of].keyName]), at: typeof editedAt === 'string' ? editedAt : '' };
}
