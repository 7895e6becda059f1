import type { DrillRecord } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Store } from './store.ts';
import type { Plan } from './trial/drill-model.ts';
import { Life } from './trial/life.ts';
import { type KnownDrill, LifeModel } from './trial/life-model.ts';

// More of them with MODEL_RUNS=5000, other ones with MODEL_SEED.
const numRuns = Number(process.env.MODEL_RUNS ?? 1000);
const seed = Number(process.env.MODEL_SEED ?? 20_261_126);

const shortMs = fc.integer({ min: 1, max: 12_000 });
const anyPlan: fc.Arbitrary<Plan> = fc.record({
  sets: fc.integer({ min: 1, max: 3 }),
  reps: fc.integer({ min: 1, max: 3 }),
  drawMs: shortMs,
  holdMs: shortMs,
  letDownMs: shortMs,
  restMs: fc.integer({ min: 1, max: 40_000 }),
  setRestMs: fc.integer({ min: 1, max: 60_000 }),
});
const asked = fc.constantFrom('letDownNow', 'skipRep', 'moreRest', 'pause', 'resume', 'resume', 'stop', 'gap');
const passed = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 8 });
const place = fc.nat(20);
const next = fc.constantFrom('go on', 'close', 'leave');

/** One thing that happens in the life of an archer and a device. */
const anyMove = fc.oneof(
  { weight: 6, arbitrary: fc.record({ do: fc.constant('begin' as const), plan: anyPlan }) },
  { weight: 8, arbitrary: fc.record({ do: fc.constant('pass' as const), piecesMs: passed }) },
  { weight: 5, arbitrary: fc.record({ do: fc.constant('ask' as const), what: asked }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('die' as const), next }) },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('die in a write' as const), piecesMs: passed, writes: fc.nat(4), next }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('fill or make room' as const) }) },
  {
    weight: 2,
    arbitrary: fc.record({
      ...{ do: fc.constant('correct' as const), place, rep: place, isOtherTab: fc.boolean() },
      outcome: fc.constantFrom('held' as const, 'skipped' as const),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('remove' as const), place }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('copy' as const) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('merge' as const) }) },
);
type Move = (typeof anyMove extends fc.Arbitrary<infer T> ? T : never) & {};

async function drillsOf(store: Store): Promise<Map<string, DrillRecord>> {
  return new Map((await store.journal()).drills.map((record) => [record.id, record]));
}

/** Records as the model knows them. */
function known(records: Iterable<[string, DrillRecord]>): Map<string, KnownDrill> {
  return new Map(
    [...records].map(([id, { reps, open, editedAt }]) => [
      id,
      {
        reps: reps.map(({ outcome, heldMs }) => ({ outcome, heldMs })),
        isOpen: open === true,
        ...(editedAt === undefined ? {} : { editedAt }),
      },
    ]),
  );
}

async function live(moves: readonly Move[], counts: Record<string, number>): Promise<void> {
  const life = new Life();
  const model = new LifeModel();
  let copy: { drills: DrillRecord[]; known: Map<string, KnownDrill> } | undefined;
  const tally = (what: string): void => {
    counts[what] = (counts[what] ?? 0) + 1;
  };
  const afterDeath = async (what: string, instant: string): Promise<void> => {
    await life.die();
    model.die();
    const before = known(await drillsOf(life.readDisk()));
    expect(before).toEqual(model.disk.drills);
    expect((await life.readDisk().running()) !== undefined).toBe(model.disk.running !== undefined);
    if (what === 'go on') {
      await life.goOn(instant);
      model.goOn(instant);
    } else if (what === 'close') {
      await life.close(instant);
      model.close(instant);
    }
  };
  /** A drill that is over, so that nobody else writes it. */
  const pick = async (at: number): Promise<DrillRecord | undefined> => {
    const records = [...(await drillsOf(life.store)).values()].filter(
      ({ id, open }) => !open && id !== model.shown.running?.id && id !== model.current?.id,
    );
    return records.length === 0 ? undefined : records[at % records.length];
  };

  for (const [index, move] of moves.entries()) {
    const instant = new Date(Date.UTC(2026, 10, 25, 6) + index * 60_000).toISOString();
    life.instant = instant;
    if (move.do === 'begin' && !model.current) {
      if (model.shown.running) {
        await life.close(instant);
        model.close(instant);
        await life.settle();
      }
      tally('begin');
      life.begin(`drill-${index}`, move.plan, instant);
      model.begin(`drill-${index}`, move.plan);
    } else if (move.do === 'pass' && model.current) {
      for (const pieceMs of move.piecesMs) {
        life.ask(pieceMs, instant);
        model.ask(pieceMs, instant);
      }
    } else if (move.do === 'ask' && model.current) {
      tally(move.what);
      life.ask(move.what as 'gap', instant);
      model.ask(move.what as 'gap', instant);
    } else if (move.do === 'die') {
      tally(model.current ? 'killed in a drill' : 'killed');
      await afterDeath(move.next, instant);
    } else if (move.do === 'die in a write') {
      tally('killed in a write');
      await life.settle();
      life.disk.state.writesLeft = move.writes;
      model.writesLeft = move.writes;
      for (const pieceMs of move.piecesMs) {
        life.ask(pieceMs, instant);
        model.ask(pieceMs, instant);
      }
      await afterDeath(move.next, instant);
    } else if (move.do === 'fill or make room') {
      await life.settle();
      model.isFull = !model.isFull;
      life.disk.state.isFull = model.isFull;
      tally(model.isFull ? 'disk full' : 'room again');
    } else if (move.do === 'correct') {
      const record = await pick(move.place);
      if (!record || (move.isOtherTab && (model.isFull || !model.isClean))) continue;
      tally(move.isOtherTab ? 'corrected in another tab' : 'corrected');
      const rep = move.rep % record.reps.length;
      await life.correct(record, rep, move.outcome, instant, move.isOtherTab);
      const reps = record.reps.map(({ outcome, heldMs }) => ({ outcome, heldMs }));
      reps[rep] = { outcome: move.outcome, heldMs: move.outcome === 'held' ? record.reps[rep]!.prescribedMs : 0 };
      model.edit(record.id, { reps, isOpen: false }, instant);
    } else if (move.do === 'remove') {
      const record = await pick(move.place);
      if (!record) continue;
      tally('removed');
      life.remove(record.id);
      model.remove(record.id);
    } else if (move.do === 'copy') {
      await life.settle();
      const drills = await drillsOf(life.store);
      copy = { drills: structuredClone([...drills.values()]), known: known(drills) };
    } else if (move.do === 'merge' && copy && !model.current && !model.shown.running) {
      // Of two versions that nobody stamped the journal takes one or the other; which one is not this model's question.
      const isPlain = [...copy.known].every(([id, theirs]) => {
        const ours = model.shown.drills.get(id);
        return !ours || theirs.editedAt !== undefined || ours.editedAt !== undefined;
      });
      if (!isPlain) continue;
      tally('merged');
      life.merge({ drills: copy.drills, days: [], weeks: [] });
      model.merge(copy.known);
    }
    await life.settle();
    expect(known(await drillsOf(life.store))).toEqual(model.shown.drills);
  }
  expect(known(await drillsOf(life.readDisk()))).toEqual(model.disk.drills);
}

it(`${numRuns} lives with kills, full disks, second tabs, corrections and merges: the journal is the model's, rep by rep`, async () => {
  const counts: Record<string, number> = {};
  await fc.assert(
    fc.asyncProperty(fc.array(anyMove, { minLength: 5, maxLength: 40, size: 'max' }), (moves) => live(moves, counts)),
    { seed, numRuns },
  );
  console.info(`seed ${seed}: ${JSON.stringify(counts)}`);
  for (const what of ['killed in a drill', 'killed in a write', 'disk full', 'corrected in another tab', 'merged']) {
    expect(counts[what]).toBeGreaterThan(0);
  }
}, 600_000);
