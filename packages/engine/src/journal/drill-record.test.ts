import { describe, expect, it } from 'vitest';
import { drillRecordSchema, repRecordSchema } from './drill-record.ts';

const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 20_000, heldMs: 20_000, outcome: 'held' };
const record = {
  ...{ id: 'd', program: 'Slow mornings', date: '2026-11-25', reps: [rep] },
  ...{ startedAt: '2026-11-25T06:00:00Z', endedAt: '2026-11-25T06:10:00Z' },
};
const takes = (more: object): boolean => drillRecordSchema.safeParse({ ...record, ...more }).success;
const takesRep = (more: object): boolean => repRecordSchema.safeParse({ ...rep, ...more }).success;
/** A camera's word, which sends a rep past the quick copy to the schema. */
const seen = { fromMs: -200, toMs: 19_000 };

describe('a drill record', () => {
  it('needs its id, program, day, instants and reps, and nothing else', () => {
    expect(takes({})).toBe(true);
    for (const key of Object.keys(record)) expect(takes({ [key]: undefined }), key).toBe(false);
  });

  it.each([
    ['program', ['x', 'x'.repeat(120)], ['', 'x'.repeat(121), 7]],
    ['programId', ['', 'x'.repeat(64)], ['x'.repeat(65), 7]],
    ['effort', [0, 7.5, 10], [-0.1, 10.1, '7']],
    ['pain', [true, false], ['no', 0]],
    ['kind', ['test'], ['drill', true]],
    ['note', ['', 'x'.repeat(4000)], ['x'.repeat(4001), 7]],
    ['prescribedReps', [0, 12], [-1, 1.5]],
    ['durationMs', [0, 600_000], [-1, 0.5]],
    ['onFingersLbf', [0, 38.5, 200], [-1, 200.5]],
    ['tool', ['bow', 'light-bow', 'band', 'strap'], ['rope', true]],
    ['open', [true], [false, 'true']],
    ['editedAt', ['', '2026-11-25T06:00:00Z~a1'], ['yesterday', 7]],
    ['restoredAt', ['2026-11-25T06:00:00Z'], ['yesterday']],
    ['edits', [{ session: '2026-11-25T06:00:00Z' }], [{ session: 'yesterday' }, { ['x'.repeat(65)]: '' }]],
    ['removed', [true], [false]],
    ['date', ['1900-01-01', '2999-12-31'], ['1899-12-31', '3000-01-01', '2026-02-30']],
    ['startedAt', ['2026-11-25T06:00:00+01:00'], ['2026-11-25T06:00:00', '3000-01-01T00:00:00Z']],
    ['endedAt', ['2026-11-25T06:00:00+01:00'], ['2026-11-25T06:00:00', '3000-01-01T00:00:00Z']],
    ['id', ['x', 'x'.repeat(64)], ['', 'x'.repeat(65), '\ud83d']],
  ])('takes of %s what it may be and nothing beyond', (key, good, bad) => {
    for (const value of good) expect(takes({ [key]: value }), String(value).slice(0, 40)).toBe(true);
    for (const value of bad) expect(takes({ [key]: value }), String(value).slice(0, 40)).toBe(false);
  });

  it('keeps what only a newer app knows, of itself and of a rep', () => {
    const newer = { ...record, wind: 'light', reps: [{ ...rep, pulse: 61 }] };
    expect(drillRecordSchema.parse(newer)).toEqual(newer);
  });

  it('says of the first rep that is wrong where it is and what, and of no other', () => {
    const reps = [
      { ...rep, seen },
      { ...rep, heldMs: -1 },
      { ...rep, heldMs: -1 },
    ];
    const read = drillRecordSchema.safeParse({ ...record, reps });
    expect(read.error?.issues.map(({ path }) => path)).toEqual([['reps', 1, 'heldMs']]);
    for (const none of ['none', null, { 0: rep }]) {
      const error = drillRecordSchema.safeParse({ ...record, reps: none }).error;
      expect(error?.issues.map(({ path, code }) => [path, code])).toEqual([[['reps'], 'invalid_type']]);
    }
  });

  it('holds twenty thousand reps and no more, by the quick way and by the schema’s', () => {
    expect(takes({ reps: Array(20_000).fill(rep) })).toBe(true);
    const many = drillRecordSchema.safeParse({ ...record, reps: Array(20_001).fill(rep) });
    expect(many.error?.issues).toMatchObject([{ code: 'too_big', maximum: 20_000, path: ['reps'] }]);
  });
});

describe('a rep', () => {
  it.each([
    ['block', [0, 3], [-1, 0.5, undefined]],
    ['set', [0, 3], [-1, 0.5, undefined]],
    ['rep', [0, 3], [-1, 0.5, undefined]],
    ['hand', ['usual', 'opposite'], ['left', undefined]],
    ['prescribedMs', [0, 20_000], [-1, 0.5, undefined]],
    ['heldMs', [0, 20_000], [-1, 0.5, undefined]],
    ['outcome', ['held', 'short', 'skipped', 'unsure'], ['full', undefined]],
    ['why', ['form', 'tired', 'interrupted', undefined], ['bored']],
    ['addedWeightLbf', [0, 2.5, 60, undefined], [-0.5, 60.5]],
    ['seen', [seen, { fromMs: 5, toMs: 5 }, undefined], [{ fromMs: 6, toMs: 5 }, { fromMs: 0 }, { toMs: 5 }, {}]],
  ])('takes of %s what it may be and nothing beyond', (key, good, bad) => {
    for (const value of good) expect(takesRep({ [key]: value }), JSON.stringify(value)).toBe(true);
    for (const value of bad) expect(takesRep({ [key]: value }), JSON.stringify(value)).toBe(false);
  });

  it('as it was seen: whole milliseconds, at most three parts that moved, no time below nothing', () => {
    const moved = ['elbow', 'bowShoulder', 'creep'];
    expect(takesRep({ seen: { ...seen, moved, wholeMs: 0 } })).toBe(true);
    expect(takesRep({ seen: { ...seen, moved: [] } })).toBe(true);
    for (const wrong of [
      { ...seen, moved: [...moved, 'elbow'] },
      { ...seen, moved: ['head'] },
      { ...seen, wholeMs: -1 },
      { ...seen, wholeMs: 0.5 },
      { ...seen, fromMs: 0.5 },
      { ...seen, toMs: 19_000.5 },
    ])
      expect(takesRep({ seen: wrong }), JSON.stringify(wrong)).toBe(false);
  });
});
