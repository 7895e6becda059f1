import { builtInPrograms, ladderPath, layOut, type Program, parseProgram, prescribe } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { createEmptyDraft, draftText, setValue } from './draft.ts';
import { outlineOf } from './draft-outline.ts';
import { weeksAhead } from './weeks-ahead.ts';

const monday = '2026-11-23';
function programWith(ladder: Parameters<typeof setValue>[2]): Program {
  const parsed = parseProgram(
    draftText(setValue(createEmptyDraft(crypto.randomUUID()), ['blocks', 0, 'ladder'], ladder)),
  );
  if (!parsed.ok) throw new Error(parsed.problems[0]?.message);
  return parsed.program;
}

test('a block without a ladder never changes', () => {
  const weeks = weeksAhead(programWith(undefined), { monday, sessionsPerWeek: 3 });
  expect(weeks).toHaveLength(8);
  // 3 sessions of 5 holds of 5 s
  expect(weeks.map(({ tensionMs }) => tensionMs)).toEqual(Array(8).fill(75_000));
});

test('two clean sessions climb one rung, as the program file page says', () => {
  const program = programWith({ rungs: [{ raise: 'hold', by: 1, until: 9 }] });
  const weeks = weeksAhead(program, { monday, sessionsPerWeek: 2 });
  // the last session of each week is the second clean one, so the climb shows in the week after
  expect(weeks.map(({ blocks }) => blocks[0]?.holdMs)).toEqual(
    [5, 6, 7, 8, 9, 9, 9, 9].map((seconds) => seconds * 1000),
  );
  expect(ladderPath(program.blocks[0]!).map(({ hold }) => hold)).toEqual([5, 6, 7, 8, 9]);
});

test('every fourth week is lighter where the ladder says so', () => {
  const rungs = [{ raise: 'hold', by: 1, until: 6 }];
  const weeks = weeksAhead(programWith({ rungs, deload: { everyWeeks: 4, keep: 0.6 } }), {
    monday,
    sessionsPerWeek: 3,
  });
  expect(weeks.map(({ isDeload }) => isDeload)).toEqual([false, false, false, true, false, false, false, true]);
  expect(weeks[3]?.blocks[0]?.reps).toBe(3); // 60 % of 5
});

test('impossible plans are refused', () => {
  expect(() => weeksAhead(builtInPrograms[0]!, { monday, sessionsPerWeek: 8 })).toThrow(RangeError);
});

test('an outline has the length of the timeline and the sum of its holds', () => {
  const program = programWith(undefined);
  const outline = outlineOf(program, { today: monday, maxHoldSeconds: 40 });
  // 5 x (3 + 5 + 3) s and 4 x 20 s rest, after the ready step
  const ready = outline.timeline.steps[0]?.durationMs ?? 0;
  expect(outline.timeline.durationMs - ready).toBe(135_000);
  expect(outline.tensionMs).toBe(25_000);
  expect(outline.fatigue?.reps).toHaveLength(5);
  expect(outlineOf(program, { today: monday }).fatigue).toBeUndefined();
  expect(outline.timeline).toEqual(layOut(prescribe({ program, records: [], today: monday })));
});
