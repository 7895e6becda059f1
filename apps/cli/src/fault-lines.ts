import type { FileFault } from './file-kinds.ts';

/**
 * Faults as lines that editors and terminals can follow.
 * @param path as it was given
 * @param faults what is wrong
 * @returns one line each: `path:line:column: message`
 */
export function faultLines(path: string, faults: readonly FileFault[]): string[] {
  return faults.map(({ line, column, message }) =>
    [path, line, column].filter(Boolean).join(':').concat(': ', message),
  );
}
