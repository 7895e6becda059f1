import { Decrypter, Encrypter } from 'age-encryption';
import { deflateSync, Inflate } from 'fflate';

/** What seals bytes and opens them again. */
export interface Cipher {
  seal(plain: Uint8Array): Promise<Uint8Array>;
  /** @returns the bytes; `foreign` where they are sealed with another secret, `damaged` where they are not whole */
  open(sealed: Uint8Array): Promise<Uint8Array | 'foreign' | 'damaged'>;
}

/**
 * The cipher of a box: age with X25519 and ChaCha20-Poly1305.
 * @param keys who may read what is sealed, and whose key opens; one of them is enough for one way.
 * @returns the cipher.
 * @source the age file format, version 1 (C2SP), by the library `age-encryption`.
 */
export function createAgeCipher({ identity, recipient }: { identity?: string; recipient?: string }): Cipher {
  return {
    seal: (plain) => {
      const encrypter = new Encrypter();
      if (recipient !== undefined) encrypter.addRecipient(recipient);
      return encrypter.encrypt(plain);
    },
    open: async (sealed) => {
      const decrypter = new Decrypter();
      if (identity !== undefined) decrypter.addIdentity(identity);
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
const HEAD_BYTES = 4;

/**
 * Seals a text: deflated, then encrypted.
 * @param text any text.
 * @param cipher of whoever will read it.
 * @returns the file's content.
 */
export async function sealText(text: string, cipher: Cipher): Promise<Uint8Array<ArrayBuffer>> {
  const packed = deflateSync(new TextEncoder().encode(text));
  const framed = new Uint8Array(HEAD_BYTES + packed.length);
  new DataView(framed.buffer).setUint32(0, packed.length);
  framed.set(packed, HEAD_BYTES);
  return new Uint8Array(await cipher.seal(framed));
}

/**
 * Opens a sealed text.
 * @param content the file's content.
 * @param cipher of whoever reads it.
 * @returns the text, or what is wrong with the file.
 */
export async function openText(
  content: Uint8Array,
  cipher: Cipher,
): Promise<{ text: string } | 'foreign' | 'damaged' | 'enormous'> {
  const framed = await cipher.open(content);
  return typeof framed === 'string' ? framed : inflate(framed);
}

/** Inflates, but never more than a journal can have: a small file can be made to hold gigabytes. */
function inflate(framed: Uint8Array): { text: string } | 'enormous' | 'damaged' {
  if (framed.length < HEAD_BYTES) return 'damaged';
  const length = new DataView(framed.buffer, framed.byteOffset, framed.byteLength).getUint32(0);
  if (length > framed.length - HEAD_BYTES) return 'damaged';
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
    return 'damaged';
  }
}
