import { collectionNames, compareInstants, type Journal, singleNames, withoutDevice } from '@larkhold/engine';

/** How far ahead of this device's clock another one's is believed: a clock that is a year off. */
const BELIEVED_MS = 400 * 86_400_000;

/**
 * The latest edit of a journal, for a clock that never goes back.
 * @param journal any journal
 * @param now this device's clock, ISO 8601 UTC
 * @returns the latest instant that any row was edited or removed at, ISO 8601; those more than 400 days after `now` are not believed. Undefined
 * where there is none
 */
export function latestOf(journal: Journal, now: string): string | undefined {
  const end = new Date(Date.parse(now) + BELIEVED_MS).toISOString();
  let latest = '';
  const see = (stamp: unknown): void => {
    // Texts of one form are in order of time; another form is at most some hours off, which a row's own stamps make up for.
    if (typeof stamp === 'string' && stamp > latest && stamp <= end) latest = stamp;
  };
  for (const name of collectionNames) for (const row of journal[name] ?? []) see(row.editedAt);
  for (const name of singleNames) see(journal[name]?.editedAt);
  for (const mark of journal.removed ?? []) see(mark.at);
  const instant = withoutDevice(latest);
  return compareInstants(instant, undefined) > 0 ? instant : undefined;
}
