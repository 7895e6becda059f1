import { cautionSentences } from '@larkhold/engine';

/** What to take care of. The engine holds these sentences, for its own words. */
export const caution = cautionSentences;
