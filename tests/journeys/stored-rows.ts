import type { DrillRecord } from '@larkhold/engine';
import type { Page } from 'playwright-core';

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

/** Lets writes that the app asked for before reach the disk: one more, in turn after them, is waited for. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('larkhold');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const all = [...opening.result.objectStoreNames];
          const writing = opening.result.transaction(all, 'readwrite', { durability: 'strict' });
          writing.onabort = () => reject(writing.error);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
}
