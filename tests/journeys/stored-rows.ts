import type { DayEntry, DrillRecord, SessionSnapshot } from '@larkhold/engine';
import type { Page } from 'playwright-core';
import { drillView } from './fast-time.ts';

/**
 * Reads a table past the app, straight from the browser's database.
 * @param page any page of the app
 * @param table its name
 * @returns what is on the disk, by key
 */
export async function storedRows(page: Page, table: string): Promise<Map<string, unknown>> {
  const found = await page.evaluate(
    (name) =>
      new Promise<[string, unknown][]>((resolve, reject) => {
        const opening = indexedDB.open('larkhold');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const rows = opening.result.transaction(name).objectStore(name);
          const keys = rows.getAllKeys();
          const values = rows.getAll();
          values.onerror = () => reject(values.error);
          values.onsuccess = () => {
            opening.result.close();
            resolve(keys.result.map((key, index) => [String(key), values.result[index]]));
          };
        };
      }),
    table,
  );
  return new Map(found);
}

/**
 * Reads the drill records past the app.
 * @param page any page of the app
 * @returns the records as they are on the disk, oldest first
 */
export async function storedDrills(page: Page): Promise<DrillRecord[]> {
  const found = [...(await storedRows(page, 'drills')).values()] as DrillRecord[];
  return found.sort((one, other) => Date.parse(one.startedAt) - Date.parse(other.startedAt));
}

/**
 * Waits until a day's note is on the disk.
 * @param page any page of the app
 * @param day ISO 8601
 * @param note what it has to say
 */
export async function noteKept(page: Page, day: string, note: string): Promise<void> {
  const noteOf = async () => ((await storedRows(page, 'days')).get(day) as DayEntry | undefined)?.note;
  for (const giveUpAt = Date.now() + 30_000; (await noteOf()) !== note; ) {
    if (Date.now() > giveUpAt) throw new Error(`the note of ${day} never reached the disk`);
  }
}

/** Outcomes of a record, in order. */
export const outcomesOf = (record: DrillRecord | undefined) => record?.reps.map(({ outcome }) => outcome);

/**
 * Writes past the app, as a damaged or strange disk would hold it. Load the page again afterwards.
 * @param page any page of the app
 * @param rows table, key, value
 */
export async function putRows(page: Page, rows: readonly [table: string, key: string, value: unknown][]) {
  await page.evaluate(
    (all) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('larkhold');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const writing = opening.result.transaction([...new Set(all.map(([table]) => table))], 'readwrite');
          for (const [table, key, value] of all) writing.objectStore(table).put(value, key);
          writing.onerror = () => reject(writing.error);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    rows,
  );
}

/**
 * Waits until the disk knows the step that the drill on the screen is in, and so every rep before it. The page may die then: a rep whose
 * writing is still under way, some milliseconds, is not yet kept.
 * @param page a page with a drill, on a clock that stands still
 * @param knownMs how much of the step the disk has to know as well, milliseconds
 */
export async function drillKept(page: Page, knownMs = 0): Promise<void> {
  const shown = (await drillView(page))?.step;
  if (!shown) throw new Error('no drill is on the screen');
  const isKept = async () => {
    const { walk, ledger } = (await storedRunning(page))?.snapshot ?? {};
    return walk?.step?.startMs === shown.startMs && (ledger?.seenMs ?? 0) - (ledger?.sinceMs ?? 0) >= knownMs;
  };
  for (const giveUpAt = Date.now() + 30_000; !(await isKept()); ) {
    if (Date.now() > giveUpAt) throw new Error(`${knownMs} ms of the step at ${shown.startMs} never reached the disk`);
  }
}

async function storedRunning(page: Page): Promise<{ snapshot: SessionSnapshot } | undefined> {
  return (await storedRows(page, 'single')).get('place') as { snapshot: SessionSnapshot } | undefined;
}
