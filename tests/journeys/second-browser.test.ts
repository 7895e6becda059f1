import { builtInPrograms } from '@larkhold/engine';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { holdsFile } from './drill-program.ts';
import { everyPage } from './every-page.ts';
import { openFirefox, type SecondBrowser, until } from './firefox.ts';
import { type Host, serveCopy } from './update.ts';

let host: Host;
let firefox: SecondBrowser | undefined;

beforeAll(async () => {
  host = await serveCopy();
  firefox = await openFirefox(host.address);
});

afterAll(async () => {
  await firefox?.leave();
  await host.close().catch(() => undefined);
});

interface Kept {
  program: string;
  reps: { outcome: string; heldMs: number }[];
}

/** What is on the disk, read past the app. */
function keptDrills({ page }: SecondBrowser): Promise<Kept[]> {
  return page.evaluate(
    () =>
      new Promise<Kept[]>((resolve, reject) => {
        const opening = indexedDB.open('larkhold');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('drills').objectStore('drills').getAll();
          reading.onsuccess = () => {
            opening.result.close();
            resolve(reading.result);
          };
        };
      }),
  );
}

it('Firefox: a program from a file, a drill, its record after a reload, every page, and all of it offline', async () => {
  if (!firefox) {
    console.log('larkhold: no Firefox here, so nothing was run in a second browser. Install one, or set FIREFOX_PATH.');
    return;
  }
  const { page, faults, wait, press, go, giveToRack } = firefox;
  console.log(`larkhold: the second browser is ${firefox.version}`);
  await giveToRack(holdsFile(2, 2));
  await press('>>> button[aria-label="Use today: Attic holds"]');
  await go('#/line');
  // The rack's choice is written before the line shows it.
  await wait('>>> lark-line >>> h1::-p-text(Attic holds)');
  await press('>>> .begin');
  await wait('>>> lark-drill');
  await wait('>>> lark-after >>> form');
  // The closing frame covers all of it for some seconds; a press sends it away.
  await press('>>> lark-after >>> .closing');
  await press('>>> lark-after >>> .done button[type="button"]');
  await wait('>>> lark-told >>> h1');
  await page.reload();
  await go('#/journal');
  await wait('>>> lark-drill-entry');
  const [kept] = await keptDrills(firefox);
  expect(kept?.program).toBe('Attic holds');
  expect(kept?.reps.map(({ outcome, heldMs }) => [outcome, heldMs])).toEqual([
    ['held', 2000],
    ['held', 2000],
  ]);

  const ids = { '{id}': builtInPrograms[0]?.id ?? '', '{drill}': 'none' };
  const allPages = async () => {
    for (const hash of everyPage) await go(hash.replace(/\{\w+\}/, (name) => ids[name as keyof typeof ids]));
  };
  await allPages();
  expect(faults).toEqual([]);

  await until(page, () => navigator.serviceWorker.controller?.state === 'activated');
  await host.close();
  await page.reload();
  await allPages();
  await go('#/journal');
  await wait('>>> lark-drill-entry');
  await go('#/line');
  await press('>>> .begin');
  await wait('>>> lark-glance >>> .face.hold');
  expect(faults).toEqual([]);
});
