import { createJournal, type DrillRecord } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lostJournal, storedWitness, witnessOf } from './witness.ts';

const drill = (id: string, date = '2026-11-24'): DrillRecord => ({
  ...{ id, date, program: 'Attic holds', reps: [] },
  ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:10:00Z` },
});
const at = '2026-11-25T06:00:00Z';
const journalOf = (count: number) => ({
  ...createJournal(),
  drills: Array.from({ length: count }, (_, index) => drill(`d${index}`)),
});

/** A browser's small storage in memory. */
function trialStorage(): Storage {
  const held = new Map<string, string>();
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
  } as Storage;
}

it('2,000 drills that are 0 now are missed, with the last day and the device', () => {
  const witness = witnessOf({ drills: [...journalOf(1999).drills, drill('last', '2026-11-25')] }, at, 'Phone');
  expect(lostJournal(witness, createJournal())).toEqual({
    ...{ drillCount: 2000, foundCount: 0, lastDay: '2026-11-25', device: 'Phone' },
  });
});

it('a first day misses nothing, with no witness or with one of an empty journal', () => {
  expect(lostJournal(undefined, createJournal())).toBeUndefined();
  expect(lostJournal(witnessOf(createJournal(), at), createJournal())).toBeUndefined();
});

it('what the archer removed since is not missed; what was removed before the witness was written explains nothing', () => {
  const witness = witnessOf(journalOf(3), at);
  const mark = (instant: string) => ({ of: 'drills', key: 'd0', at: instant });
  expect(lostJournal(witness, { ...journalOf(2), removed: [mark('2026-11-25T06:00:01Z')] })).toBeUndefined();
  expect(lostJournal(witness, { ...journalOf(2), removed: [mark('2026-11-25T05:00:00Z')] })?.foundCount).toBe(2);
});

it('a drill done after the loss makes up for nothing; what comes back from a backup does', () => {
  const witness = witnessOf(journalOf(1), at);
  const since = drill('since', '2026-11-26');
  expect(lostJournal(witness, { ...createJournal(), drills: [since] })?.foundCount).toBe(0);
  expect(lostJournal(witness, { ...createJournal(), drills: [since, drill('d0')] })).toBeUndefined();
});

it('a drill from a device whose clock is ahead is not missed', () => {
  const ahead = { ...createJournal(), drills: [drill('a', '2026-11-27')] };
  expect(lostJournal(witnessOf(ahead, at), ahead)).toBeUndefined();
});

it('any journal with fewer drills than the witness says is missed, any with as many or more is not', () => {
  fc.assert(
    fc.property(fc.nat(40), fc.nat(40), (before, now) => {
      const lost = lostJournal(witnessOf(journalOf(before), at), journalOf(now));
      expect(lost !== undefined).toBe(now < before);
    }),
  );
});

it('is read as it was written; what somebody else left there, and a browser without storage, are no witness', () => {
  const storage = trialStorage();
  const place = storedWitness(() => storage);
  const witness = witnessOf(journalOf(3), at, 'Phone');
  expect(place.read()).toBeUndefined();
  place.write(witness);
  expect(place.read()).toEqual(witness);
  for (const odd of ['{', '7', '{"drillCount":-1,"at":"x"}', 'null']) {
    storage.setItem('larkhold-witness', odd);
    expect(place.read()).toBeUndefined();
  }
  const none = storedWitness(() => {
    throw new DOMException('no storage', 'SecurityError');
  });
  none.write(witness);
  expect(none.read()).toBeUndefined();
});

it('knows the last day whatever the order, and 80 letters of a device; a removed day explains no drill', () => {
  const drills = [drill('a', '2026-11-24'), drill('b', '2026-11-20')];
  const witness = witnessOf({ drills }, at, 'x'.repeat(81));
  expect(witness).toEqual({ drillCount: 2, lastDay: '2026-11-24', at, device: 'x'.repeat(80) });
  const removed = (of: string) => [{ of, key: 'a', at: '2026-11-26T06:00:00.000Z~phone' }];
  expect(lostJournal(witness, { ...journalOf(1), removed: removed('days') })?.foundCount).toBe(1);
  expect(lostJournal(witness, { ...journalOf(1), removed: removed('drills') })).toBeUndefined();
});
