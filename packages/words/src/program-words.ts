import type { Block, Program, Rung } from '@larkhold/engine';
import { formatCounted, formatSeconds, formatShare, formatWeight } from './format-for-people.ts';
import type { Units } from './formats.ts';

/** What is drawn, in words. */
export const toolWords: Readonly<Record<Program['tool'], string>> = {
  bow: 'Bow',
  'light-bow': 'Light bow',
  band: 'Stretch band',
  strap: 'Strap',
};

const handWords = { usual: '', opposite: ', other hand', both: ', both hands in turn' } as const;

/**
 * A block as its file says it, read aloud.
 * @param block of a program
 * @param units the archer's
 * @returns 'Two sets …' as one sentence
 */
export function blockSentence(block: Block, units: Units): string {
  const { sets, reps, draw, hold, letDown, rest, setRest, letDownTo, hand, addedWeight } = block;
  const s = (seconds: number) => formatSeconds(seconds * 1000);
  const pause = 'seconds' in rest ? s(rest.seconds) : s(rest.timesHold * hold);
  const noRest = 'seconds' in rest ? rest.seconds === 0 : rest.timesHold === 0;
  return [
    `${sets > 1 ? `${formatCounted(sets, 'set')} of ` : ''}${formatCounted(reps, 'rep')}: draw ${s(draw)}, hold ${s(hold)}, `,
    `let down ${s(letDown)}${letDownTo === 'set-up' ? ' to set-up' : ''}${noRest ? ', no rest' : `, rest ${pause}`}`,
    sets > 1 && setRest !== undefined ? `; ${s(setRest)} between sets` : '',
    handWords[hand],
    addedWeight > 0 ? `, ${formatWeight(addedWeight, units)} added` : '',
    '.',
  ].join('');
}

/**
 * How a block gets harder and easier, in words.
 * @param block of a program
 * @param units the archer's
 * @returns sentences in order; one that says so when there is no ladder
 */
export function ladderSentences({ ladder }: Block, units: Units): string[] {
  if (!ladder) return ['Stays as it is.'];
  const { rungs, climbAfter, stepDownAfter, deload, layoff, weeklyGrowth } = ladder;
  const clean = formatCounted(climbAfter.cleanSessions, 'clean session');
  const missed =
    stepDownAfter.missedShare > 0 ? `${formatShare(stepDownAfter.missedShare)} of the reps or more are` : 'any rep is';
  const running = stepDownAfter.sessions > 1 ? ` in ${formatCounted(stepDownAfter.sessions, 'session')} running` : '';
  return [
    `One step up after ${clean}, if the effort was ${climbAfter.effortAtMost} of 10 or less.`,
    ...rungs.map((rung, index) => `${index === 0 ? 'First' : 'Then'} ${rungWords(rung, units)}.`),
    `One step down when ${missed} let down early or skipped${running}.`,
    ...(deload
      ? [`Every ${deload.everyWeeks} training weeks a lighter one: ${formatShare(deload.keep)} of the reps.`]
      : []),
    ...(layoff ?? []).map(
      ({ days, stepsDown }) => `After ${formatCounted(days, 'day')} away, ${formatCounted(stepsDown, 'step')} down.`,
    ),
    ...(weeklyGrowth === undefined
      ? []
      : [`No more than ${formatShare(weeklyGrowth)} of the hold time of the last four weeks' mean.`]),
  ];
}

function rungWords(rung: Rung, units: Units): string {
  const { raise, by, until, resets } = rung;
  const value = (lever: Rung['raise'], amount: number): string => {
    if (lever === 'hold') return formatSeconds(amount * 1000);
    if (lever === 'addedWeight') return formatWeight(amount, units);
    return formatCounted(amount, lever === 'reps' ? 'rep' : 'set');
  };
  const name = { hold: 'the hold', reps: 'the reps', sets: 'the sets', addedWeight: 'the added weight' };
  const back = Object.entries(resets ?? {})
    .filter((entry): entry is [Rung['raise'], number] => entry[1] !== undefined)
    .map(([lever, amount]) => `${name[lever]} back to ${value(lever, amount)}`);
  return `${name[raise]} by ${value(raise, by)}, up to ${value(raise, until)}${back.length > 0 ? `, with ${back.join(' and ')}` : ''}`;
}
