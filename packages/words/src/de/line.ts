import type { line as en } from '../en/line.ts';

/** The line: today's drill. */
export const line: Readonly<Record<keyof typeof en, string>> = {
  'line.begin': 'Beginnen',
  'line.inAll': 'Insgesamt {length}.',
};
