import { faultSentences } from '@larkhold/engine';

/** What is wrong in a file. The engine holds these sentences, for its own messages. */
export const fault = faultSentences;
