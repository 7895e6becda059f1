import type { BuiltInWords } from './built-in-words.ts';
import type { MessageKey } from './message-key.ts';

/** All that is written in one language. */
export interface LanguageTexts {
  messages: Readonly<Record<MessageKey, string>>;
  /** The built-in programs' own texts, where they are not in English. */
  builtIn?: BuiltInWords;
}
