import { foldLookAlikes, UNSEEN } from './look-alikes.ts';
import { shotOrders } from './shot-orders.ts';

/**
 * Why a line may not be said at full draw, even when it was allowed. `order`: it can be heard as an order to let the string go, `found` names
 * where; `unseen`: it holds characters that nobody can see; `mixed`: a word mixes letters of two alphabets, so that what is read and what is
 * heard may differ.
 */
export type CallFault = { kind: 'order'; found: string } | { kind: 'unseen' } | { kind: 'mixed'; found: string };

/** Words written apart are put together again up to this many pieces. */
const MOST_PIECES = 7;
/** Digits and signs that stand for letters inside a word; '1' and '!' for two of them. */
const STAND_INS = [
  { '0': 'o', '1': 'i', '!': 'i', '3': 'e', '4': 'a', '@': 'a', '5': 's', '7': 't', '+': 't' },
  { '0': 'o', '1': 'l', '!': 'l', '3': 'e', '4': 'a', '@': 'a', '5': 's', '7': 't', '+': 't' },
] as const satisfies readonly Record<string, string>[];

const wholeWords = new Map(
  shotOrders.words
    .filter((word) => !word.endsWith('*'))
    .map((word) => [foldLookAlikes(word.replace('_', '')), word.replace('_', ' ')] as const),
);
const begun = shotOrders.words.filter((word) => word.endsWith('*')).map((word) => foldLookAlikes(word.slice(0, -1)));
const BEGUN_WORD = new RegExp(`^(?:${begun.join('|')})`, 'u');
/** Of pieces put together only a whole word counts: "re lease", not "are leased". */
const BEGUN_PIECES = new RegExp(`^(?:${begun.join('|')})e?$`, 'u');
const alone = new Set([...shotOrders.alone].map(foldLookAlikes));

/**
 * Looks for an order to let the string go in a line that is to be said at full draw. A second net: it knows the usual words of some
 * languages and the usual ways to hide them, and cannot know all. The first is `allowedCalls` of `layOut`.
 * @param words one line of a coach's or an archer's words
 * @returns what is wrong with it, or undefined
 * @source own: a string let go without an arrow breaks bows and hurts people
 * @example
 * checkCall('Let g\u200bo now'); // { kind: 'order', found: 'let go' }
 */
export function checkCall(words: string): CallFault | undefined {
  const found = orderIn(words);
  if (found !== undefined) return { kind: 'order', found };
  // The sign that makes an emoji coloured is harmless and common.
  if (words.replaceAll('\ufe0f', '').search(UNSEEN) >= 0) return { kind: 'unseen' };
  const mixed = words.split(/[^\p{L}\p{M}]+/u).find(isMixed);
  return mixed === undefined ? undefined : { kind: 'mixed', found: mixed };
}

function orderIn(words: string): string | undefined {
  const written = words.normalize('NFKC').replace(UNSEEN, '').toLowerCase();
  const fragment = shotOrders.fragments.find((one) => written.includes(one.normalize('NFKC')));
  if (fragment !== undefined) return fragment;
  for (const reading of readingsOf(foldLookAlikes(words))) {
    const found = orderInReading(reading);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The ways in which a folded line can be read: signs between letters are gaps or nothing, digits stand for letters, long letters are short. */
function readingsOf(folded: string): Set<string> {
  const readings = new Set<string>();
  for (const letters of [folded, ...STAND_INS.map((standIns) => withStandIns(folded, standIns))]) {
    for (const joined of [letters.replace(/(?<=\S)[^\p{L}\p{N}\s]+(?=\S)/gu, ''), letters]) {
      const spaced = joined.replace(/[^\p{L}\p{N}]+/gu, ' ').trim();
      for (const short of ['$1$1', '$1']) readings.add(spaced.replace(/(\p{L})\1{2,}/gu, short));
    }
  }
  return readings;
}

function withStandIns(folded: string, standIns: Readonly<Record<string, string>>): string {
  return folded.replace(/\S*\p{L}\S*/gu, (word) =>
    // At a word's end a sign is what it is: "GO!".
    word.replace(/[013457@+]|!(?=\S*\p{L})/gu, (sign) => standIns[sign] ?? sign),
  );
}

function orderInReading(reading: string): string | undefined {
  const tokens = reading.split(' ').filter((token) => token !== '');
  if (tokens.length === 0) return undefined;
  const phrase = shotOrders.phrases.map((one) => one.exec(` ${tokens.join(' ')} `)?.[0].trim()).find(Boolean);
  if (phrase !== undefined) return phrase;
  if (tokens.every((token) => alone.has(token))) return tokens.join(' ');
  for (const [from] of tokens.entries()) {
    for (let to = from + 1; to <= Math.min(tokens.length, from + MOST_PIECES); to++) {
      const found = orderInWord(tokens.slice(from, to).join(''), to - from);
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

function orderInWord(word: string, pieces: number): string | undefined {
  const whole = wholeWords.get(word);
  if (whole !== undefined) return whole;
  return (pieces === 1 ? BEGUN_WORD : BEGUN_PIECES).test(word) ? word : undefined;
}

/** Writing that Latin words are set into without a space, and whose letters look like no Latin ones. */
const UNLIKE_LATIN =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Thai}\p{Script=Bopomofo}]/gu;
const PHONETIC = /[\u0250-\u02af\u1d00-\u1dbf\ua720-\ua7ff\uab30-\uab6f]/u;

/** Whether a word has Latin letters beside those of an alphabet that looks like it, or letters of phonetic writing. */
function isMixed(word: string): boolean {
  const letters = word
    .normalize('NFKC')
    .replace(/[\p{M}\p{Script=Common}\p{Script=Inherited}]/gu, '')
    .replace(UNLIKE_LATIN, '');
  return /\p{Script=Latin}/u.test(letters) && (/\P{Script=Latin}/u.test(letters) || PHONETIC.test(letters));
}
