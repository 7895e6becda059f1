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

const messages: Record<StoreTroubleKind, string> = {
  refused:
    'This browser keeps nothing for this page. What you do now lasts until the page is closed. Save it as a file before you leave.',
  full: 'The device has no room left, so the last change is not on disk. It is kept while the page is open. Save it as a file, then make room.',
  blocked:
    'Another tab holds the journal. Close the other tabs and load this page again. Until then, save what you do as a file.',
  damaged:
    'The journal on this device could not be read or written. What you do now lasts until the page is closed. Save it as a file.',
  newer:
    'A newer version of the app has been opened on this device. Load this page again. Until then, save what you do as a file.',
};

/**
 * Says a trouble in plain words.
 * @param kind what is wrong.
 * @returns the kind with its sentence.
 */
export function describeTrouble(kind: StoreTroubleKind): StoreTrouble {
  return { kind, message: messages[kind] };
}

/** A write that did not reach the disk. The value stays in memory. */
export class StoreError extends Error {
  readonly kind: StoreTroubleKind;
  constructor(kind: StoreTroubleKind, cause?: unknown) {
    super(messages[kind], { cause });
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
