import { type Complaint, faultMessage } from './fault.ts';

/** One thing wrong in a file, and where. */
export interface Problem extends Complaint {
  /** RFC 6901 pointer to the value; `''` is the whole file. */
  pointer: string;
  /** 1-based line in the text. */
  line: number;
  /** 1-based column in the text, UTF-16 units. */
  column: number;
  /** What was found and what was expected, in English: one to three plain sentences. `packages/words` says it in other languages. */
  message: string;
}

/**
 * A problem at a place.
 * @param pointer RFC 6901 pointer to the value
 * @param place line and column, from 1
 * @param complaint what is wrong
 * @returns the problem, with its English message
 */
export function problemAt(
  pointer: string,
  { line, column }: { line: number; column: number },
  complaint: Complaint,
): Problem {
  return { pointer, line, column, ...complaint, message: faultMessage(complaint) };
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
