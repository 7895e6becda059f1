import { presentWords, type Words } from '@larkhold/words';
import { z } from 'zod';
import { boxTroubleSchema, troubleWords } from './box-trouble.ts';

/** One thing that a round did, or that went wrong in it. */
export const roundNewsSchema = z.discriminatedUnion('what', [
  z.object({ what: z.literal('cameIn'), title: z.string().max(60) }),
  z.object({ what: z.literal('wentOut') }),
  z.object({ what: z.literal('takenBack') }),
  z.object({ what: z.literal('trouble'), trouble: boxTroubleSchema }),
]);
/** One thing that a round did, or that went wrong in it. */
export type RoundNews = z.output<typeof roundNewsSchema>;

/** A round that was made, for the log. */
export const roundEntrySchema = z.object({
  at: z.string().max(40),
  news: z.array(roundNewsSchema).max(40),
  isGood: z.boolean(),
});
/** A round that was made, for the log. */
export type RoundEntry = z.output<typeof roundEntrySchema>;

/** The longest log and the most news of a round that are kept. */
const MOST_NEWS = 40;

/**
 * What a round did, for the log.
 * @param round titles of devices whose news came in, whether this device's file was put, and what was wrong.
 * @returns one entry each; none where there was nothing to do.
 */
export function newsOf(round: {
  merged: readonly string[];
  isPushed: boolean;
  troubles: readonly z.output<typeof boxTroubleSchema>[];
}): RoundNews[] {
  const news: RoundNews[] = [
    ...round.merged.map((title) => ({ what: 'cameIn' as const, title })),
    ...(round.isPushed && round.merged.length === 0 ? [{ what: 'wentOut' as const }] : []),
    ...round.troubles.map((trouble) => ({ what: 'trouble' as const, trouble })),
  ];
  return news.slice(0, MOST_NEWS);
}

/**
 * Says one thing of a round in plain words.
 * @param news what happened.
 * @param words the language; the present one unless given.
 * @returns the sentence.
 */
export function newsWords(news: RoundNews, words: Words = presentWords()): string {
  if (news.what === 'trouble') return troubleWords(news.trouble, words);
  if (news.what === 'cameIn') return words.say('boxRound.cameIn', { title: news.title });
  return words.say(`boxRound.${news.what}`);
}
