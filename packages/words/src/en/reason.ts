import { reasonSentences } from '@larkhold/engine';

/** Why today's numbers are what they are. The engine holds these sentences, for its own words. */
export const reason = reasonSentences;
