import type { MaxHoldEstimate, PrescribedBlock, Prescription, SessionPrediction } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/** Less than this left is within what the model cannot tell from nothing: no word says that it should go well. Own: no source. */
const AT_LIMIT = 0.05;

/** What is known of a drill besides the model's word. */
export interface KnownOfDrill {
  /** Where the careful reading sees the limit, as `carefulLimit` gives it: it is said where the model is kinder. */
  limit?: Place | undefined;
  /** The day on which as much was held, ISO 8601, as `heldBefore` gives it: where the model doubts it, what was done is said instead. */
  heldOn?: string | undefined;
}

/** A place in a drill. */
type Place = Pick<SessionPrediction['reps'][number], 'block' | 'set' | 'rep'>;

function placeWords(place: Place, blocks: readonly PrescribedBlock[], words: Words): string {
  const here = blocks.find(({ block }) => block === place.block);
  const [rep, set] = [place.rep + 1, place.set + 1];
  const title = blocks.length > 1 ? here?.title : undefined;
  if (here && here.sets > 1) {
    return title === undefined
      ? words.say('outlook.repInSet', { rep, set })
      : words.say('outlook.repInSetOfBlock', { rep, set, title });
  }
  return title === undefined ? words.say('outlook.rep', { rep }) : words.say('outlook.repInBlock', { rep, title });
}

function lowestOf(reps: SessionPrediction['reps']): SessionPrediction['reps'][number] | undefined {
  return reps.reduce<SessionPrediction['reps'][number] | undefined>(
    (lowest, rep) => (lowest === undefined || rep.reserve < lowest.reserve ? rep : lowest),
    undefined,
  );
}

/**
 * What a drill will do to the archer, in a sentence or two.
 * @param prediction of the drill
 * @param prescription the drill
 * @param words the language
 * @param known besides the model's word
 * @returns 'You should hold all 20. …', or where the archer could no longer hold
 */
export function outlookWords(
  { failsAt, reps }: SessionPrediction,
  { blocks }: Prescription,
  words: Words = presentWords(),
  { limit, heldOn }: KnownOfDrill = {},
): string {
  const isDoubted = failsAt !== undefined || limit !== undefined || (lowestOf(reps)?.reserve ?? 1) < AT_LIMIT;
  if (isDoubted && heldOn !== undefined) return words.say('outlook.heldBefore', { day: heldOn });
  if (failsAt) {
    const place = placeWords(failsAt, blocks, words);
    return words.say('outlook.fails', { place, ms: failsAt.secondsIn * 1000 });
  }
  if (limit) return words.say('outlook.careful', { place: placeWords(limit, blocks, words) });
  const lowest = lowestOf(reps);
  if (!lowest) return words.say('outlook.nothing');
  const isAtLimit = lowest.reserve < AT_LIMIT;
  if (reps.length === 1) {
    return isAtLimit ? words.say('outlook.holdsOneAtLimit') : words.say('outlook.holdsOne', { left: lowest.reserve });
  }
  if (isAtLimit) return words.say('outlook.holdsAtLimit', { count: reps.length });
  return words.say('outlook.holds', { count: reps.length, left: lowest.reserve });
}

/**
 * The same for one end of what the longest hold may be.
 * @param prediction of the drill with that hold
 * @param longest that hold, milliseconds
 * @param prescription the drill
 * @param words the language
 * @returns a sentence that begins with the hold
 */
export function rangeWords(
  { failsAt, reps }: SessionPrediction,
  longest: number,
  { blocks }: Prescription,
  words: Words = presentWords(),
): string {
  if (failsAt) {
    const place = placeWords(failsAt, blocks, words);
    return words.say('outlook.rangeFails', { longest, place, ms: failsAt.secondsIn * 1000 });
  }
  const left = lowestOf(reps)?.reserve ?? 0;
  return left < AT_LIMIT
    ? words.say('outlook.rangeAtLimit', { longest })
    : words.say('outlook.rangeHolds', { longest, left });
}

/**
 * The curve in words, for everyone who does not see it.
 * @param prediction of the drill
 * @param prescription the drill
 * @param words the language
 * @param known besides the model's word
 * @returns some sentences
 */
export function curveWords(
  prediction: SessionPrediction,
  prescription: Prescription,
  words: Words = presentWords(),
  known: KnownOfDrill = {},
): string {
  const { reps, failsAt } = prediction;
  const sentences = [outlookWords(prediction, prescription, words, known)];
  const [first] = reps;
  if (first && first.reserve > 0 && reps.length > 1) {
    sentences.push(words.say('outlook.afterFirst', { left: first.reserve }));
  }
  const lowest = lowestOf(reps);
  if (lowest && !failsAt && reps.length > 1) {
    sentences.push(words.say('outlook.lowest', { place: placeWords(lowest, prescription.blocks, words) }));
  }
  return sentences.join(' ');
}

/**
 * The archer's longest hold as the journal tells it, in words.
 * @param estimate as `estimateMaxHold` gives it
 * @param words the language
 * @returns the estimate with its range, or how much is lacking
 */
export function estimateWords(estimate: MaxHoldEstimate, words: Words = presentWords()): string {
  if (estimate.kind === 'too little data') return words.say('ownHold.tooLittle');
  const ms = (seconds: number): number => Math.round(seconds) * 1000;
  return words.say('ownHold.estimate', {
    from: estimate.from === 'test' ? 'test' : 'other',
    ms: ms(estimate.seconds),
    low: ms(Math.floor(estimate.lowSeconds)),
    high: ms(Math.ceil(estimate.highSeconds)),
  });
}
