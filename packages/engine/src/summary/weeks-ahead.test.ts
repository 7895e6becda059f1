import { expect, test } from 'vitest';
import { ladderPath } from '../prescription/ladder-path.ts';
import { prescribe } from '../prescription/prescribe.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { parseProgram } from '../program/parse-program.ts';
import type { Program } from '../program/program.ts';
import { layOut } from '../timeline/lay-out.ts';
import { outlineOf } from './program-outline.ts';
import { weeksAhead } from './weeks-ahead.ts';

const monday = '2026-11-23';
const block = {
  title: 'Holds',
  drill: 'holding',
  sets: 1,
  reps: 5,
  draw: 3,
  hold: 5,
  letDown: 3,
  rest: { seconds: 20 },
};

function programWith(ladder: unknown): Program {
  const head = { format: 'larkhold/program', version: 1, title: 'Trial', tool: 'bow' };
  const parsed = parseProgram(
    JSON.stringify({ ...head, blocks: [ladder === undefined ? block : { ...block, ladder }] }),
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
