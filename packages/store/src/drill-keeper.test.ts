import {
  builtInPrograms,
  createSession,
  type DrillRecord,
  layOut,
  prescribe,
  sessionSnapshotSchema,
} from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import type { Change } from './adapter.ts';
import { cutOff, DrillKeeper } from './drill-keeper.ts';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import type { RunningDrill } from './running-drill.ts';

const [program] = builtInPrograms;
if (!program) throw new TypeError('no built-in program');
const prescription = prescribe({ program, records: [], today: '2026-11-25' });
const timeline = layOut(prescription);

/** A drill that was cut off at a moment, as the store keeps it. */
function cutOffAt(atMs: number): { running: RunningDrill; stored: DrillRecord } {
  const session = createSession({
    timeline,
    program: program?.title ?? '',
    startedAt: '2026-11-25T06:30:00+01:00',
    newId: () => 'id-1',
  });
  session.send({ type: 'begin' }, 0);
  for (let nowMs = 0; nowMs <= atMs; nowMs += 1000) session.advance(nowMs);
  const running: RunningDrill = {
    ...{ recordId: 'id-1', program: program?.title ?? '', prescription },
    ...{ snapshot: session.snapshot(), startedAt: '2026-11-25T06:30:00+01:00' },
  };
  return { running, stored: { ...session.record(), tool: 'bow' } };
}

const closed = (...of: Parameters<typeof cutOff>) => cutOff(...of).record;
const holds = timeline.steps.filter(({ kind }) => kind === 'hold');
const inSecondHold = (holds[1]?.startMs ?? 0) + 2000;

describe('a drill that was cut off, closed', () => {
  it('keeps the reps that ended, and the running one as unsure', () => {
    const { running, stored } = cutOffAt(inSecondHold);
    const record = closed(running, stored);
    expect(record?.reps.map(({ outcome }) => outcome)).toEqual(['held', 'unsure']);
    expect(record?.open).toBeUndefined();
    expect(record?.tool).toBe('bow');
  });

  it('leaves a rep that was corrected as the archer corrected it', () => {
    const { running, stored } = cutOffAt(inSecondHold);
    const reps = stored.reps.map((rep) => ({ ...rep, outcome: 'short' as const }));
    expect(closed(running, { ...stored, reps })?.reps.map(({ outcome }) => outcome)).toEqual(['short', 'unsure']);
  });

  it('is nothing where no rep had begun, and unsure alone where the first was under way', () => {
    expect(closed(cutOffAt(2000).running, undefined)).toBeUndefined();
    const { running } = cutOffAt((holds[0]?.startMs ?? 0) + 1000);
    expect(closed(running, undefined)?.reps.map(({ outcome }) => outcome)).toEqual(['unsure']);
  });

  it('keeps what was written where the snapshot can no longer be read', () => {
    const { running, stored } = cutOffAt(inSecondHold);
    const record = closed({ ...running, snapshot: { version: 9 } }, stored);
    expect(record).toEqual({ ...stored, open: undefined });
  });

  it('keeps what was written where the snapshot can be read but tells of no drill that could be kept', () => {
    const { running, stored } = cutOffAt(inSecondHold);
    const nameless = { ...(running.snapshot as object), id: '' };
    expect(closed({ ...running, snapshot: nameless }, stored)).toEqual({ ...stored, open: undefined });
    expect(closed({ ...running, snapshot: nameless }, undefined)).toBeUndefined();
  });
});

describe('what a step costs the disk', () => {
  it('is the same at the nine-thousandth rep as at the first: only what has changed', async () => {
    const written: Change[][] = [];
    const adapter = createMemoryAdapter();
    const store = createLocalStore({
      adapter: {
        ...adapter,
        write: (changes) => {
          written.push([...changes]);
          return adapter.write(changes);
        },
      },
      now: () => '2026-11-25T06:00:00Z',
    });
    const { running, stored } = cutOffAt(inSecondHold);
    const snapshot = sessionSnapshotSchema.parse(running.snapshot);
    const [rep] = stored.reps;
    if (!rep) throw new TypeError('no rep had ended');
    const reps = Array.from({ length: 9000 }, () => rep);
    const long = { ...snapshot, walk: { ...snapshot.walk, reps } };
    await store.writeRep({ ...stored, reps }, { ...running, snapshot: long });
    written.length = 0;
    await store.putRunning({ ...running, snapshot: long });
    const bytes = JSON.stringify(written).length;
    console.info(`a step after 9,000 reps: ${bytes} bytes`);
    expect(written.flat().map(({ table, do: what }) => `${what} ${table}`)).toEqual(['put single']);
    expect(JSON.stringify(written)).not.toContain('"outcome"');
    expect(await store.running()).toEqual({ ...running, snapshot: long });
  });

  it('is not resumed where the record has lost a rep that it counts', async () => {
    const store = createLocalStore({ adapter: createMemoryAdapter(), now: () => '2026-11-25T06:00:00Z' });
    const { running, stored } = cutOffAt(inSecondHold);
    await store.writeRep(stored, running);
    await store.putDrill({ ...stored, reps: [], editedAt: '2026-11-25T07:00:00Z' });
    const kept = await store.running();
    expect(kept && cutOff(kept, undefined).resumeFrom).toBeUndefined();
  });
});

it('says how long the running rep had been held when it was last written down', () => {
  const { running, stored } = cutOffAt((holds[1]?.startMs ?? 0) + 2000);
  const seenMs = Math.floor(((holds[1]?.startMs ?? 0) + 2000) / 1000) * 1000;
  expect(closed(running, stored)?.reps[1]?.heldMs).toBe(seenMs - (holds[1]?.startMs ?? 0));
});

describe('what a keeper writes', () => {
  /** A keeper of a drill with a bow, and what reaches the disk. */
  function keeperOf(changes: Partial<typeof prescription> = {}, drawWeightLbf?: number) {
    const written: unknown[][] = [];
    const note =
      (what: string) =>
      async (...given: unknown[]) =>
        void written.push([what, ...given]);
    const disk = {
      ...{ putRunning: note('running'), writeRep: note('rep'), endDrill: note('end'), putDrill: note('drill') },
    };
    const keeper = new DrillKeeper(disk, () => '2026-11-25T07:00:00Z');
    const of = { program: 'Mine', programId: 'mine', ...(drawWeightLbf === undefined ? {} : { drawWeightLbf }) };
    keeper.begin({ prescription: { ...prescription, tool: 'bow', ...changes }, ...of });
    return { keeper, written };
  }
  const { running, stored } = cutOffAt(inSecondHold);
  const snapshot = sessionSnapshotSchema.parse(running.snapshot);
  const { tool: _, ...plain } = stored;
  const [block] = prescription.blocks;
  const blocks = [0, 2, 1].map((addedWeightLbf) => ({ ...block!, addedWeightLbf }));

  it('is where the drill is while it runs or is paused, and of which program', async () => {
    const { keeper, written } = keeperOf();
    for (const state of ['waiting', 'running', 'paused', 'done', 'stopped'] as const) {
      await keeper.moved({ ...snapshot, state } as typeof snapshot);
    }
    expect(
      written.map(([what, of]) => [what, (of as RunningDrill & { snapshot: { state: string } }).snapshot.state]),
    ).toEqual([
      ['running', 'running'],
      ['running', 'paused'],
    ]);
    expect(written[0]?.[1]).toMatchObject({
      recordId: 'id-1',
      program: 'Mine',
      programId: 'mine',
      startedAt: snapshot.startedAt,
    });
  });

  it('has with each rep and at the end the bow and its weight: 34 lb and the 2 lb of the heaviest block', async () => {
    const { keeper, written } = keeperOf({ blocks }, 34);
    await keeper.repEnded(plain, snapshot);
    expect(written[0]?.[1]).toMatchObject({ tool: 'bow', onFingersLbf: 36 });
    expect(await keeper.finish(plain)).toEqual({ ...plain, tool: 'bow', onFingersLbf: 36 });
    expect(written[1]).toEqual(['end', { ...plain, tool: 'bow', onFingersLbf: 36 }]);
  });

  it('says nothing of a weight that nobody has said, or that is the bow’s where a band was drawn', async () => {
    expect(await keeperOf({ blocks }).keeper.finish(plain)).toEqual({ ...plain, tool: 'bow' });
    expect(await keeperOf({ blocks, tool: 'band' }, 34).keeper.finish(plain)).toEqual({ ...plain, tool: 'band' });
  });

  it('is no record where no rep had ended', async () => {
    const { keeper, written } = keeperOf();
    expect(await keeper.finish({ ...plain, reps: [] })).toBeUndefined();
    expect(written).toEqual([['end', undefined]]);
  });

  it('is stamped where the archer says something of it, or where it was closed', async () => {
    const { keeper, written } = keeperOf();
    const said = await keeper.describe({ ...plain, effort: 3 }, { effort: 6 });
    expect(said).toEqual({ ...plain, effort: 6, editedAt: '2026-11-25T07:00:00Z' });
    expect(written).toEqual([['drill', said]]);
    expect((await keeper.close(running, stored))?.editedAt).toBe('2026-11-25T07:00:00Z');
  });

  it('can’t go on where the drill was over, and takes its end from the session', () => {
    for (const state of ['done', 'stopped']) {
      expect(cutOff({ ...running, snapshot: { ...snapshot, state } }, stored).resumeFrom).toBeUndefined();
    }
    expect(cutOff(running, stored).resumeFrom).toEqual(snapshot);
    const { durationMs } = cutOff(running, undefined).record!;
    expect(durationMs).toBe(Math.floor(inSecondHold / 1000) * 1000);
    expect(closed(running, { ...stored, durationMs: 1, endedAt: stored.startedAt })?.durationMs).toBe(durationMs);
  });
});
