import { joinParts } from '../join-parts.ts';
import type { LanguageTexts } from '../language-texts.ts';
import * as parts from './index.ts';

/** All that is written in English. */
export const english: LanguageTexts = { messages: joinParts(parts) };
