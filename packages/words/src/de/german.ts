import type { LanguageTexts } from '../language-texts.ts';
import { builtIn } from './built-in.ts';
import { de } from './index.ts';

/** All that is written in German. */
export const german: LanguageTexts = { messages: de, builtIn };
