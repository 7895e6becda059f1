/**
 * What can be wrong with a box. Of the host: `gone` (no network, or no such host), `slow`, `full`, `refused` (it wants a password, or the folder's leave has
 * lapsed), `fault` (5xx), `no box` (it answers with something else, such as a page). Of a file: `missing`, `changed` (not as it was when it was looked at),
 * `enormous`, `damaged` (cut off or tampered with), `foreign` (of another box, or sealed with another secret), `swapped` (another device's under this
 * name), `replayed` (older than one that was read before), `newer` (of a newer app).
 */
export type BoxTroubleKind = keyof typeof sentences;

/** What is wrong, in plain words for the archer. */
export interface BoxTrouble {
  kind: BoxTroubleKind;
  message: string;
  /** The file it is about, where it is one file. */
  file?: string;
}

const sentences = {
  gone: 'The box could not be reached. Everything is kept here, and goes there when it can.',
  slow: 'The box did not answer in time. It is tried again later.',
  full: 'The host of the box has no room left. Nothing was lost; ask whoever hosts it to make room.',
  refused:
    'The host of the box wants a password or a leave that this app does not have. Ask whoever hosts it, or choose the folder again.',
  fault: 'The host of the box has a fault of its own. It is tried again later.',
  'no box': 'At this address is something else than a box. Check the address with whoever hosts it.',
  missing: 'This file is not in the box.',
  changed: 'Another device writes under this one’s name. This device takes a new name.',
  enormous: 'A file in the box is too big to be a journal. It was left alone.',
  damaged:
    'A file in the box is cut off or was tampered with. It was left alone; the device that wrote it puts a whole one there when it meets the box next.',
  foreign: 'A file in the box is sealed with another secret, or belongs to another box. It was left alone.',
  swapped: 'A file in the box lies under another device’s name. It was left alone.',
  replayed: 'A file in the box is older than one that was read before. Nothing came back by it.',
  newer: 'A device has a newer version of the app. Update this one to read what it wrote; nothing is lost until then.',
} as const;

/**
 * Says a trouble in plain words.
 * @param kind what is wrong.
 * @param file the file it is about, where it is one file.
 * @returns the kind with its sentence.
 */
export function describeBoxTrouble(kind: BoxTroubleKind, file?: string): BoxTrouble {
  return { kind, message: sentences[kind], ...(file === undefined ? {} : { file }) };
}

/**
 * An answer that says what was wrong.
 * @param kind what is wrong.
 * @param file the file it is about, where it is one file.
 * @returns the answer.
 */
export function troubled(kind: BoxTroubleKind, file?: string): { ok: false; trouble: BoxTrouble } {
  return { ok: false, trouble: describeBoxTrouble(kind, file) };
}
