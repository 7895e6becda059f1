import { type Block, type Lever, leverRanges, type Program, type Rung } from './program.ts';

/** The longest timeline a program may have, seconds: 4 hours. */
export const longestProgramSeconds = 4 * 3600;

/** A rule between keys that a program breaks. */
export interface RuleBreak {
  path: readonly PropertyKey[];
  message: string;
}

/**
 * The rules of a program file that no single key shows, and that a JSON Schema cannot.
 * @param program a program that its schema accepts
 * @returns every rule it breaks, with the path of the value to change
 */
export function checkRules(program: Program): RuleBreak[] {
  const breaks = program.blocks.flatMap((block, index) => [
    ...checkTenths(block, ['blocks', index]),
    ...checkSetRest(block, index, program.blocks.length),
    ...checkLadder(block, ['blocks', index, 'ladder']),
  ]);
  const seconds = longestSeconds(program);
  if (seconds > longestProgramSeconds) {
    const hours = (seconds / 3600).toFixed(1);
    breaks.push({
      path: ['blocks'],
      message: `The whole program may take 4 hours; this one can take ${hours}. Take off sets, reps or rest.`,
    });
  }
  return breaks;
}

function checkTenths(block: Block, path: readonly PropertyKey[]): RuleBreak[] {
  const times: [readonly PropertyKey[], number | undefined][] = [
    [['draw'], block.draw],
    [['hold'], block.hold],
    [['letDown'], block.letDown],
    [['setRest'], block.setRest],
    ...('seconds' in block.rest ? [[['rest', 'seconds'], block.rest.seconds] as [PropertyKey[], number]] : []),
    ...(block.ladder?.rungs ?? []).flatMap((rung, index) => rungTimes(rung, index)),
  ];
  return times
    .filter(([, seconds]) => seconds !== undefined && !isTenths(seconds))
    .map(([key, seconds]) => ({
      path: [...path, ...key],
      message: `Give seconds to a tenth at the finest. Found ${seconds}.`,
    }));
}

function rungTimes(rung: Rung, index: number): [readonly PropertyKey[], number | undefined][] {
  const at = ['ladder', 'rungs', index];
  const reset: [readonly PropertyKey[], number | undefined] = [[...at, 'resets', 'hold'], rung.resets?.hold];
  if (rung.raise !== 'hold') return [reset];
  return [[[...at, 'by'], rung.by], [[...at, 'until'], rung.until], reset];
}

function isTenths(seconds: number): boolean {
  return Math.abs(seconds * 10 - Math.round(seconds * 10)) < 1e-9;
}

function checkSetRest(block: Block, index: number, blocks: number): RuleBreak[] {
  if (block.setRest !== undefined || (block.sets === 1 && index === blocks - 1)) return [];
  const why = block.sets > 1 ? 'there is more than one set' : 'another block follows';
  return [
    {
      path: ['blocks', index],
      message: `The key "setRest" is missing: it is needed because ${why}. Give seconds, 0 to 1800.`,
    },
  ];
}

function checkLadder(block: Block, path: readonly PropertyKey[]): RuleBreak[] {
  if (!block.ladder) return [];
  const { rungs, layoff = [] } = block.ladder;
  const breaks: RuleBreak[] = [];
  const seen = new Set<Lever>();
  rungs.forEach((rung, index) => {
    const at = [...path, 'rungs', index];
    const from = seen.has(rung.raise) ? undefined : block[rung.raise];
    if (from !== undefined && rung.until <= from) {
      breaks.push({
        path: [...at, 'until'],
        message: `Expected more than the block's own ${rung.raise}, ${from}. Found ${rung.until}: this rung could never be climbed.`,
      });
    }
    seen.add(rung.raise);
    for (const [lever, value] of Object.entries(rung.resets ?? {}) as [Lever, number][]) {
      if (lever === rung.raise) {
        breaks.push({ path: [...at, 'resets', lever], message: 'A rung cannot set back what it raises itself.' });
      } else if (!rungs.slice(0, index).some((earlier) => earlier.raise === lever && value < earlier.until)) {
        breaks.push({
          path: [...at, 'resets', lever],
          message: `Expected a value below the "until" of an earlier rung that raises ${lever}. Found ${value}.`,
        });
      }
    }
  });
  layoff.forEach((entry, index) => {
    const before = layoff[index - 1];
    if (before && entry.days <= before.days) {
      breaks.push({
        path: [...path, 'layoff', index, 'days'],
        message: `Expected more than ${before.days}: days rise from entry to entry. Found ${entry.days}.`,
      });
    }
  });
  return breaks;
}

/** The time of the program with every lever as high as its ladder allows. */
function longestSeconds(program: Program): number {
  return program.blocks.reduce((total, block, index) => {
    const top = (lever: Lever): number => {
      const untils = (block.ladder?.rungs ?? []).filter((rung) => rung.raise === lever).map((rung) => rung.until);
      return Math.min(leverRanges[lever].most, Math.max(block[lever], ...untils));
    };
    const [hold, reps, sets] = [top('hold'), top('reps'), top('sets')];
    const rest = 'seconds' in block.rest ? block.rest.seconds : block.rest.timesHold * hold;
    const follows = index < program.blocks.length - 1 ? 1 : 0;
    const setRests = (sets - 1 + follows) * (block.setRest ?? 0);
    return total + sets * (reps * (block.draw + hold + block.letDown) + (reps - 1) * rest) + setRests;
  }, 0);
}
