import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatProgram } from './format-program.ts';
import { parseProgram } from './parse-program.ts';
import { type Block, type Lever, leverRanges, type Program, programSchema, type Rung } from './program.ts';

const tenths = (least: number, most: number) =>
  fc.integer({ min: Math.ceil(least * 10), max: Math.floor(most * 10) }).map((value) => value / 10);
const whole = (min: number, max: number) => fc.integer({ min, max });
const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
/** Any characters but lone halves and the control characters that the file refuses. */
const words = (minLength: number, maxLength: number) =>
  fc
    .string({ unit: 'binary', minLength, maxLength: Math.floor(maxLength / 2) })
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is left out
    .map((value) => value.replace(/[\u0000-\u0008\u000b-\u001f]/g, '\n'));

/** Each lever once at most, in any order, from its own value up; a later rung may set an earlier lever back to its foot. */
const anyRungs = (own: Record<Lever, number>): fc.Arbitrary<Rung[]> =>
  fc.shuffledSubarray(Object.keys(leverRanges) as Lever[]).chain((levers) => {
    const able = levers.filter((lever) => own[lever] + 1 <= leverRanges[lever].most);
    return fc.tuple(
      ...able.map((raise, index) => {
        const { most, whole: whole_ } = leverRanges[raise];
        const earlier = able[index - 1];
        const until = whole_ ? whole(own[raise] + 1, most) : tenths(own[raise] + 0.1, most);
        const resets = earlier ? some(fc.constant({ [earlier]: own[earlier] })) : fc.constant(undefined);
        return fc.record({ raise: fc.constant(raise), by: whole(1, 5), until, resets }) as fc.Arbitrary<Rung>;
      }),
    );
  });

const anyLadder = (own: Record<Lever, number>) =>
  fc.record({
    rungs: anyRungs(own),
    climbAfter: fc.record({ cleanSessions: whole(1, 20), effortAtMost: tenths(0, 10) }),
    stepDownAfter: fc.record({ missedShare: fc.double({ min: 0, max: 1, noNaN: true }), sessions: whole(1, 10) }),
    deload: some(fc.record({ everyWeeks: whole(2, 12), keep: fc.double({ min: 0.2, max: 0.9, noNaN: true }) })),
    layoff: some(
      fc
        .uniqueArray(whole(1, 365), { maxLength: 20 })
        .chain((days) =>
          fc.tuple(
            ...days.sort((a, b) => a - b).map((day) => fc.record({ days: fc.constant(day), stepsDown: whole(1, 50) })),
          ),
        ),
    ),
    weeklyGrowth: some(fc.double({ min: 1, max: 2, noNaN: true })),
  });

const anyBlock: fc.Arbitrary<Block> = fc
  .record({ hold: tenths(0.5, 180), reps: whole(1, 60), sets: whole(1, 20), addedWeight: tenths(0, 30) })
  .chain((own) =>
    fc.record({
      ...{ hold: fc.constant(own.hold), reps: fc.constant(own.reps) },
      ...{ sets: fc.constant(own.sets), addedWeight: fc.constant(own.addedWeight) },
      ...{ title: words(1, 120), draw: tenths(0.5, 30), letDown: tenths(0.5, 30), setRest: tenths(0, 1800) },
      drill: fc.constantFrom('holding', 'power', 'flexibility', 'structure', 'free'),
      rest: fc.oneof(
        fc.record({ seconds: tenths(0, 1800) }),
        fc.record({ timesHold: fc.double({ min: 0, max: 20, noNaN: true }) }),
      ),
      letDownTo: fc.constantFrom('rest', 'set-up'),
      hand: fc.constantFrom('usual', 'opposite', 'both'),
      calls: some(fc.oneof(fc.array(words(1, 80), { maxLength: 12 }), fc.constant('shot-process' as const))),
      ladder: some(anyLadder(own)).map((ladder) => (ladder?.rungs.length ? ladder : undefined)),
    }),
  ) as fc.Arbitrary<Block>;

const lines = some(fc.array(words(0, 200), { maxLength: 30 }));
/** Any program with one to three blocks that fits its four hours. */
const anyProgram: fc.Arbitrary<Program> = fc
  .record({
    ...{ format: fc.constant('larkhold/program'), version: fc.constant(1), id: some(fc.uuid()), title: words(1, 120) },
    ...{ author: some(words(0, 120)), about: some(words(0, 4000)), source: some(words(0, 1000)) },
    tool: fc.constantFrom('bow', 'light-bow', 'band', 'strap'),
    ...{ warmUp: lines, blocks: fc.array(anyBlock, { minLength: 1, maxLength: 3 }), coolDown: lines },
  })
  .filter((program) => parseProgram(JSON.stringify(program)).ok)
  .map((program) => programSchema.parse(program));

describe('any valid program', () => {
  it('is read back as it was written, and writes the same text again', () => {
    fc.assert(
      fc.property(anyProgram, (program) => {
        const text = formatProgram(program);
        const parsed = parseProgram(text);

        expect(parsed).toEqual({ ok: true, program });
        expect(parsed.ok && formatProgram(parsed.program)).toBe(text);
      }),
      { numRuns: 60, seed: 20_261_125 },
    );
  });
});
