import { say } from '@larkhold/words';

/**
 * What can be wrong with storage. `refused`: the browser gives none (private window, setting); `full`: no room left; `blocked`: another
 * tab holds it; `damaged`: it can't be read or written; `newer`: a newer version of the app has changed it.
 */
export type StoreTroubleKind = 'refused' | 'full' | 'blocked' | 'damaged' | 'newer';

/** What is wrong, in plain words for the archer. */
export interface StoreTrouble {
  kind: StoreTroubleKind;
  message: string;
}

/**
 * Says a trouble in plain words, in the present language.
 * @param kind what is wrong.
 * @returns the kind with its sentence.
 */
export function describeTrouble(kind: StoreTroubleKind): StoreTrouble {
  return { kind, message: say(`trouble.${kind}`) };
}

/** A write that did not reach the disk. The value stays in memory. */
export class StoreError extends Error {
  readonly kind: StoreTroubleKind;
  constructor(kind: StoreTroubleKind, cause?: unknown) {
    super(say(`trouble.${kind}`), { cause });
    this.name = 'StoreError';
    this.kind = kind;
  }
}

const kindsByName: Record<string, StoreTroubleKind> = {
  QuotaExceededError: 'full',
  VersionError: 'newer',
  SecurityError: 'refused',
  NotAllowedError: 'refused',
  TimeoutError: 'blocked',
};

/**
 * Tells which trouble a browser's error means.
 * @param error what IndexedDB threw; names as in the Indexed Database API 3.0.
 * @param whileOpening `InvalidStateError` means "no storage here" while opening (a private window in some browsers), and damage later.
 * @returns the kind of trouble; `damaged` where the error says nothing better.
 */
export function troubleOf(error: unknown, whileOpening = false): StoreTroubleKind {
  if (error instanceof StoreError) return error.kind;
  const name = typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
  if (name === 'InvalidStateError' && whileOpening) return 'refused';
  return kindsByName[name] ?? 'damaged';
}
