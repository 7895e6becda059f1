import type { BoxTrouble } from './box-trouble.ts';

/** What is asked of a box, and how it ended: a value, or what was wrong. */
export type BoxAnswer<T> = { ok: true; value: T } | { ok: false; trouble: BoxTrouble };

/** One file in a box, as a list tells it. */
export interface BoxEntry {
  name: string;
  bytes: number;
  /** Changes whenever the host thinks that the file did; empty where it does not say. */
  mark: string;
}

/** A file's content, and the mark that it carries. */
export interface BoxFile {
  content: Uint8Array;
  mark: string;
}

/**
 * A folder of opaque files that somebody hosts. Four verbs and no more, so that any host can be one. A file is written once: its name follows from its
 * content (`boxFileName`), so no two writes can mean different things by one name, and a host need not heed a precondition. Nothing throws; what is wrong
 * comes back as a value. One acceptance suite runs on every adapter.
 */
export interface BoxAdapter {
  /** What is in the box; empty where there is no such box yet. */
  list(): Promise<BoxAnswer<BoxEntry[]>>;
  /** A whole file; `missing` where there is none. */
  get(name: string): Promise<BoxAnswer<BoxFile>>;
  /**
   * Puts a whole file, or none of it; again where it is there already.
   * @returns the mark that the file has now
   */
  put(name: string, content: Uint8Array<ArrayBuffer>): Promise<BoxAnswer<string>>;
  /** Removes a file; good also where there is none. */
  remove(name: string): Promise<BoxAnswer<undefined>>;
}

/** The biggest file that is read at all, bytes: ten years of an archer are a sixth of a megabyte. */
export const LARGEST_FILE_BYTES = 8 * 1024 * 1024;
