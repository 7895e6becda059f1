import type { Fault } from './fault.ts';
import { type Block, type Lever, leverRanges, type Rung, testMeasures } from './program.ts';

/** The longest timeline a program may have, seconds: 4 hours. */
export const longestProgramSeconds = 4 * 3600;

/** A rule between keys that a program breaks. */
export interface RuleBreak {
  path: readonly PropertyKey[];
  fault: Fault;
}

/**
 * The rules of a block that no single key shows, and that a JSON Schema cannot.
 * @param block a block that its schema accepts
 * @param index its place in the program, from 0
 * @param blockCount how many blocks the program has
 * @returns every rule it breaks, with the path of the value to change
 */
export function checkBlock(block: Block, index: number, blockCount: number): RuleBreak[] {
  const path = ['blocks', index];
  return [
    ...checkTenths(block, path),
    ...checkSetRest(block, index, blockCount),
    ...checkLadder(block, [...path, 'ladder']),
  ];
}

/**
 * Whether a program fits its four hours with every lever as high as its ladder allows.
 * @param blocks all blocks of a program, each one sound
 * @returns the broken rule, if it is broken
 */
export function checkLength(blocks: readonly Block[]): RuleBreak[] {
  const seconds = longestSeconds(blocks);
  if (seconds <= longestProgramSeconds) return [];
  return [{ path: ['blocks'], fault: { rule: 'tooLong', hours: (seconds / 3600).toFixed(1) } }];
}

/** What the rules of a test read: a file's own keys, whatever else is wrong with it. */
export interface TestKeys {
  /** The version as the file says it, before it is brought up to date. */
  version: number;
  kind?: unknown;
  measure?: unknown;
  /** The blocks that their schema accepts, by their place in the file. */
  blocks: readonly (Block | undefined)[];
}

/**
 * The rules of a test: it says what it counts, and nothing in it leaves open what was counted or changes from one time to the next.
 * @param keys a file's own keys
 * @returns every rule it breaks
 */
export function checkTest({ version, kind, measure, blocks }: TestKeys): RuleBreak[] {
  const breaks: RuleBreak[] = [];
  if (version < 2 && (kind !== undefined || measure !== undefined)) {
    breaks.push({ path: ['version'], fault: { rule: 'testVersion', version } });
  }
  if (kind === undefined && measure !== undefined) {
    breaks.push({ path: ['measure'], fault: { rule: 'measureAlone' } });
  }
  if (kind !== 'test') return breaks;
  if (measure === undefined) {
    const choices = testMeasures.map((one) => JSON.stringify(one)).join(' / ');
    breaks.push({ path: [], fault: { rule: 'measureMissing', choices } });
  }
  if (blocks.length > 1) breaks.push({ path: ['blocks', 1], fault: { rule: 'testBlocks' } });
  const [block] = blocks;
  if (!block) return breaks;
  const path = ['blocks', 0];
  if (block.sets > 1) breaks.push({ path: [...path, 'sets'], fault: { rule: 'testSets', found: block.sets } });
  if (block.reps > 1 && measure === 'longest-hold-seconds') {
    breaks.push({ path: [...path, 'reps'], fault: { rule: 'testReps', found: block.reps } });
  }
  if (block.hand === 'both') {
    breaks.push({ path: [...path, 'hand'], fault: { rule: 'testHands' } });
  }
  if (block.ladder) {
    breaks.push({ path: [...path, 'ladder'], fault: { rule: 'testLadder' } });
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
  return times.flatMap(([key, seconds]) =>
    seconds === undefined || isTenths(seconds)
      ? []
      : [{ path: [...path, ...key], fault: { rule: 'tenths', found: seconds } }],
  );
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

function checkSetRest(block: Block, index: number, blockCount: number): RuleBreak[] {
  if (block.setRest !== undefined) return [];
  const why = whySetRest(block, index < blockCount - 1);
  if (why === undefined) return [];
  return [{ path: ['blocks', index], fault: { rule: 'setRestMissing', why } }];
}

function whySetRest({ sets, ladder }: Block, blockFollows: boolean): 'sets' | 'follows' | 'other' | undefined {
  if (sets > 1) return 'sets';
  if (blockFollows) return 'follows';
  if (ladder?.rungs.some(({ raise }) => raise === 'sets')) return 'other';
  return undefined;
}

function checkLadder(block: Block, path: readonly PropertyKey[]): RuleBreak[] {
  if (!block.ladder) return [];
  const { rungs, layoff = [] } = block.ladder;
  const breaks: RuleBreak[] = [];
  rungs.forEach((rung, index) => {
    const at = [...path, 'rungs', index];
    const earlier = rungs.slice(0, index);
    breaks.push(...checkUntil(rung, block[rung.raise], earlier, at));
    if (undoesItself(rung, earlier)) {
      breaks.push({ path: [...at, 'resets'], fault: { rule: 'endlessLadder', lever: rung.raise } });
    }
    for (const [lever, value] of Object.entries(rung.resets ?? {}) as [Lever, number][]) {
      const fault = faultOfReset(rung, lever, value, block, earlier);
      if (fault) breaks.push({ path: [...at, 'resets', lever], fault });
    }
  });
  layoff.forEach((entry, index) => {
    const before = layoff[index - 1];
    if (before && entry.days <= before.days) {
      breaks.push({
        path: [...path, 'layoff', index, 'days'],
        fault: { rule: 'layoffOrder', before: before.days, found: entry.days },
      });
    }
  });
  return breaks;
}

/** A reset takes something back: what an earlier rung raised, or some of the block's own; else it does nothing, or makes a climb of its own. */
function faultOfReset(
  { raise }: Rung,
  lever: Lever,
  value: number,
  block: Block,
  earlier: readonly Rung[],
): Fault | undefined {
  if (lever === raise) return { rule: 'resetsItself' };
  const own = block[lever];
  const isRaised = earlier.some((rung) => rung.raise === lever && value < rung.until);
  const isLowered = earlier.some(({ resets }) => (resets?.[lever] ?? own) < value);
  if (isRaised || value < own || (value === own && isLowered)) return undefined;
  return { rule: 'resetTooHigh', lever, own, found: value };
}

/** A rung takes over where the last one on its lever ended, so it must end higher. */
function checkUntil(rung: Rung, own: number, earlier: readonly Rung[], at: readonly PropertyKey[]): RuleBreak[] {
  const ends = earlier.filter(({ raise }) => raise === rung.raise).map(({ until }) => until);
  const from = Math.max(own, ...ends);
  if (rung.until > from) return [];
  const rule = from === own ? 'untilOwn' : 'untilEarlier';
  return [{ path: [...at, 'until'], fault: { rule, lever: rung.raise, from, found: rung.until } }];
}

/** Whether a climb of this rung makes earlier rungs be climbed again that, on the way, take its own climb back. */
function undoesItself(rung: Rung, earlier: readonly Rung[]): boolean {
  const lost: Partial<Record<Lever, number>> = { ...rung.resets };
  for (const before of earlier.toReversed()) {
    const value = lost[before.raise];
    if (value !== undefined && value < before.until) Object.assign(lost, before.resets);
  }
  return rung.resets?.[rung.raise] === undefined && lost[rung.raise] !== undefined;
}

/** The time of the program with every lever as high as its ladder allows. */
function longestSeconds(blocks: readonly Block[]): number {
  return blocks.reduce((total, block, index) => {
    const top = (lever: Lever): number => {
      const untils = (block.ladder?.rungs ?? []).filter((rung) => rung.raise === lever).map((rung) => rung.until);
      return Math.min(leverRanges[lever].most, Math.max(block[lever], ...untils));
    };
    const [hold, reps, sets] = [top('hold'), top('reps'), top('sets')];
    const rest = 'seconds' in block.rest ? block.rest.seconds : block.rest.timesHold * hold;
    const follows = index < blocks.length - 1 ? 1 : 0;
    const setRests = (sets - 1 + follows) * (block.setRest ?? 0);
    return total + sets * (reps * (block.draw + hold + block.letDown) + (reps - 1) * rest) + setRests;
  }, 0);
}
