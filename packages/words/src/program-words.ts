import type { Block, Program, Rung } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import type { Units } from './formats.ts';
import { presentWords } from './present-words.ts';

/**
 * What is drawn, in words.
 * @param tool as the program says
 * @param words the language
 * @returns 'Stretch band'
 */
export function toolWord(tool: Program['tool'], words: Words = presentWords()): string {
  return words.say(`program.${tool === 'light-bow' ? 'lightBow' : tool}`);
}

/**
 * A block as its file says it, read aloud.
 * @param block of a program
 * @param units the archer's
 * @param words the language
 * @returns some short sentences
 */
export function blockSentence(block: Block, units: Units, words: Words = presentWords()): string {
  const { sets, reps, rest, setRest, countFrom, letDownTo, hand, addedWeight } = block;
  const ms = (seconds: number) => seconds * 1000;
  const times = { draw: ms(block.draw), hold: ms(block.hold), letDown: ms(block.letDown) };
  const restMs = ms('seconds' in rest ? rest.seconds : rest.timesHold * block.hold);
  return [
    sets > 1
      ? words.say('program.blockOfSets', { sets, reps, ...times })
      : words.say('program.block', { reps, ...times }),
    countFrom === 'anchor' && words.say('program.fromAnchor'),
    letDownTo === 'set-up' && words.say('program.toSetUp'),
    restMs === 0 ? words.say('program.noRest') : words.say('program.rest', { rest: restMs }),
    sets > 1 && setRest !== undefined && words.say('program.setRest', { rest: ms(setRest) }),
    hand !== 'usual' && words.say(`program.${hand}`),
    addedWeight > 0 && words.say('program.added', { weight: words.weight(addedWeight, units) }),
  ]
    .filter((sentence) => sentence !== false)
    .join(' ');
}

/**
 * How a block gets harder and easier, in words.
 * @param block of a program
 * @param units the archer's
 * @param words the language
 * @returns sentences in order; one that says so when there is no ladder
 */
export function ladderSentences({ ladder }: Block, units: Units, words: Words = presentWords()): string[] {
  if (!ladder) return [words.say('program.noLadder')];
  const { rungs, climbAfter, stepDownAfter, deload, layoff, weeklyGrowth } = ladder;
  return [
    words.say('program.climb', { clean: climbAfter.cleanSessions, effort: climbAfter.effortAtMost }),
    ...rungs.map((rung, index) => rungWords(rung, index, units, words)),
    stepDownWords(stepDownAfter, words),
    ...(deload ? [words.say('program.deload', { weeks: deload.everyWeeks, keep: deload.keep })] : []),
    ...(layoff ?? []).map(({ days, stepsDown }) => words.say('program.layoff', { days, steps: stepsDown })),
    ...(weeklyGrowth === undefined ? [] : [words.say('program.growth', { growth: weeklyGrowth })]),
  ];
}

function stepDownWords(
  { missedShare: share, sessions }: NonNullable<Block['ladder']>['stepDownAfter'],
  words: Words,
): string {
  if (sessions > 1) {
    return share > 0
      ? words.say('program.stepDownRunning', { share, sessions })
      : words.say('program.stepDownAnyRunning', { sessions });
  }
  return share > 0 ? words.say('program.stepDown', { share }) : words.say('program.stepDownAny');
}

function rungWords(rung: Rung, index: number, units: Units, words: Words): string {
  const { raise, by, until, resets } = rung;
  const order = index === 0 ? ('first' as const) : ('other' as const);
  const given = {
    ...{ order, lever: leverOf(raise) },
    by: valueWords(raise, by, units, words),
    until: valueWords(raise, until, units, words),
  };
  const back = Object.entries(resets ?? {})
    .filter((entry): entry is [Rung['raise'], number] => entry[1] !== undefined)
    .map(([lever, amount]) =>
      words.say('program.reset', { lever: leverOf(lever), value: valueWords(lever, amount, units, words) }),
    );
  return back.length === 0
    ? words.say('program.rung', given)
    : words.say('program.rungWithResets', { ...given, resets: words.list(back) });
}

function leverOf(lever: Rung['raise']): 'hold' | 'reps' | 'sets' | 'other' {
  return lever === 'addedWeight' ? 'other' : lever;
}

function valueWords(lever: Rung['raise'], amount: number, units: Units, words: Words): string {
  if (lever === 'hold') return words.seconds(amount * 1000);
  if (lever === 'addedWeight') return words.weight(amount, units);
  return words.say(`dose.${lever}`, { n: amount });
}
