import type { PrescribedBlock, Prescription, SessionPrediction } from '@larkhold/engine';
import { formatSeconds, formatShare } from './format-for-people.ts';

/** A place in a drill. */
type Place = Pick<SessionPrediction['reps'][number], 'block' | 'set' | 'rep'>;

function placeWords({ block, set, rep }: Place, blocks: readonly PrescribedBlock[]): string {
  const here = blocks.find((one) => one.block === block);
  const inSet = here && here.sets > 1 ? ` of set ${set + 1}` : '';
  return `rep ${rep + 1}${inSet}${blocks.length > 1 && here ? ` of ${here.title}` : ''}`;
}

function lowestOf(reps: SessionPrediction['reps']): SessionPrediction['reps'][number] | undefined {
  return reps.reduce<SessionPrediction['reps'][number] | undefined>(
    (lowest, rep) => (lowest === undefined || rep.reserve < lowest.reserve ? rep : lowest),
    undefined,
  );
}

/**
 * Where a drill would fail, in one phrase.
 * @param prediction of the drill
 * @param prescription the drill
 * @returns 'it would fail in rep 7 of set 2, after 12 s', or 'everything is held, with 43 % left at the lowest'
 */
export function outlookWords({ failsAt, reps }: SessionPrediction, { blocks }: Prescription): string {
  if (failsAt) {
    return `it would fail in ${placeWords(failsAt, blocks)}, after ${formatSeconds(failsAt.secondsIn * 1000)}`;
  }
  const lowest = lowestOf(reps);
  return lowest ? `everything is held, with ${formatShare(lowest.reserve)} left at the lowest` : 'nothing is held';
}

/**
 * The curve in words, for everyone who does not see it.
 * @param prediction of the drill
 * @param prescription the drill
 * @returns two sentences or three
 */
export function curveWords(prediction: SessionPrediction, prescription: Prescription): string {
  const { reps, failsAt } = prediction;
  const outlook = outlookWords(prediction, prescription);
  const sentences = [`${outlook.charAt(0).toUpperCase()}${outlook.slice(1)}.`];
  const [first] = reps;
  if (first && first.reserve > 0) sentences.push(`After the first hold ${formatShare(first.reserve)} is left.`);
  const lowest = lowestOf(reps);
  if (lowest && !failsAt) sentences.push(`The lowest is after ${placeWords(lowest, prescription.blocks)}.`);
  return sentences.join(' ');
}
