import { formatJournal, type Journal, parseJournal } from '@larkhold/engine';
import ICAL from 'ical.js';
import Papa from 'papaparse';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { launchShell } from '../../scripts/browser.mjs';
import { type Device, openDevice, saveJournal } from './device.ts';
import { holdsFile, takeProgram } from './drill-program.ts';
import { drillThrough } from './drill-through.ts';

const FIELD = 'Open a file';
let browser: Browser;
beforeAll(async () => {
  browser = await launchShell();
});
afterAll(async () => {
  await browser.close();
});

const drilled = (id: string, date: string): Journal => ({
  drills: [
    {
      ...{ id, date, program: 'Slow mornings', effort: 6, durationMs: 600_000, editedAt: `${date}T06:41:00Z` },
      ...{ startedAt: `${date}T06:30:00Z`, endedAt: `${date}T06:40:00Z` },
      reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' }],
    },
  ],
  days: [],
  weeks: [],
});

function journalOf(text: string): Journal {
  const read = parseJournal(text);
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return read.journal;
}

async function takeIn({ page, give }: Device, name: string, text: string): Promise<void> {
  await give(FIELD, name, text);
  await page.getByRole('button', { name: 'Restore' }).click();
  await page.getByText(`${name} was restored.`).waitFor();
}

describe.concurrent('journals as files', () => {
  test('two devices drill separately, exchange files both ways, and end equal', async () => {
    const [phone, tablet] = await Promise.all([
      openDevice(browser, inject('address')),
      openDevice(browser, inject('address')),
    ]);
    // Both really drill: two holds of a second, three on the tablet.
    await Promise.all(
      (
        [
          [phone, 2],
          [tablet, 3],
        ] as const
      ).map(async ([{ page }, reps]) => {
        await takeProgram(page, holdsFile(1, reps));
        await drillThrough(page);
      }),
    );
    await phone.go('#/week');
    await tablet.go('#/week');
    await phone.page.getByRole('button', { name: 'Practice arrows: 6 more' }).click();
    await tablet.page.getByLabel('What went right').fill('Set-up');

    const [ofPhone, ofTablet] = [await saveJournal(phone), await saveJournal(tablet)];
    await phone.give(FIELD, 'tablet.journal.json', ofTablet);
    // The tablet's drill, its week, and the program it took.
    await phone.page.getByText(/3\sentries to add, 0 to change, 0 the same\./).waitFor();
    await phone.page.getByRole('button', { name: 'Restore' }).click();
    await phone.page.getByText('was restored').waitFor();
    await takeIn(tablet, 'phone.journal.json', ofPhone);

    const both = journalOf(await saveJournal(phone));
    expect(both).toEqual(journalOf(await saveJournal(tablet)));
    expect(both.drills.map(({ reps }) => reps.map(({ heldMs }) => heldMs)).sort()).toEqual([
      [1000, 1000],
      [1000, 1000, 1000],
    ]);
    expect(both.days[0]?.arrows).toEqual([{ kind: 'practice', count: 6 }]);
    expect(both.weeks[0]?.wentRight).toBe('Set-up');

    await phone.give(FIELD, 'again.journal.json', ofTablet);
    await phone.page.getByText(/0\sentries to add, 0 to change, 3 the same\./).waitFor();

    // Now both change the same day: of each field the later edit is kept, on both.
    await phone.page.getByRole('button', { name: 'Leave it' }).click();
    await phone.go('#/week');
    await phone.page.getByRole('button', { name: 'Practice arrows: 6 more' }).click();
    const earlier = await saveJournal(phone);
    await tablet.go('#/week');
    await tablet.page.getByLabel('Good', { exact: true }).check();
    const later = await saveJournal(tablet);
    await tablet.give(FIELD, 'earlier.journal.json', earlier);
    await tablet.page.getByText(/^\s*0\sentries to add, 1 to change, \d+ the same\.\s*$/).waitFor();
    await tablet.page.getByText('written on both sides').click();
    await tablet.page.getByText(/what is in the file is kept\. Left out: 6\sarrows\s*$/).waitFor();
    await tablet.page.getByRole('button', { name: 'Restore' }).click();
    await tablet.page.getByText('was restored').waitFor();
    await takeIn(phone, 'later.journal.json', later);
    const settled = journalOf(await saveJournal(phone));
    expect(settled).toEqual(journalOf(await saveJournal(tablet)));
    expect(settled.days[0]).toMatchObject({ arrows: [{ kind: 'practice', count: 12 }], feel: 4 });
    await phone.close();
    await tablet.close();
  });

  test('what was restored can be undone, and a bad file changes nothing', async () => {
    const device = await openDevice(browser, inject('address'));
    await device.go('#/files');
    await takeIn(device, 'first.journal.json', formatJournal(drilled('first', '2026-03-02')));
    const before = journalOf(await saveJournal(device));
    await takeIn(device, 'second.journal.json', formatJournal(drilled('second', '2026-03-03')));
    await device.page.getByRole('button', { name: 'Undo' }).click();
    await device.page.getByText('Undone').waitFor();
    expect(journalOf(await saveJournal(device))).toEqual(before);

    await device.give(FIELD, 'cut.journal.json', formatJournal(before).slice(0, 60));
    await device.page.getByText('Nothing was changed.').waitFor();
    expect(journalOf(await saveJournal(device))).toEqual(before);
    await device.close();
  });

  test('a backup comes back on an empty device', async () => {
    const [old, fresh] = [await openDevice(browser, inject('address')), await openDevice(browser, inject('address'))];
    await old.go('#/files');
    await takeIn(old, 'first.journal.json', formatJournal(drilled('first', '2026-03-02')));
    const backup = await old.save(() => old.page.getByRole('button', { name: 'Backup of everything' }).click());
    await fresh.go('#/files');
    await takeIn(fresh, 'old.backup.json', backup);
    expect(journalOf(await saveJournal(fresh))).toEqual(journalOf(await saveJournal(old)));
    await old.close();
    await fresh.close();
  });

  test('tables and the calendar go out in order of days, and are read by others', async () => {
    const device = await openDevice(browser, inject('address'));
    await device.go('#/files');
    await takeIn(device, 'late.journal.json', formatJournal(drilled('a-late', '2026-03-03')));
    await takeIn(device, 'early.journal.json', formatJournal(drilled('b-early', '2026-03-02')));
    const press = (name: string) => device.save(() => device.page.getByRole('button', { name }).click());
    const read = (text: string) =>
      Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
    expect(read(await press('Drills (CSV)')).map(({ date, id }) => [date, id])).toEqual([
      ['2026-03-02', 'b-early'],
      ['2026-03-03', 'a-late'],
    ]);
    expect(read(await press('Reps (CSV)')).map((row) => row['held seconds'])).toEqual(['30', '30']);
    expect(read(await press('Days (CSV)')).map((row) => row['hold seconds'])).toEqual(['30', '30']);
    const calendar = new ICAL.Component(ICAL.parse(await press('Calendar (iCalendar)')));
    expect(calendar.getAllSubcomponents('vevent')).toHaveLength(2);
    await device.close();
  });
});
