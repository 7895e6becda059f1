import type { TrendVerdict } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/**
 * How it goes, in words.
 * @param verdict as the engine gives it
 * @param words the language
 * @returns the verdict in a word or two, and what says so
 */
export function verdictWords(verdict: TrendVerdict, words: Words = presentWords()): { head: string; why: string } {
  const head = words.say(`verdict.${verdict.verdict}`);
  if (verdict.verdict === 'unclear') return { head, why: words.say('verdict.unclearWhy') };
  if (verdict.by === 'holds')
    return { head, why: words.say('verdict.byHolds', { now: verdict.nowMs, before: verdict.beforeMs }) };
  const { test, from, fromDate } = verdict;
  const given = { title: test.program, value: test.value, from, day: fromDate };
  const isSeconds = test.measure === 'longest-hold-seconds';
  return {
    head,
    why: isSeconds
      ? words.say('verdict.byTest', { ...given, value: test.value * 1000, from: from * 1000 })
      : words.say('verdict.byTestReps', given),
  };
}
