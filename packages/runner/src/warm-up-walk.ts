import { checkCall } from '@larkhold/engine';

/** The warm-up's lines, one after the other: each stays until the archer goes on. */
export interface WarmUpWalk {
  /** The line to do now; undefined when the warm-up is over. */
  readonly line: string | undefined;
  /** What is said of it: the line, or nothing where it may not be said. */
  readonly said: string;
  next(): void;
}

/**
 * Walks through the lines of a warm-up.
 * @param lines as the program has them
 * @returns the walk, at its first line
 */
export function walkWarmUp(lines: readonly string[]): WarmUpWalk {
  let at = 0;
  return {
    get line() {
      return lines[at];
    },
    get said() {
      const line = lines[at] ?? '';
      return checkCall(line) === undefined ? line : '';
    },
    next() {
      at += 1;
    },
  };
}
