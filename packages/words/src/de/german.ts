import { joinParts } from '../join-parts.ts';
import type { LanguageTexts } from '../language-texts.ts';
import { builtIn } from './built-in.ts';
import * as parts from './index.ts';

/** All that is written in German. */
export const german: LanguageTexts = { messages: joinParts(parts), builtIn };
