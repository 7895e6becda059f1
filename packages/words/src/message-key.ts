import type * as parts from './en/index.ts';
import type { Joined } from './join-parts.ts';

/** Every message in English: the other languages have the same names and parameters. */
export type EnglishMessages = Joined<typeof parts>;

/** The name of a sentence. */
export type MessageKey = keyof EnglishMessages;
