type Row = Record<string, unknown>;

/**
 * A backup of version 1 as one of version 2 says the same: programs with their ids, and marks in the place of removed rows. Written apart from the
 * migration, so that one can be held against the other.
 * @param text a backup of version 1
 * @returns the content of version 2
 */
export function asVersion2(text: string): Row {
  const { programs, ...file } = JSON.parse(text) as Row & { programs: Row[] };
  const lists = { drills: 'id', days: 'date', weeks: 'week', notes: 'id', milestones: 'id' };
  const marks: Row[] = [];
  for (const [of, keyName] of Object.entries(lists)) {
    const rows = (file[of] ?? []) as Row[];
    for (const { [keyName]: key, removed, editedAt } of rows) if (removed) marks.push({ of, key, at: editedAt });
    if (file[of]) file[of] = rows.filter(({ removed }) => !removed);
  }
  const opened = programs.map((program) => ({ id: program.id, program }));
  return { ...file, version: 2, opened, ...(marks.length > 0 ? { removed: marks } : {}) };
}
