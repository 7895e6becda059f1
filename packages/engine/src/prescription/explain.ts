import type { AskedNumber } from './asked-number.ts';
import { counted, spanWords } from './number-words.ts';
import type { PrescribedBlock, Prescription } from './prescription.ts';
import type { LadderFacts, Reason } from './reason.ts';
import { READY_MS, timelineDurationMs } from './timeline-duration.ts';

/**
 * Why a number of a prescription is what it is, in words.
 * @param prescription today's prescription, as `prescribe` gave it
 * @param block the block's index in the program; of no matter for 'duration', which is the whole drill's
 * @param number which number
 * @returns one or more plain sentences
 * @throws RangeError when the program has no such block
 * @example explain(prescription, 0, 'hold') // 'Hold: 35 s. The program begins with 30 s; …'
 */
export function explain(prescription: Prescription, block: number, number: AskedNumber): string {
  if (number === 'duration') return explainDuration(prescription);
  const { reasons, rest } = prescription;
  const ladder = reasons.find(
    (reason): reason is LadderReason => reason.block === block && 'startHold' in reason.facts,
  );
  const test = reasons.find(({ rule }) => rule === 'test');
  const ofTest = prescription.blocks.find((other) => other.block === block);
  if (test && ofTest) return `${names[number]}: ${valueWords(ofTest, number)}. As the program says. ${test.change}`;
  if (!ladder) throw new RangeError(`block is ${block}; expected the index of a block of the program`);
  const today = prescription.blocks.find((other) => other.block === block);
  if (!today) {
    const whys = reasons.filter(({ rule }) =>
      ['minutes', 'halfHour', 'pain', 'painAgain', 'clicker', 'cap'].includes(rule),
    );
    return ['Left out today.', ...whys.map(({ change }) => change), ...(rest ? [rest.change] : [])].join(' ');
  }
  return explainNumber(today, ladder, reasons, number);
}

/** A reason that says how far a block has come. */
type LadderReason = Extract<Reason, { facts: LadderFacts }>;

const names = {
  ...{ sets: 'Sets', reps: 'Reps', draw: 'Draw', hold: 'Hold', letDown: 'Let-down', rest: 'Rest between reps' },
  ...{ setRest: 'Rest after a set', addedWeight: 'Added weight', duration: 'Length' },
} as const satisfies Record<AskedNumber, string>;

function explainNumber(
  today: PrescribedBlock,
  ladder: LadderReason,
  reasons: readonly Reason[],
  number: Exclude<AskedNumber, 'duration'>,
): string {
  const { facts } = ladder;
  const sentences = [`${names[number]}: ${valueWords(today, number)}.`];
  if (number === 'draw' || number === 'letDown') sentences.push('As the program says.');
  else if (number === 'rest') sentences.push(restWords(facts));
  else if (number === 'setRest') {
    const isOwn = facts.setRestFrom === undefined;
    sentences.push(isOwn ? 'As the program says.' : 'The program gives none, so it is the rest between reps.');
  } else sentences.push(...leverWords(ladder, number));
  const later = reasons.filter((reason) => reason !== ladder && reason.acts?.includes(number));
  sentences.push(
    ...later.filter(({ block }) => block === undefined || block === today.block).map(({ change }) => change),
  );
  return sentences.join(' ');
}

function valueWords(today: PrescribedBlock, number: Exclude<AskedNumber, 'duration'>): string {
  return {
    ...{ sets: `${today.sets}`, reps: `${today.reps}`, addedWeight: `${today.addedWeightLbf} lb` },
    ...{ draw: spanWords(today.drawMs), hold: spanWords(today.holdMs), letDown: spanWords(today.letDownMs) },
    ...{ rest: spanWords(today.restMs), setRest: spanWords(today.setRestMs) },
  }[number];
}

function restWords({ restTimesHold, restHold, restFactor }: LadderFacts): string {
  const longer = restFactor === undefined ? '' : ` ${restFactor} times as long, because holds failed again and again.`;
  if (restTimesHold === undefined) return `As the program says.${longer}`;
  return `${restTimesHold} times a hold of ${restHold} s: a shorter hold does not shorten the rest.${longer}`;
}

const starts = { sets: 'startSets', reps: 'startReps', hold: 'startHold', addedWeight: 'startAddedWeight' } as const;
const units = { sets: '', reps: '', hold: ' s', addedWeight: ' lb' } as const;

function leverWords({ rule, facts, change, acts }: LadderReason, lever: keyof typeof starts): string[] {
  const start = facts[starts[lever]];
  const unit = units[lever];
  if (rule === 'fixed') return [`The program says ${start}${unit}. It has no ladder.`];
  if (rule === 'start' || (start === facts[lever] && !acts?.includes(lever))) {
    return [`The program begins with ${start}${unit}.`];
  }
  const reached = `The program begins with ${start}${unit}; step ${facts.level} of ${facts.top} on its ladder is ${facts[lever]}${unit}.`;
  return acts?.includes(lever) ? [reached, change] : [reached];
}

function explainDuration({ blocks, durationMs, reasons }: Prescription): string {
  const parts = blocks.map((block) => {
    const { title, sets, reps } = block;
    const ownMs = timelineDurationMs([block]) - READY_MS;
    return `${title} ${counted(sets, 'set')} of ${counted(reps, 'rep')} ${spanWords(ownMs)}`;
  });
  const betweenMs = blocks.slice(0, -1).reduce((sum, { setRestMs }) => sum + setRestMs, 0);
  if (betweenMs > 0) parts.push(`rest between drills ${spanWords(betweenMs)}`);
  const changes = reasons.filter(({ acts }) => acts?.includes('duration')).map(({ change }) => change);
  return [
    `${names.duration}: ${spanWords(durationMs)}. ${spanWords(READY_MS)} to get ready; ${parts.join('; ')}.`,
    ...changes,
  ].join(' ');
}
