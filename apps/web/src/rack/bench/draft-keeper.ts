import type { Draft } from './draft.ts';

/** Keeps a draft through a reload, by the address it is edited at. A place that refuses loses nothing but that. */
export interface DraftKeeper {
  /** @param address which draft. @returns it as it was left, if it was left unsaved */
  read(address: string): Draft | undefined;
  /** @param address which draft. @param draft undefined lets it go */
  keep(address: string, draft: Draft | undefined): void;
}

const prefix = 'larkhold-draft:';

/**
 * A draft keeper on the browser's own small storage.
 * @param storage where; a browser may refuse it, and then drafts last as long as the page
 * @returns the keeper
 */
export function createDraftKeeper(storage: () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>): DraftKeeper {
  return {
    read(address) {
      try {
        return draftOf(storage().getItem(prefix + address));
      } catch {
        return undefined; // no storage in this browser, or text that is no JSON
      }
    },
    keep(address, draft) {
      try {
        if (draft) storage().setItem(prefix + address, JSON.stringify(draft));
        else storage().removeItem(prefix + address);
      } catch {
        // storage is full or refused: the draft lives on in the page
      }
    },
  };
}

function draftOf(text: string | null): Draft | undefined {
  const found: unknown = text === null ? undefined : JSON.parse(text);
  if (typeof found !== 'object' || found === null || !('file' in found) || !('blockKeys' in found)) return undefined;
  const { file, blockKeys } = found;
  if (typeof file !== 'object' || file === null || !('blocks' in file) || !Array.isArray(file.blocks)) return undefined;
  const keysFit = Array.isArray(blockKeys) && blockKeys.length === file.blocks.length;
  return { file: file as Draft['file'], blockKeys: keysFit ? blockKeys.map(Number) : file.blocks.map((_, at) => at) };
}
