import { compareInstants, isSame } from '@larkhold/engine';
import type { Change, Found } from './adapter.ts';

/**
 * Makes an edit later than what it edits, also where the clock was set back in between: or a merge with an older copy would undo it.
 * @param change what the archer wants stored
 * @param found what is stored, at least the change's table
 * @returns the change; stamped a millisecond after the stored version where its own instant is not later and it says something else
 * @source own; the winner of a merge is the later edit (`mergeJournals`), so edits of one thing must be in order
 */
export function editAfter(change: Change, found: Found): Change {
  if (change.do !== 'put') return change;
  const stored = found.get(change.table)?.get(change.key);
  const [before, after] = [editedAtOf(stored), editedAtOf(change.value)];
  if (before === undefined || after === undefined || compareInstants(after, before) > 0) return change;
  if (isSame(change.value, stored)) return change;
  return { ...change, value: { ...Object(change.value), editedAt: new Date(Date.parse(before) + 1).toISOString() } };
}

function editedAtOf(value: unknown): string | undefined {
  if (typeof value !== 'object' || value === null || !('editedAt' in value)) return undefined;
  return typeof value.editedAt === 'string' ? value.editedAt : undefined;
}
