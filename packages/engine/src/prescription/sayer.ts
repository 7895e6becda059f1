import { fillSentence, formatSpan } from '../units/fill-sentence.ts';
import type { Given, ParametersOf } from '../units/message-parameters.ts';
import { reasonSentences, whySentences } from './prescription-sentences.ts';

const sentences = { ...reasonSentences, ...whySentences };
type Sentences = typeof sentences;

/** Says what a prescription has to say in one language: the engine in English, `packages/words` in each. */
export interface Sayer {
  say<Key extends keyof Sentences>(key: Key, ...given: Given<ParametersOf<Sentences, Key>>): string;
  count(value: number): string;
  /** Milliseconds as '45 s' or '2 min 5 s'. */
  duration(ms: number): string;
  /** Pounds-force as '38 lb'. */
  weight(lbf: number, units: 'imperial'): string;
}

/** The engine's own English. */
export const english: Sayer = {
  say: (key, ...[given]) => fillSentence(sentences[key], (given ?? {}) as object),
  ...{ count: String, duration: formatSpan, weight: (lbf) => `${lbf} lb` },
};
