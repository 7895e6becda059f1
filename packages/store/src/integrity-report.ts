import type { StoreTrouble } from './trouble.ts';

/** A stored value that could not be read. It is kept as it was found. */
export interface SetAside {
  /** Where it was found, and under which key. */
  table: string;
  key: string;
  /** What is wrong with it, in plain words. */
  message: string;
  value: unknown;
}

/** A value set aside, and where it lies now. */
export interface KeptAside extends SetAside {
  /** Its key among the values set aside; absent while it still lies where it was found. */
  asideKey?: string;
}

/** What a check of the whole store found. */
export interface IntegrityReport {
  where: 'disk' | 'memory';
  trouble?: StoreTrouble;
  /** How many good values each table holds. */
  counts: Record<string, number>;
  setAside: SetAside[];
  /** Changes that have not reached the disk. */
  unwrittenCount: number;
}
