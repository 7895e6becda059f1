import type { Block, Ladder, Program } from './program.ts';

/**
 * The canonical text of a program: the key order of the program file page, two-space indent, defaults left out, a final newline.
 * @param program a valid program
 * @returns JSON text that `parseProgram` reads back as an equal program
 */
export function formatProgram(program: Program): string {
  const { format, version, id, title, author, about, source, tool, warmUp, blocks, coolDown } = program;
  const file = {
    format,
    version,
    id,
    title,
    author,
    about,
    source,
    tool,
    warmUp,
    blocks: blocks.map(writeBlock),
    coolDown,
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

function unless<T>(value: T, usual: T): T | undefined {
  return value === usual ? undefined : value;
}

function writeBlock(block: Block): object {
  const { title, drill, sets, reps, draw, hold, letDown, rest, setRest, letDownTo, hand, addedWeight, calls, ladder } =
    block;
  return {
    ...{ title, drill, sets, reps, draw, hold, letDown, rest, setRest },
    letDownTo: unless(letDownTo, 'rest'),
    hand: unless(hand, 'usual'),
    addedWeight: unless(addedWeight, 0),
    calls,
    ladder: ladder && writeLadder(ladder),
  };
}

function writeLadder({ rungs, climbAfter, stepDownAfter, deload, layoff, weeklyGrowth }: Ladder): object {
  return {
    rungs: rungs.map(({ raise, by, until, resets }) => ({ raise, by, until, resets: resets && writeResets(resets) })),
    climbAfter: someOf({
      cleanSessions: unless(climbAfter?.cleanSessions, 2),
      effortAtMost: unless(climbAfter?.effortAtMost, 7),
    }),
    stepDownAfter: someOf({
      missedShare: unless(stepDownAfter?.missedShare, 0.2),
      sessions: unless(stepDownAfter?.sessions, 1),
    }),
    deload: deload && { everyWeeks: deload.everyWeeks, keep: deload.keep },
    layoff: layoff?.map(({ days, stepsDown }) => ({ days, stepsDown })),
    weeklyGrowth,
  };
}

function writeResets({ hold, reps, sets, addedWeight }: NonNullable<Ladder['rungs'][number]['resets']>): object {
  return { hold, reps, sets, addedWeight };
}

function someOf(object: Record<string, number | undefined>): object | undefined {
  return Object.values(object).some((value) => value !== undefined) ? object : undefined;
}
