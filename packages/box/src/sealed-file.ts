import { formatJournal, type Journal, parseJournal } from '@larkhold/engine';
import { Decrypter, Encrypter } from 'age-encryption';
import { deflateSync, Inflate } from 'fflate';
import * as z from 'zod';
import type { BoxAnswer } from './box-adapter.ts';
import { troubled } from './box-trouble.ts';
import type { BoxKeys } from './pairing.ts';

/** What a device puts into its file. */
export interface BoxState {
  /** The device's name among the archer's devices, as its edits carry it. */
  device: string;
  /** What the archer calls it. */
  title: string;
  /** Counts on with each file that the device writes. */
  turn: number;
  /** The instant, ISO 8601 UTC. */
  madeAt: string;
  journal: Journal;
}

const stateSchema = z.looseObject({
  format: z.literal('larkhold/box-file'),
  version: z.literal(1),
  box: z.string().max(64),
  device: z.string().regex(/^[a-z0-9]{1,16}$/),
  title: z.string().max(60),
  turn: z.int().min(0),
  madeAt: z.string().max(40),
  journal: z.string(),
});

/** What seals bytes and opens them again. */
export interface Cipher {
  seal(plain: Uint8Array): Promise<Uint8Array>;
  /** @returns the bytes; `foreign` where they are sealed with another secret, `damaged` where they are not whole */
  open(sealed: Uint8Array): Promise<Uint8Array | 'foreign' | 'damaged'>;
}

/**
 * The cipher of a box: age with X25519 and ChaCha20-Poly1305.
 * @param keys of the box.
 * @returns the cipher.
 */
export function createAgeCipher({ identity, recipient }: BoxKeys): Cipher {
  return {
    seal: (plain) => {
      const encrypter = new Encrypter();
      encrypter.addRecipient(recipient);
      return encrypter.encrypt(plain);
    },
    open: async (sealed) => {
      const decrypter = new Decrypter();
      decrypter.addIdentity(identity);
      try {
        return await decrypter.decrypt(sealed);
      } catch (error) {
        // The library tells a key that does not fit from a file that is broken by its words only.
        return /no identity matched/i.test(String(error)) ? 'foreign' : 'damaged';
      }
    },
  };
}

/** Longest text that a file may hold once it is inflated, bytes. */
const LARGEST_TEXT_BYTES = 64 * 1024 * 1024;
/** A file's length tells its turn up to so many turns: hosts that mark files by second and length still tell two of them apart. */
const TURNS = 64;
const HEAD_BYTES = 4;

/**
 * Seals a device's state: deflated, then encrypted.
 * @param state what to seal.
 * @param keys of the box.
 * @param cipher the box's own unless a test says otherwise.
 * @returns the file's content.
 */
export async function sealState(
  { journal, ...state }: BoxState,
  keys: BoxKeys,
  cipher: Cipher = createAgeCipher(keys),
): Promise<Uint8Array<ArrayBuffer>> {
  const head = { format: 'larkhold/box-file', version: 1, box: keys.path, ...state };
  const text = JSON.stringify({ ...head, journal: formatJournal(journal, state.madeAt) });
  const packed = deflateSync(new TextEncoder().encode(text));
  const whole = Math.ceil((HEAD_BYTES + packed.length) / TURNS) * TURNS + (state.turn % TURNS);
  const framed = new Uint8Array(whole);
  new DataView(framed.buffer).setUint32(0, packed.length);
  framed.set(packed, HEAD_BYTES);
  return new Uint8Array(await cipher.seal(framed));
}

/**
 * Opens a sealed file and reads it whole: nothing in it is believed before it has been checked.
 * @param content the file's content.
 * @param name under which it lay.
 * @param keys of the box.
 * @param cipher the box's own unless a test says otherwise.
 * @returns the state, or what is wrong with the file.
 */
export async function openState(
  content: Uint8Array,
  name: string,
  keys: BoxKeys,
  cipher: Cipher = createAgeCipher(keys),
): Promise<BoxAnswer<BoxState>> {
  const framed = await cipher.open(content);
  if (typeof framed === 'string') return troubled(framed, name);
  const text = inflate(framed);
  if (text === undefined) return troubled('damaged', name);
  if (text === 'enormous') return troubled('enormous', name);
  return readState(text.text, name, keys);
}

function readState(text: string, name: string, keys: BoxKeys): BoxAnswer<BoxState> {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return troubled('damaged', name);
  }
  if (Number(Object(found).version) > 1) return troubled('newer', name);
  const read = stateSchema.safeParse(found);
  if (!read.success) return troubled('damaged', name);
  const { box, device, title, turn, madeAt } = read.data;
  if (box !== keys.path) return troubled('foreign', name);
  if (name !== `${device}.age` && name !== `${device}.prev.age`) return troubled('swapped', name);
  const journal = parseJournal(read.data.journal);
  if (!journal.ok) return troubled(journal.problems[0]?.pointer === '/version' ? 'newer' : 'damaged', name);
  return { ok: true, value: { device, title, turn, madeAt, journal: journal.journal } };
}

/** Inflates, but never more than a journal can have: a small file can be made to hold gigabytes. */
function inflate(framed: Uint8Array): { text: string } | 'enormous' | undefined {
  if (framed.length < HEAD_BYTES) return undefined;
  const length = new DataView(framed.buffer, framed.byteOffset, framed.byteLength).getUint32(0);
  if (length > framed.length - HEAD_BYTES) return undefined;
  const pieces: Uint8Array[] = [];
  let total = 0;
  const inflater = new Inflate((piece) => {
    total += piece.length;
    if (total <= LARGEST_TEXT_BYTES) pieces.push(piece);
  });
  try {
    for (let at = 0; at < length && total <= LARGEST_TEXT_BYTES; at += 65_536) {
      const end = Math.min(at + 65_536, length);
      inflater.push(framed.subarray(HEAD_BYTES + at, HEAD_BYTES + end), end === length);
    }
    if (total > LARGEST_TEXT_BYTES) return 'enormous';
    const whole = new Uint8Array(total);
    let at = 0;
    for (const piece of pieces) {
      whole.set(piece, at);
      at += piece.length;
    }
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(whole) };
  } catch {
    return undefined;
  }
}
