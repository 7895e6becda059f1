import type { AskedNumber } from './asked-number.ts';
import type { PrescribedBlock, Prescription } from './prescription.ts';
import type { LadderFacts, Reason } from './reason.ts';
import { sayReason } from './say-reason.ts';
import type { Sayer } from './sayer.ts';
import { READY_MS, timelineDurationMs } from './timeline-duration.ts';

type OfBlock = Exclude<AskedNumber, 'duration'>;
/** A reason that says where a block is on its ladder. */
type LadderReason = Extract<Reason, { facts: LadderFacts }>;

/**
 * Why a number of a prescription is what it is.
 * @param prescription today's, as `prescribe` gave it
 * @param block the block's index in the program; of no matter for 'duration', which is the whole drill's
 * @param number which number
 * @param words the language
 * @returns plain sentences, one string for each reason
 */
export function sayWhy(prescription: Prescription, block: number, number: AskedNumber, words: Sayer): string[] {
  if (number === 'duration') return durationWhy(prescription, words);
  const { reasons, rest } = prescription;
  const today = prescription.blocks.find((one) => one.block === block);
  if (!today) {
    const leftOut = ['minutes', 'halfHour', 'pain', 'painAgain', 'clicker', 'cap'];
    const whys = reasons.filter(({ rule }) => leftOut.includes(rule)).concat(rest ?? []);
    return [words.say('why.leftOut'), ...whys.map((reason) => sayReason(reason, words))];
  }
  const value = words.say(`why.${number}`, { value: valueWords(today, number, words) });
  const test = reasons.find(({ rule }) => rule === 'test');
  if (test) return [value, words.say('why.asProgram'), sayReason(test, words)];
  const ladder = reasons.find(
    (reason): reason is LadderReason => reason.block === block && 'startHold' in reason.facts,
  );
  const later = reasons.filter(
    (reason) =>
      reason !== ladder && reason.acts?.includes(number) && (reason.block === undefined || reason.block === block),
  );
  return [
    value,
    ...(ladder ? ladderWhy(ladder, number, words) : [words.say('why.asProgram')]),
    ...later.map((reason) => sayReason(reason, words)),
  ];
}

function valueWords(today: PrescribedBlock, number: OfBlock, words: Sayer): string {
  if (number === 'sets' || number === 'reps') return words.count(today[number]);
  if (number === 'addedWeight') return words.weight(today.addedWeightLbf, 'imperial');
  return words.duration(today[`${number}Ms`]);
}

function ladderWhy(ladder: LadderReason, number: OfBlock, words: Sayer): string[] {
  const { facts } = ladder;
  if (number === 'draw' || number === 'letDown') return [words.say('why.asProgram')];
  if (number === 'rest') return restWhy(facts, words);
  if (number === 'setRest') {
    return [words.say(facts.setRestFrom === undefined ? 'why.asProgram' : 'why.restAsReps')];
  }
  const start = leverWords(facts, `start${capital(number)}`, words);
  if (ladder.rule === 'fixed') return [words.say('why.fixed', { value: start })];
  const isDecided = ladder.acts?.includes(number) ?? false;
  if (ladder.rule === 'start' || (facts[`start${capital(number)}`] === facts[number] && !isDecided)) {
    return [words.say('why.begins', { value: start })];
  }
  const { level, top } = facts;
  const step = words.say('why.step', { start, level, top, value: leverWords(facts, number, words) });
  return isDecided ? [step, sayReason(ladder, words)] : [step];
}

function restWhy({ restTimesHold, restHold, restFactor }: LadderFacts, words: Sayer): string[] {
  const longer = restFactor === undefined ? [] : [words.say('why.restLonger', { times: restFactor })];
  if (restTimesHold === undefined) return [words.say('why.asProgram'), ...longer];
  return [words.say('why.restTimes', { times: restTimesHold, hold: (restHold ?? 0) * 1000 }), ...longer];
}

type Lever = 'sets' | 'reps' | 'hold' | 'addedWeight';
const capital = <Name extends Lever>(name: Name): Capitalize<Name> =>
  (name.charAt(0).toUpperCase() + name.slice(1)) as Capitalize<Name>;

function leverWords(facts: LadderFacts, lever: Lever | `start${Capitalize<Lever>}`, words: Sayer): string {
  const value = facts[lever];
  if (/hold$/i.test(lever)) return words.duration(value * 1000);
  return /weight$/i.test(lever) ? words.weight(value, 'imperial') : words.count(value);
}

function durationWhy({ blocks, durationMs, reasons }: Prescription, words: Sayer): string[] {
  const between = blocks.slice(0, -1).reduce((sum, { setRestMs }) => sum + setRestMs, 0);
  return [
    words.say('why.duration', { value: words.duration(durationMs) }),
    words.say('why.getReady', { ms: READY_MS }),
    ...blocks.map((block) => {
      const { title, sets, reps } = block;
      return words.say('why.blockTakes', { title, sets, reps, ms: timelineDurationMs([block]) - READY_MS });
    }),
    ...(between > 0 ? [words.say('why.between', { ms: between })] : []),
    ...reasons.filter(({ acts }) => acts?.includes('duration')).map((reason) => sayReason(reason, words)),
  ];
}
