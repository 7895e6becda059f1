import { day } from './day.ts';
import { line } from './line.ts';
import { rep } from './rep.ts';

/** Every message in English. It is the master: the other languages have the same keys and parameters. */
export const en = { ...day, ...line, ...rep } as const;
