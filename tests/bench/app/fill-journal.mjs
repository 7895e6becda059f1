/** The program of the drill that is measured: holds of 30 s, rests of 60 s (built in). */
const PROGRAM_ID = '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002';
const REP_COUNT = 20;

/**
 * Fills a context's database with invented drills of 20 reps, up to yesterday, two a day where they are many.
 * @param context a fresh one of the browser
 * @param address where the built app is served
 * @param drillCount how many drills
 */
export async function fillJournal(context, address, drillCount) {
  const page = await context.newPage();
  await page.goto(`${address}#/line`);
  await page.locator('.begin').waitFor();
  await page.evaluate(
    async ([count, programId, repCount]) => {
      const database = await new Promise((resolve, reject) => {
        const asked = indexedDB.open('larkhold');
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
      });
      const rep = (place) => ({
        ...{
          block: 0,
          set: Math.floor(place / 10),
          rep: place % 10,
          hand: 'usual',
          prescribedMs: 30_000,
          heldMs: 30_000,
        },
        outcome: 'held',
      });
      const reps = Array.from({ length: repCount }, (_, place) => rep(place));
      const perDay = count > 5000 ? 5.5 : 1;
      const write = (from, to) =>
        new Promise((resolve, reject) => {
          const transaction = database.transaction(['drills', 'single'], 'readwrite');
          transaction.objectStore('single').put({ programId }, 'kit');
          for (let place = from; place < to; place += 1) {
            const at = new Date(Date.now() - (1 + Math.floor(place / perDay)) * 86_400_000).toISOString();
            const id = `bench-${place}`;
            const times = { date: at.slice(0, 10), startedAt: at, endedAt: at, editedAt: at };
            transaction
              .objectStore('drills')
              .put({ id, program: 'Invented', programId, ...times, reps, effort: 5 }, id);
          }
          transaction.oncomplete = resolve;
          transaction.onerror = () => reject(transaction.error);
        });
      for (let from = 0; from < Math.max(1, count); from += 2000) await write(from, Math.min(count, from + 2000));
      database.close();
    },
    [drillCount, PROGRAM_ID, REP_COUNT],
  );
  await page.close();
}

/**
 * Lets the app read a long journal once, as on any morning before, until it has folded what lies before the last weeks.
 * @param context its journal filled
 * @param address where the built app is served
 */
export async function letFold(context, address) {
  const page = await context.newPage();
  await page.goto(`${address}#/line`);
  await page.waitForFunction(
    async () => {
      const database = await new Promise((resolve) => {
        const asked = indexedDB.open('larkhold');
        asked.onsuccess = () => resolve(asked.result);
      });
      const count = await new Promise((resolve) => {
        const asked = database.transaction('past').objectStore('past').count();
        asked.onsuccess = () => resolve(asked.result);
      });
      database.close();
      return count > 0;
    },
    undefined,
    { timeout: 180_000, polling: 500 },
  );
  await page.close();
}
