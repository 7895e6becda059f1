import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { chromiumFlags, findShell } from '../../scripts/find-chromium.mjs';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, takeProgram } from './drill-program.ts';
import { passUntil, standStill } from './fast-time.ts';
import { PATIENCE_MS } from './patience.ts';
import { outcomesOf, putRows, storedDrills, storedRows } from './stored-rows.ts';

afterAll(leaveAll);

async function saved(page: Page, button: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).first().click(),
  ]);
  return readFile(await download.path(), 'utf8');
}

/** The journal as another device gets it. */
async function journalFile(page: Page): Promise<string> {
  await page.goto(`${page.url().split('#')[0]}#/files`);
  return saved(page, 'Journal, for another device');
}

/** Drills all of today's program and leaves the questions after it. */
async function drillOnce(page: Page, at?: number): Promise<void> {
  await standStill(page.context(), at);
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.locator('lark-drill').waitFor();
  await passUntil(page.context(), page.getByText('How was it?'));
  await page.getByRole('button', { name: 'Skip', exact: true }).click();
  await page.context().clock.resume();
}

describe.concurrent('when storage fails', () => {
  it('a disk that fills up in the middle of a drill costs no rep', async () => {
    const { page, context, leave } = await arrive('#/line');
    await takeProgram(page, holdsFile(2, 3));
    await standStill(context);
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.locator('lark-drill').waitFor();
    await passUntil(context, page.getByText(/rep 2 of 3/i).first());
    // Chromium looks at the room left only every half minute, so the error itself is put in.
    await page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
      Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { put }) });
    });
    await passUntil(context, page.getByText('How was it?'));
    await page.getByRole('button', { name: 'Skip', exact: true }).click();
    await page.getByText('The device has no room left').waitFor();
    expect((await storedDrills(page))[0]?.reps.length).toBe(1);
    const drill = JSON.parse(await saved(page, 'Save this drill as a file'));
    expect(outcomesOf(drill)).toEqual(['held', 'held', 'held']);
    const backup = JSON.parse(await saved(page, 'Save everything as a file'));
    expect(backup.drills[0].reps).toHaveLength(3);

    // Room is made: the next write takes along what had waited.
    await page.evaluate(() => (window as unknown as { makeRoom(): void }).makeRoom());
    await page.goto(`${inject('address')}#/kit/bow`);
    await page.getByLabel('Drawing hand').selectOption('left');
    await page.getByText('The device has no room left').waitFor({ state: 'detached' });
    expect(outcomesOf((await storedDrills(page))[0])).toEqual(['held', 'held', 'held']);
    await leave();
  });

  it('a disk that the browser itself calls full: the app starts, says so at the first write, and drills', async () => {
    const { page, context, leave } = await arrive('icon.svg');
    const cdp = await context.newCDPSession(page);
    await cdp.send('Storage.overrideQuotaForOrigin', { origin: new URL(inject('address')).origin, quotaSize: 1 });
    await page.goto(`${inject('address')}#/line`);
    await takeProgram(page, holdsFile(2, 1));
    await page.getByText('The device has no room left').waitFor();
    await drillOnce(page);
    expect(outcomesOf(JSON.parse(await saved(page, 'Save this drill as a file')))).toEqual(['held']);
    await leave();
  });

  it.each([
    ['a private window that refuses', 'SecurityError', 'This browser keeps nothing for this page.'],
    ['a database that cannot be read', 'UnknownError', 'could not be read or written'],
    ['a database of a newer version', 'VersionError', 'A newer version of the app'],
    ['another tab that holds on', 'none', 'Another tab holds the journal.'],
  ])('%s: the app starts, says so, drills, and offers the file', async (_, name, words) => {
    const { context, leave } = await arrive('#/line');
    await context.addInitScript((errorName) => {
      const opens = IDBFactory.prototype.open;
      IDBFactory.prototype.open = function open(this: IDBFactory, ...given: Parameters<IDBFactory['open']>) {
        if (errorName === 'SecurityError') throw new DOMException('no', errorName);
        const request = opens.apply(this, given);
        const never = errorName === 'none';
        for (const type of ['success', 'upgradeneeded', ...(never ? ['error'] : [])]) {
          request.addEventListener(type, (event) => event.stopImmediatePropagation());
        }
        if (!never) {
          Object.defineProperty(request, 'error', { value: new DOMException('no', errorName) });
          setTimeout(() => request.dispatchEvent(new Event('error', { cancelable: true })));
        }
        return request;
      };
    }, name);
    const next = await context.newPage();
    await next.goto(`${inject('address')}#/line`);
    await next.getByText(words).first().waitFor();
    await takeProgram(next, holdsFile(2, 1));
    await drillOnce(next);
    const drill = JSON.parse(await saved(next, 'Save this drill as a file'));
    expect(drill.reps.length).toBeGreaterThan(0);
    const backup = JSON.parse(await saved(next, 'Save everything as a file'));
    expect(backup.drills).toHaveLength(1);
    await leave();
  });

  it('the browser is asked to keep the journal once there is something to keep, and not again when it has said yes', async () => {
    const { page, context, leave } = await arrive('icon.svg');
    await context.addInitScript(() => {
      const asked = () => Number(localStorage.getItem('asked') ?? 0);
      StorageManager.prototype.persisted = async () => asked() > 0;
      StorageManager.prototype.persist = async () => {
        localStorage.setItem('asked', String(asked() + 1));
        return true;
      };
    });
    const asked = () => page.evaluate(() => localStorage.getItem('asked'));
    await page.goto(`${inject('address')}#/line`);
    await takeProgram(page, holdsFile(2, 1));
    expect(await asked()).toBeNull();
    await drillOnce(page);
    await page.waitForFunction(() => localStorage.getItem('asked') === '1', undefined, { polling: 100 });
    await page.goto(`${inject('address')}#/kit/stored`);
    await page.getByText('The browser keeps it also when room runs out.').waitFor();
    await page.goto(`${inject('address')}#/line`);
    await page.getByRole('button', { name: 'Begin' }).waitFor();
    await drillOnce(page);
    expect(await asked()).toBe('1');
    await leave();
  });

  it('a damaged record is set aside, said in the kit, and is in the file', async () => {
    const { page, leave } = await arrive('#/kit/stored');
    await page.getByRole('button', { name: 'Check what is kept' }).waitFor();
    await putRows(page, [['drills', 'broken', { id: 'broken', program: 'Attic', reps: 'three' }]]);
    await page.reload();
    await page.getByRole('button', { name: 'Check what is kept' }).click();
    await page.getByText('1 value could not be read. Nothing was thrown away').waitFor();
    await page.getByText(/^Drill broken:/).waitFor();
    const dump = await saved(page, 'Save all that is on the disk, as it is');
    expect(dump).toContain('"reps": "three"');
    await leave();
  });

  it('files of the database itself are overwritten: the app says what is lost, leads to a backup, and drills', async () => {
    const profile = mkdtempSync(join(tmpdir(), 'larkhold-damaged-'));
    const start = async () => {
      const context = await chromium.launchPersistentContext(profile, {
        executablePath: findShell(),
        args: chromiumFlags,
      });
      context.setDefaultTimeout(PATIENCE_MS);
      return context;
    };
    const first = await start();
    const page = await first.newPage();
    await page.goto(`${inject('address')}#/line`);
    await takeProgram(page, holdsFile(2, 1));
    await drillOnce(page);
    const backup = await journalFile(page);
    await first.close();

    const folder = join(profile, 'Default', 'IndexedDB');
    const origin = readdirSync(folder).find((name) => name.endsWith('.leveldb'));
    if (!origin) throw new Error(`no database in ${folder}`);
    for (const name of readdirSync(join(folder, origin)).filter((one) => /MANIFEST|\.log|\.ldb/.test(one))) {
      const path = join(folder, origin, name);
      writeFileSync(path, Buffer.alloc(readFileSync(path).length, 7));
    }

    const second = await start();
    const again = await second.newPage();
    await again.goto(`${inject('address')}#/line`);
    await again.getByRole('button', { name: 'Begin' }).waitFor();
    await again.getByText('1 drill was kept here').waitFor();
    // An hour later: what was drilled since makes up for nothing.
    await drillOnce(again, Date.now() + 3_600_000);
    await again.getByRole('heading', { name: 'Logged' }).waitFor();
    await again.reload();
    await again.getByRole('link', { name: 'Open a backup' }).click();
    await again
      .locator('input[type=file]')
      .first()
      .setInputFiles({ name: 'larkhold.json', mimeType: 'application/json', buffer: Buffer.from(backup) });
    await again.getByRole('button', { name: 'Restore' }).click();
    await again.getByText('larkhold.json was restored').waitFor();
    await again.getByText('was kept here').waitFor({ state: 'detached' });
    expect((await storedRows(again, 'drills')).size).toBe(2);
    await second.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  });
});
