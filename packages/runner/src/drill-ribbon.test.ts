import { builtInPrograms, layOut, prescribe, type RepRecord } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { drillRibbon } from './drill-ribbon.ts';

const [program] = builtInPrograms;
if (!program) throw new TypeError('no built-in program');
const holds = layOut(prescribe({ program, records: [], today: '2026-11-25' })).steps.filter(
  ({ kind }) => kind === 'hold',
);
const done: RepRecord[] = [
  { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 5000, heldMs: 5000, outcome: 'held' },
];

test('what was done, what is now, what is to come: one stroke for each hold', () => {
  const outcomes = (kind: 'rest' | 'hold', state: 'running' | 'stopped' = 'running') =>
    drillRibbon(holds, done, { state, step: { ...holds[0]!, kind } }).map(({ outcome }) => outcome);
  // bannockburnbowmen.org, coaching corner: five reps.
  expect(outcomes('rest')).toEqual(['held', 'coming', 'coming', 'coming', 'coming']);
  expect(outcomes('hold')).toEqual(['held', 'now', 'coming', 'coming', 'coming']);
  expect(outcomes('hold', 'stopped')).toEqual(['held', 'coming', 'coming', 'coming', 'coming']);
});
