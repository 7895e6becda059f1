import { type Program, programSchema } from '../program/program.ts';
import type { Journal } from './journal.ts';

/**
 * The opened programs that this app can read; one of a newer app stays in the journal and waits.
 * @param journal any journal.
 * @returns the programs, each as its file says it.
 */
export function readablePrograms({ opened = [] }: Pick<Journal, 'opened'>): Program[] {
  return opened.flatMap(({ program }) => {
    const read = programSchema.safeParse(program);
    return read.success ? [read.data] : [];
  });
}
