import { formatProgram, largestProgramBytes, type Program, parseProgram } from '@larkhold/engine';
import { problemWords, say } from '@larkhold/words';
import { deflateSync, Inflate } from 'fflate';

/** A program out of a link, or what is wrong with the link: a sentence or two for the archer. */
export type ReadLink = { ok: true; program: Program } | { ok: false; message: string };

/** The longest payload that is looked at, characters: a program with every text and every list as long as may be, and no pattern in them, needs fewer. */
export const longestPayload = 200_000;
/** Input is inflated in pieces of this many bytes; deflate grows a piece at most 1032 times, so a bomb is met within another 1.1 MB. */
export const pieceBytes = 1024;

/**
 * Writes a program as the payload of a link: compact JSON, raw deflate, base64url.
 * @param program a valid program
 * @returns characters that need no escape in an address
 * @source RFC 1951 (deflate), RFC 4648 section 5 (base64url)
 */
export function formatPayload(program: Program): string {
  const json = JSON.stringify(JSON.parse(formatProgram(program)));
  return toBase64Url(deflateSync(new TextEncoder().encode(json), { level: 9, mem: 12 }));
}

/**
 * A link that opens a program.
 * @param address of the app; its own fragment is left out
 * @param program a valid program
 * @returns the whole link; nothing after the # is ever sent to a server
 */
export function formatLink(address: string, program: Program): string {
  return `${address.replace(/#.*$/s, '')}#/open/${formatPayload(program)}`;
}

/**
 * Finds a payload in what was pasted.
 * @param text any text
 * @returns the payload of the link, if the text is one
 */
export function payloadIn(text: string): string | undefined {
  return /^\S{0,2000}#\/open\/([^\s/]*)$/.exec(text.trim())?.[1];
}

/**
 * Reads the payload of a link. Nothing in it is trusted: length, letters, size and program are checked in turn.
 * @param payload what follows `#/open/`
 * @returns the program, or what is wrong
 */
export function parsePayload(payload: string): ReadLink {
  if (payload === '') return wrong(say('share.empty'));
  if (payload.length > longestPayload) return wrong(say('share.long'));
  const bytes = fromBase64Url(payload);
  if (!bytes) return wrong(say('share.strange'));
  const json = inflate(bytes);
  if (json === 'large') return wrong(say('share.large'));
  if (json === 'broken') return wrong(say('share.broken'));
  const text = decode(json);
  if (text === undefined) return wrong(say('share.notText'));
  const parsed = parseProgram(text);
  if (parsed.ok) return parsed;
  const [first] = parsed.problems;
  const problem = first ? problemWords(first) : '';
  return wrong(
    first?.pointer
      ? say('share.invalidAt', { problem, pointer: first.pointer.slice(0, 80) })
      : say('share.invalid', { problem }),
  );
}

function wrong(message: string): ReadLink {
  return { ok: false, message };
}

function inflate(bytes: Uint8Array): Uint8Array | 'large' | 'broken' {
  const pieces: Uint8Array[] = [];
  let size = 0;
  const stream = new Inflate((piece) => {
    size += piece.length;
    pieces.push(piece);
  });
  try {
    for (let at = 0; at < bytes.length; at += pieceBytes) {
      stream.push(bytes.subarray(at, at + pieceBytes), at + pieceBytes >= bytes.length);
      if (size > largestProgramBytes) return 'large';
    }
  } catch {
    return 'broken';
  }
  return size > 0 ? joined(pieces, size) : 'broken';
}

function joined(pieces: readonly Uint8Array[], size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function fromBase64Url(text: string): Uint8Array | undefined {
  if (!/^[\w-]+$/.test(text) || text.length % 4 === 1) return undefined;
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (unit) => unit.charCodeAt(0));
}
