import type { LanguageTexts } from '../language-texts.ts';
import { en } from './index.ts';

/** All that is written in English. */
export const english: LanguageTexts = { messages: en };
