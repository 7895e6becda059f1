import { canonicalText, createJournal, mergeJournals } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { BoxAdapter, BoxAnswer, BoxFile } from './box-adapter.ts';
import { troubled } from './box-trouble.ts';
import { createMemoryBox } from './memory-box.ts';
import { createPairing, deriveBoxKeys } from './pairing.ts';
import type { Cipher } from './sealed-text.ts';
import { TrialDevice, trialDrill } from './trial/trial-device.ts';

// More of them with MODEL_RUNS=5000, other ones with MODEL_SEED.
const numRuns = Number(process.env.MODEL_RUNS ?? 300);
const seed = Number(process.env.MODEL_SEED ?? 20_261_127);

const device = fc.nat(2);
const place = fc.nat(9);
const dates = fc.constantFrom('2026-11-24', '2026-11-25');
const count = fc.nat(300);
const DAY_MS = 86_400_000;

/** One thing that happens to an archer's three devices. */
const anyMove = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ do: fc.constant('drill' as const), device, reps: fc.integer({ min: 1, max: 6 }) }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('effort' as const), device, place, effort: fc.nat(10) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('remove' as const), device, place }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('put back' as const), device, place }) },
  { weight: 4, arbitrary: fc.record({ do: fc.constant('arrows' as const), device, date: dates, count }) },
  { weight: 4, arbitrary: fc.record({ do: fc.constant('note' as const), device, date: dates, count }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('goal' as const), device, count }) },
  {
    weight: 1,
    arbitrary: fc.record({ do: fc.constant('bow' as const), device, count: fc.integer({ min: 20, max: 50 }) }),
  },
  { weight: 6, arbitrary: fc.record({ do: fc.constant('meet' as const), device }) },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('clock' as const), device, days: fc.constantFrom(-366, -1, 0, 1, 366) }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('keep an old box' as const) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('play the old box back' as const), isWhole: fc.boolean() }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('cut a file off' as const), place, length: fc.nat(500) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('lose a file' as const), place }) },
  // A device put back from an old backup, its way to the box as old; and two devices under one name, as a copied profile makes them.
  { weight: 1, arbitrary: fc.record({ do: fc.constant('back up' as const), device }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('restore' as const), device }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('copy the link' as const), device }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('host fails' as const), device, calls: fc.nat(5) }) },
);
type Move = (typeof anyMove extends fc.Arbitrary<infer T> ? T : never) & {};

const pairing = createPairing();
const keys = await deriveBoxKeys(pairing);

const plainCipher: Cipher = { seal: async (plain) => plain, open: async (sealed) => sealed };

/** A host that dies after a number of calls. */
function failing(box: BoxAdapter, calls: number): BoxAdapter {
  let count = 0;
  const or =
    <A extends unknown[], T>(work: (...args: A) => Promise<BoxAnswer<T>>) =>
    async (...args: A): Promise<BoxAnswer<T>> => {
      count += 1;
      return count > calls ? troubled('fault') : work(...args);
    };
  return { list: or(box.list), get: or(box.get), put: or(box.put), remove: or(box.remove) };
}

async function live(moves: readonly Move[], tally: Record<string, number>, count: number): Promise<void> {
  const box = createMemoryBox();
  const devices = ['Phone', 'Laptop', 'Tablet'].map((title) => new TrialDevice(title, pairing, keys));
  // Every tenth life seals its files as the app does; the others are here for what is merged.
  if (count % 10 !== 0) for (const one of devices) one.cipher = plainCipher;
  const made = new Map<string, number>();
  const removed = new Map<string, ReturnType<typeof trialDrill>>();
  let old: Map<string, BoxFile> | undefined;
  const backups = new Map<number, () => Promise<void>>();
  for (const [index, move] of moves.entries()) {
    tally[move.do] = (tally[move.do] ?? 0) + 1;
    const at = devices['device' in move ? move.device : 0]!;
    at.pass(1000);
    const { store } = at;
    const drills = (await store.journal()).drills;
    const chosen = 'place' in move ? drills[move.place % Math.max(1, drills.length)] : undefined;
    if (move.do === 'drill') {
      made.set(`d${index}`, move.reps);
      await store.putDrill({ ...trialDrill(`d${index}`, move.reps), editedAt: await at.instant() });
    } else if (move.do === 'effort' && chosen) {
      await store.putDrill({ ...chosen, effort: move.effort, editedAt: await at.instant() });
    } else if (move.do === 'remove' && chosen) {
      removed.set(chosen.id, chosen);
      await store.removeDrills([chosen.id]);
    } else if (move.do === 'put back') {
      const gone = [...removed.values()].filter(({ id }) => !drills.some((one) => one.id === id));
      const back = gone[move.place % Math.max(1, gone.length)];
      if (back === undefined || !(await store.journal()).removed?.some(({ key }) => key === back.id)) continue;
      await store.putDrill({ ...back, editedAt: await at.instant() });
    } else if (move.do === 'arrows' || move.do === 'note') {
      const known = (await store.journal()).days.find(({ date }) => date === move.date) ?? { date: move.date };
      const change =
        move.do === 'note'
          ? { note: `note ${move.count}` }
          : { arrows: [{ kind: 'practice' as const, count: move.count }] };
      await store.putDay({ ...known, ...change, editedAt: await at.instant() });
    } else if (move.do === 'goal') {
      await store.putMajorGoal({ text: `goal ${move.count}`, editedAt: await at.instant() });
    } else if (move.do === 'bow') {
      await store.changeKit(() => ({ drawWeightLbf: move.count }));
    } else if (move.do === 'meet') {
      await at.meet(box);
    } else if (move.do === 'clock') {
      at.pass(move.days * DAY_MS);
    } else if (move.do === 'keep an old box') {
      old = new Map(box.files);
    } else if (move.do === 'play the old box back' && old) {
      // Half of the time the host forgets what came since, as a disk that is put back does.
      if (move.isWhole) box.files.clear();
      for (const [name, file] of old) box.files.set(name, { ...file, mark: `${file.mark} again ${index}` });
    } else if (move.do === 'cut a file off' && box.files.size > 0) {
      const name = [...box.files.keys()][move.place % box.files.size]!;
      const file = box.files.get(name)!;
      box.files.set(name, { content: file.content.slice(0, move.length), mark: `${file.mark} cut ${index}` });
    } else if (move.do === 'lose a file' && box.files.size > 0) {
      box.files.delete([...box.files.keys()][move.place % box.files.size]!);
    } else if (move.do === 'back up') {
      backups.set(move.device, at.backUp());
    } else if (move.do === 'restore') {
      const putBack = backups.get(move.device);
      if (putBack === undefined) continue;
      // What was never in the box is lost with the disk; what another device has comes back.
      await at.meet(box);
      await devices[(move.device + 1) % 3]!.meet(box);
      await putBack();
    } else if (move.do === 'copy the link') {
      const copy = devices[(move.device + 1) % 3]!;
      copy.link = structuredClone(at.link);
      copy.store.nameDevice(copy.link.device);
    } else if (move.do === 'host fails') {
      await at.meet(failing(box, move.calls));
    }
  }
  const daysBefore = await Promise.all(devices.map(async ({ store }) => (await store.journal()).days));
  for (let turn = 0; turn < 3; turn += 1) for (const one of devices) await one.meet(box);
  const [first, ...others] = await Promise.all(
    devices.map(async (one) => canonicalText(mergeJournals(await one.journal(), createJournal()))),
  );
  for (const other of others) expect(other).toBe(first);
  const end = await devices[0]!.journal();
  // Nothing is lost: every drill is there rep by rep, or was removed; every day that anybody wrote is there with every kind of thing that was written.
  for (const [id, reps] of made) {
    const record = end.drills.find((one) => one.id === id);
    if (record) expect(record.reps).toHaveLength(reps);
    else expect(removed.has(id) && end.removed?.some(({ key }) => key === id)).toBe(true);
  }
  for (const day of daysBefore.flat()) {
    const kept = end.days.find(({ date }) => date === day.date);
    if (day.note !== undefined) expect(kept?.note).toBeDefined();
    if (day.arrows !== undefined) expect(kept?.arrows).toBeDefined();
  }
  const kits = await Promise.all(devices.map(async ({ store }) => (await store.kit()).drawWeightLbf));
  expect(new Set(kits).size).toBe(1);
}

it(`${numRuns} lives of three devices with clocks that lie, offline, with old and broken files in the box: they end equal and nothing is lost`, async () => {
  const tally: Record<string, number> = {};
  let lives = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(anyMove, { minLength: 5, maxLength: 40, size: 'max' }), (moves) =>
      live(moves, tally, lives++),
    ),
    { seed, numRuns },
  );
  console.info(`seed ${seed}: ${JSON.stringify(tally)}`);
}, 3_600_000);
