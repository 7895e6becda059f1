import 'fake-indexeddb/auto';
import { existsSync, readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import type { Change, Table } from './adapter.ts';
import { createBackup, formatBackup, parseBackup } from './backup.ts';
import { openIdbAdapter } from './idb-adapter.ts';
import { migrationSteps } from './migrations.ts';
import { openStore } from './open-store.ts';
import { dumpDatabase } from './raw-dump.ts';
import { withProgramsOfToday } from './trial/with-programs-of-today.ts';

type Dump = Record<string, Record<string, unknown>>;

const pathOf = (version: number) => new URL(`../../../tests/fixtures/database/v${version}.json`, import.meta.url);
/** What a database of a version held; written once, never changed. */
const dumpOf = (version: number): Dump => JSON.parse(readFileSync(pathOf(version), 'utf8'));

/** A disk as the app of that version left it. */
async function diskOf(version: number): Promise<IDBFactory> {
  const indexedDB = new IDBFactory();
  const steps = migrationSteps.slice(0, version);
  const adapter = await openIdbAdapter({ name: 'x', indexedDB, steps });
  const changes = Object.entries(dumpOf(version)).flatMap(([table, rows]) =>
    Object.entries(rows).map(([key, value]): Change => ({ table: table as Table, do: 'put', key, value })),
  );
  await adapter.write(changes);
  adapter.close();
  return indexedDB;
}

/** What was not removed, of a table of any version. */
const stays = (rows: Record<string, unknown> = {}) =>
  Object.fromEntries(Object.entries(rows).filter(([, row]) => !Object(row).removed));
/** What was removed: up to version 4 whole rows that say so. */
const marksOf = ({ removed, ...tables }: Dump) =>
  removed
    ? Object.values(removed)
    : Object.entries(tables).flatMap(([of, rows]) =>
        Object.entries(rows).flatMap(([key, row]) =>
          Object(row).removed ? [{ of, key, at: Object(row).editedAt }] : [],
        ),
      );
/** The opened programs: up to version 4 as they are, then each beside its id. */
const programsOf = ({ programs, opened = {} }: Dump) =>
  programs ?? Object.fromEntries(Object.entries(opened).map(([id, copy]) => [id, Object(copy).program]));

const versions = migrationSteps.map((_, index) => index + 1);

it('every version of the database has a fixture, and the app knows no version beyond them', () => {
  expect(versions.filter((version) => !existsSync(pathOf(version)))).toEqual([]);
  expect(existsSync(pathOf(migrationSteps.length + 1))).toBe(false);
});

describe.each(versions)('a database of version %i', (version) => {
  it('is brought up to date: every value is there, none is set aside, and the drill under way can go on', async () => {
    const before = dumpOf(version);
    const indexedDB = await diskOf(version);
    const store = await openStore({ name: 'x', indexedDB });
    expect(store).toMatchObject({ where: 'disk', trouble: undefined });
    const { drills, days, weeks, notes = [], milestones = [], majorGoal, removed = [] } = await store.journal();
    expect(Object.fromEntries(drills.map((one) => [one.id, one]))).toEqual(stays(before.drills));
    expect(Object.fromEntries(days.map((one) => [one.date, one]))).toEqual(before.days);
    expect(Object.fromEntries(weeks.map((one) => [one.week, one]))).toEqual(before.weeks);
    expect(Object.fromEntries(notes.map((one) => [one.id, one]))).toEqual(stays(before.notes));
    expect(Object.fromEntries(milestones.map((one) => [one.id, one]))).toEqual(stays(before.milestones));
    expect(removed).toEqual(marksOf(before));
    expect(majorGoal).toEqual(before.single?.majorGoal);
    expect(Object.fromEntries((await store.programs()).map((one) => [one.id, one]))).toMatchObject(
      JSON.parse(withProgramsOfToday(JSON.stringify(programsOf(before)))),
    );
    // From version 6 on it is kept in two rows; its fixture holds the drill of version 5.
    expect(await store.running()).toEqual(dumpOf(Math.min(version, 5)).single?.running);
    expect(await store.kit()).toMatchObject({ bow: 'barebow', drawWeightLbf: 34, maxHoldSeconds: 45 });
    // What was set aside before stays aside, and nothing comes to it.
    expect((await store.integrityReport()).setAside).toEqual(
      Object.entries(before.aside ?? {}).map(([asideKey, row]) => Object.assign({ asideKey }, row)),
    );
    const backup = parseBackup(formatBackup(await createBackup(store, '2026-05-01T10:00:00Z')));
    expect(backup.ok && backup.backup.drills).toHaveLength(drills.length);
    store.close();
  });

  it('is as it was, and can be read out, when a migration of it fails; the app works in memory and says so', async () => {
    const indexedDB = await diskOf(version);
    const steps = [
      ...migrationSteps.slice(0, version),
      async (...[, transaction]: Parameters<(typeof migrationSteps)[number]>) => {
        await transaction.objectStore('drills').clear();
        throw new DOMException('injected', 'UnknownError');
      },
    ];
    await expect(openIdbAdapter({ name: 'x', indexedDB, steps })).rejects.toThrow('injected');
    expect(await dumpDatabase('x', indexedDB)).toEqual(dumpOf(version));
    // The old app, or a mended one, opens it as if nothing had been.
    const again = await openStore({ name: 'x', indexedDB });
    expect((await again.journal()).drills).toHaveLength(Object.keys(stays(dumpOf(version).drills)).length);
    again.close();
  });
});
