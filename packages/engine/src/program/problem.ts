/** One thing wrong in a file, and where. */
export interface Problem {
  /** RFC 6901 pointer to the value; `''` is the whole file. */
  pointer: string;
  /** 1-based line in the text. */
  line: number;
  /** 1-based column in the text, UTF-16 units. */
  column: number;
  /** What was found and what was expected: one or two plain sentences. */
  message: string;
}

/**
 * An RFC 6901 pointer.
 * @param path keys and indexes from the root
 * @returns the pointer, with `~` and `/` escaped
 * @source RFC 6901 section 3
 */
export function pointerOf(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}
