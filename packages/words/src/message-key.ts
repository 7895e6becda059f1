import type { en } from './en/index.ts';

/** The name of a sentence. */
export type MessageKey = keyof typeof en;
