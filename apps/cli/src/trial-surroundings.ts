import { createMemoryBox } from '@larkhold/box';
import type { Surroundings } from './surroundings.ts';

/** Surroundings of a test: files in memory, and all that was printed. */
export interface TrialSurroundings extends Surroundings {
  files: Map<string, string | Uint8Array>;
  /** What went to standard output. */
  printed(): string;
  /** What went to standard error. */
  complained(): string;
}

/**
 * Surroundings with files in memory. Standard input is the file `-`.
 * @param files by path
 * @param isTerminal whether a person looks
 * @param variables of the environment
 * @returns the surroundings; the day is 2026-11-25
 */
export function trialSurroundings(
  files: Record<string, string | Uint8Array>,
  isTerminal = false,
  variables: Readonly<Record<string, string>> = {},
): TrialSurroundings {
  const kept = new Map<string, string | Uint8Array>(Object.entries(files));
  let [printed, complained] = ['', ''];
  return {
    files: kept,
    isTerminal,
    async read(path) {
      const content = kept.get(path);
      if (content === undefined) throw Object.assign(new Error('no such file'), { code: 'ENOENT' });
      return typeof content === 'string' ? new TextEncoder().encode(content) : content;
    },
    async write(path, content) {
      if (path === '-') printed += typeof content === 'string' ? content : `<${content.length} bytes>`;
      else if (path.startsWith('/full/')) throw new Error('no space left');
      else kept.set(path, content);
    },
    variable: (name) => variables[name],
    openFolderBox: () => createMemoryBox(),
    print(text) {
      printed += text;
    },
    complain(text) {
      complained += text;
    },
    today: () => '2026-11-25',
    instant: () => '2026-11-25T06:00:00Z',
    printed: () => printed,
    complained: () => complained,
  };
}
