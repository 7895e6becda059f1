import type { DrillRecord, SessionSnapshot } from '@larkhold/engine';
import type { Page } from 'playwright-core';
import { drillView } from './fast-time.ts';

/**
 * Reads the drill records past the app, straight from the browser's database.
 * @param page any page of the app
 * @returns the records as they are on the disk, oldest first
 */
export async function storedDrills(page: Page): Promise<DrillRecord[]> {
  const found = await page.evaluate(
    () =>
      new Promise<unknown[]>((resolve, reject) => {
        const opening = indexedDB.open('larkhold');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('drills').objectStore('drills').getAll();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            opening.result.close();
            resolve(reading.result);
          };
        };
      }),
  );
  return (found as DrillRecord[]).sort((a, b) => Date.parse(a.startedAt) - Date.parse(b.startedAt));
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
 */
export async function drillKept(page: Page): Promise<void> {
  const shown = (await drillView(page))?.step;
  if (!shown) throw new Error('no drill is on the screen');
  const startOf = async () => (await storedRunning(page))?.snapshot.walk.step?.startMs;
  for (const giveUpAt = Date.now() + 30_000; (await startOf()) !== shown.startMs; ) {
    if (Date.now() > giveUpAt) throw new Error(`the step at ${shown.startMs} ms never reached the disk`);
  }
}

function storedRunning(page: Page): Promise<{ snapshot: SessionSnapshot } | undefined> {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('larkhold');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('single').objectStore('single').get('running');
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            opening.result.close();
            resolve(reading.result);
          };
        };
      }),
  );
}
