import { readFileSync } from 'node:fs';
import { readablePrograms } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { createBackup, formatBackup, parseBackup } from './backup.ts';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import { asVersion2 } from './trial/as-version-2.ts';
import { putBack } from './trial/put-back.ts';

const fixture = readFileSync(new URL('../../../tests/fixtures/backup/v1.backup.json', import.meta.url), 'utf8');
const createStore = () => createLocalStore({ adapter: createMemoryAdapter(), now: () => '2026-05-01T10:00:00Z' });
const backupOf = (text: string) => {
  const read = parseBackup(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.backup;
};

describe('a backup', () => {
  it('of an older day restored into an empty store and written again holds all that it held', async () => {
    const store = createStore();
    await putBack(store, backupOf(fixture));
    const written: unknown = JSON.parse(formatBackup(await createBackup(store, '2026-01-05T07:00:00Z')));
    expect(written).toMatchObject(asVersion2(fixture));
  });

  it('of version 1 is read for ever', () => {
    const backup = backupOf(fixture);
    expect(backup.kit).toMatchObject({ bow: 'barebow', drawWeightLbf: 34, voice: 'words' });
    expect(readablePrograms(backup).map((program) => program.title)).toEqual(['Two weeks lighter']);
    expect(backup.drills.map((record) => record.id)).toEqual(['d-0001']);
    expect(backup.removed).toMatchObject([{ of: 'drills', key: 'd-0002' }]);
  });

  it('of version 2 is read for ever, and written byte for byte as it was but for new choices in the kit', () => {
    const text = readFileSync(new URL('../../../tests/fixtures/backup/v2.backup.json', import.meta.url), 'utf8');
    const again = formatBackup(backupOf(text));
    // A kit of before gets the choices that have come since; everything else stays as it was.
    const withoutKit = (file: string) => file.replace(/^ {2}"kit": .*$/m, '');
    expect(withoutKit(again)).toBe(withoutKit(text));
    expect(JSON.parse(again).kit).toMatchObject({
      ...JSON.parse(text).kit,
      ...{ keys: expect.objectContaining(JSON.parse(text).kit.keys) },
      ...{ camera: expect.objectContaining(JSON.parse(text).kit.camera) },
    });
  });

  it('put back twice doubles nothing, and loses nothing that came after it', async () => {
    const store = createStore();
    await putBack(store, backupOf(fixture));
    await store.putDay({ date: '2026-01-02', note: 'later words', editedAt: '2026-02-01T00:00:00Z' });
    await store.putKit({ ...(await store.kit()), drawWeightLbf: 40 });
    await putBack(store, backupOf(fixture), false);
    const journal = await store.journal();
    expect(journal.drills).toHaveLength(1);
    expect(journal.days[0]?.note).toBe('later words');
    expect(await store.programs()).toHaveLength(1);
    expect((await store.kit()).drawWeightLbf).toBe(40);
  });

  it('carries no leave to say a line at full draw, neither out nor in', async () => {
    const answer = (programId: string) => ({ programId, allowed: ['Reach'], silenced: [] });
    const store = createStore();
    await store.putKit({ ...(await store.kit()), callAnswers: [answer('ours')] });
    const backup = await createBackup(store, '2026-01-05T07:00:00Z');
    const text = formatBackup(backup);
    expect(JSON.parse(text).kit).not.toHaveProperty('callAnswers');
    const forged = text.replace('"kit": {', `"kit": {"callAnswers":${JSON.stringify([answer('forged')])},`);
    expect(forged).toContain('forged');
    await putBack(store, backupOf(forged));
    expect((await store.kit()).callAnswers).toEqual([answer('ours')]);
  });

  it('that is bad changes nothing and says where', () => {
    const bad = fixture.replace('"bow":"barebow"', '"bow":"ballista"');
    expect(parseBackup(bad)).toMatchObject({ ok: false, problems: [{ pointer: '/kit/bow' }] });
    expect(parseBackup(fixture.replace('"id":"0b0e', '"id":"zzzz'))).toMatchObject({
      ok: false,
      problems: [{ pointer: '/opened/0/program/id' }],
    });
  });

  it('may be long, and its programs must be a list', () => {
    expect(parseBackup(fixture + ' '.repeat(1_000_000)).ok).toBe(true);
    const bad = JSON.stringify({ ...JSON.parse(fixture), programs: {} });
    expect(parseBackup(bad)).toMatchObject({ ok: false, problems: [{ fault: { rule: 'notItsVersion', version: 1 } }] });
  });
});
