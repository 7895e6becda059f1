import type { en } from '../en/index.ts';
import { day } from './day.ts';
import { line } from './line.ts';
import { rep } from './rep.ts';

/** Every message in German. */
export const de: Readonly<Record<keyof typeof en, string>> = { ...day, ...line, ...rep };
