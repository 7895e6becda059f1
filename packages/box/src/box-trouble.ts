import { presentWords, type Words } from '@larkhold/words';
import { z } from 'zod';

/**
 * What can be wrong with a box. Of the host: `gone` (no network, or no such host), `slow`, `full`, `refused` (it wants a password, or the folder's leave has
 * lapsed), `fault` (5xx), `noBox` (it answers with something else, such as a page). Of a file: `missing`, `enormous`, `damaged` (cut off or tampered with),
 * `foreign` (of another box, or sealed with another secret), `swapped` (another device's under this name), `replayed` (older than one that was read
 * before), `newer` (of a newer app). Of this device: `nameTaken` (another one writes under its name), `noLeave` (the browser's leave to the folder has lapsed).
 */
export const boxTroubleKinds = [
  ...(['gone', 'slow', 'full', 'refused', 'fault', 'noBox', 'noLeave'] as const),
  ...(['missing', 'enormous', 'damaged', 'foreign', 'swapped', 'replayed', 'newer', 'nameTaken'] as const),
] as const;
/** What can be wrong with a box, in one word. */
export type BoxTroubleKind = (typeof boxTroubleKinds)[number];

/** What is wrong with a box or with one file in it. */
export const boxTroubleSchema = z.object({
  kind: z.enum(boxTroubleKinds),
  /** The file it is about, where it is one file. */
  file: z.string().max(255).optional(),
  /** What the archer calls the device that the file is of, where that is known. */
  title: z.string().max(60).optional(),
});
/** What is wrong with a box or with one file in it. */
export type BoxTrouble = z.output<typeof boxTroubleSchema>;

const hostKinds: ReadonlySet<BoxTroubleKind> = new Set([
  'gone',
  'slow',
  'full',
  'refused',
  'fault',
  'noBox',
  'noLeave',
]);

/**
 * Tells whether a trouble is the host's, so that a round is made again later; a bad file of another device spoils no round.
 * @param trouble what is wrong.
 * @returns true if it is.
 */
export function isOfHost({ kind }: BoxTrouble): boolean {
  return hostKinds.has(kind);
}

/**
 * Says a trouble in plain words: what happened, and what to do.
 * @param trouble what is wrong.
 * @param words the language; the present one unless given.
 * @returns the sentences.
 */
export function troubleWords({ kind, title }: BoxTrouble, words: Words = presentWords()): string {
  return words.say(`boxTrouble.${kind}`, { title: title || words.say('boxTrouble.aDevice') });
}

/**
 * An answer that says what was wrong.
 * @param kind what is wrong.
 * @param file the file it is about, where it is one file.
 * @returns the answer.
 */
export function troubled(kind: BoxTroubleKind, file?: string): { ok: false; trouble: BoxTrouble } {
  return { ok: false, trouble: { kind, ...(file === undefined ? {} : { file }) } };
}
