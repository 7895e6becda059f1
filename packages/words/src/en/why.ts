import { whySentences } from '@larkhold/engine';

/** Why one number is what it is. The engine holds these sentences, for its own words. */
export const why = whySentences;
