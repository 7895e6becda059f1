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
import { cutOff } from './drill-keeper.ts';
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
