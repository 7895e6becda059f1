import { base32nopad } from '@scure/base';

/** What a file's name in a box says. */
export interface BoxFileName {
  /** Who wrote it: a device, or one side of a hand-over. */
  owner: string;
  /** Counts on with each file of the owner. */
  turn: number;
  /** The beginning of the content's SHA-256, in base 32. */
  digest: string;
}

const DIGEST_BYTES = 16;
const pattern = /^([a-z0-9]{1,16})-(0|[1-9][0-9]{0,8})-([a-z2-7]{26})\.age$/;

/**
 * Names a file by its content: a name is written once, and never means anything else.
 * @param owner who writes it, up to 16 letters and digits.
 * @param turn counts on with each file of the owner.
 * @param content the whole file.
 * @returns the name.
 */
export async function boxFileName(owner: string, turn: number, content: Uint8Array<ArrayBuffer>): Promise<string> {
  return `${owner}-${turn}-${await digestOf(content)}.age`;
}

/**
 * Reads a name.
 * @param name as a list gives it.
 * @returns what it says; undefined where it is no name of a box's file: a path, a half-written file, another file of the folder.
 */
export function readBoxFileName(name: string): BoxFileName | undefined {
  const [, owner, turn, digest] = pattern.exec(name) ?? [];
  return owner === undefined || digest === undefined ? undefined : { owner, turn: Number(turn), digest };
}

/**
 * Tells whether a file is the one that its name says.
 * @param name its name.
 * @param content what lies under it.
 * @returns false where it was cut off, changed, or put under a name that is not its own.
 */
export async function isWhole(name: string, content: Uint8Array): Promise<boolean> {
  return readBoxFileName(name)?.digest === (await digestOf(new Uint8Array(content)));
}

async function digestOf(content: Uint8Array<ArrayBuffer>): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
  return base32nopad.encode(hash.subarray(0, DIGEST_BYTES)).toLowerCase();
}
