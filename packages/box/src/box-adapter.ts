import type { BoxTrouble } from './box-trouble.ts';

/** What is asked of a box, and how it ended: a value, or what was wrong. */
export type BoxAnswer<T> = { ok: true; value: T } | { ok: false; trouble: BoxTrouble };

/** One file in a box, as a list tells it. */
export interface BoxEntry {
  name: string;
  bytes: number;
  /** Changes whenever the file does; empty where the host does not say. */
  mark: string;
}

/** A file's content, and the mark that it carries. */
export interface BoxFile {
  content: Uint8Array;
  mark: string;
}

/** What must be true of a file for it to be put: that it is not there, or that it is still as it was seen. */
export type Precondition = { is: 'absent' } | { is: 'unchanged'; mark: string };

/**
 * A folder of opaque files that somebody hosts. Four verbs and no more, so that any host can be one. Nothing throws; what is wrong comes back as a
 * value. One acceptance suite runs on every adapter.
 */
export interface BoxAdapter {
  /** What is in the box; empty where there is no such box yet. */
  list(): Promise<BoxAnswer<BoxEntry[]>>;
  /** A whole file; `missing` where there is none. */
  get(name: string): Promise<BoxAnswer<BoxFile>>;
  /**
   * Puts a whole file, or none of it.
   * @param when what must be true; `changed` comes back where it is not
   * @returns the mark that the file has now
   */
  put(name: string, content: Uint8Array<ArrayBuffer>, when?: Precondition): Promise<BoxAnswer<string>>;
  /** Removes a file; good also where there is none. */
  remove(name: string): Promise<BoxAnswer<undefined>>;
}

/** The biggest file that is read at all, bytes: ten years of an archer are a sixth of a megabyte. */
export const LARGEST_FILE_BYTES = 8 * 1024 * 1024;

const namePattern = /^[a-z0-9][a-z0-9-]{0,63}(\.prev)?\.(age|tmp)$/;

/**
 * Tells whether a name is one that a box may hold: no path, no other file of the folder.
 * @param name as a list or a caller gives it.
 * @returns true if it is.
 */
export function isBoxName(name: string): boolean {
  return namePattern.test(name);
}
