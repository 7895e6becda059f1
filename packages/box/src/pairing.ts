import { base32nopad, base64urlnopad, bech32 } from '@scure/base';
import { identityToRecipient } from 'age-encryption';

/** What two devices need to meet: a secret that never leaves them, and where the box is. */
export interface Pairing {
  /** 32 bytes, base64url. Path and key follow from it. */
  secret: string;
  /** Where boxes are hosted: an address, absolute or on the app's own origin; absent for a folder that the archer chooses. */
  address?: string;
}

/** What follows from a pairing's secret. */
export interface BoxKeys {
  /** The box's own folder on its host: 160 bits, so that nobody guesses it. */
  path: string;
  /** What opens the files, as age writes it. */
  identity: string;
  /** What seals them. */
  recipient: string;
}

const SECRET_BYTES = 32;

/**
 * Makes a new pairing with a fresh secret of the platform's own chance.
 * @param address where boxes are hosted; undefined for a chosen folder.
 * @returns the pairing.
 */
export function createPairing(address?: string): Pairing {
  const secret = base64urlnopad.encode(crypto.getRandomValues(new Uint8Array(SECRET_BYTES)));
  return { secret, ...(address === undefined ? {} : { address }) };
}

/**
 * Derives path and key from a secret.
 * @param pairing the pairing.
 * @returns the keys; the same for the same secret.
 * @source HKDF with SHA-256, RFC 5869, by the Web Cryptography API; identities as the age format names them (X25519).
 */
export async function deriveBoxKeys({ secret }: Pairing): Promise<BoxKeys> {
  const material = await crypto.subtle.importKey('raw', new Uint8Array(base64urlnopad.decode(secret)), 'HKDF', false, [
    'deriveBits',
  ]);
  const derive = async (info: string, bytes: number): Promise<Uint8Array> => {
    const algorithm = { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info: new TextEncoder().encode(info) };
    return new Uint8Array(await crypto.subtle.deriveBits(algorithm, material, bytes * 8));
  };
  const path = base32nopad.encode(await derive('larkhold box path 1', 20)).toLowerCase();
  const identity = bech32
    .encodeFromBytes('AGE-SECRET-KEY-', await derive('larkhold box key 1', SECRET_BYTES))
    .toUpperCase();
  return { path, identity, recipient: await identityToRecipient(identity) };
}

/**
 * Writes a pairing as the end of a link, to follow a `#`: no host ever sees it.
 * @param pairing the pairing.
 * @returns the text: the secret, and the address where there is one.
 */
export function formatPairing({ secret, address }: Pairing): string {
  return address === undefined ? secret : `${secret}.${base64urlnopad.encode(new TextEncoder().encode(address))}`;
}

/**
 * Reads the end of a pairing link.
 * @param text as `formatPairing` gave it.
 * @returns the pairing; not ok where the text is cut off or changed.
 */
export function parsePairing(text: string): { ok: true; pairing: Pairing } | { ok: false } {
  const refused = { ok: false as const };
  const [secret = '', address, ...more] = text.trim().split('.');
  if (more.length > 0 || text.length > 600) return refused;
  try {
    if (base64urlnopad.decode(secret).length !== SECRET_BYTES) return refused;
    if (address === undefined) return { ok: true, pairing: { secret } };
    const where = new TextDecoder('utf-8', { fatal: true }).decode(base64urlnopad.decode(address));
    return isAddress(where) ? { ok: true, pairing: { secret, address: where } } : refused;
  } catch {
    return refused;
  }
}

/**
 * Where a pairing's box is.
 * @param address where boxes are hosted, absolute or relative.
 * @param path the box's own folder, of `deriveBoxKeys`.
 * @param origin the app's own address, for a relative one.
 * @returns the address with a slash at the end.
 */
export function boxAddress(address: string, path: string, origin: string): string {
  return new URL(`${address.replace(/\/*$/, '/')}${path}/`, origin).href;
}

function isAddress(text: string): boolean {
  try {
    const url = new URL(text, 'https://larkhold.invalid');
    return (
      (url.protocol === 'https:' || url.protocol === 'http:') &&
      url.username === '' &&
      url.search === '' &&
      url.hash === ''
    );
  } catch {
    return false;
  }
}
