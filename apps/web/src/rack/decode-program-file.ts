import { type Fault, faultMessage, largestProgramBytes, type Problem } from '@larkhold/engine';

/** The text of a file, or why its bytes are no text. */
export type DecodedFile = { ok: true; text: string } | { ok: false; problem: Problem };

/** A byte order mark is not counted among a program's own bytes. */
const markBytes = 3;

/**
 * Reads a file's bytes as the text of a program. A file that is too large is not read at all.
 * @param file any file
 * @returns its text, a byte order mark included; or the problem with its place
 */
export async function decodeProgramFile(file: Blob): Promise<DecodedFile> {
  if (file.size > largestProgramBytes + markBytes) {
    return wrong({ rule: 'fileTooLarge', thing: 'program' });
  }
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return wrong({ rule: 'unreadable' });
  }
  const other = otherEncoding(bytes);
  if (other) return wrong({ rule: 'encoding', encoding: other });
  try {
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return wrong({ rule: 'notUtf8' }, firstBrokenLine(bytes));
  }
}

function wrong(fault: Fault, line = 1): DecodedFile {
  return { ok: false, problem: { pointer: '', line, column: 1, fault, message: faultMessage({ fault }) } };
}

/** Told by the mark at the start, or by a brace or a space that takes two or four bytes. */
function otherEncoding(bytes: Uint8Array): string | undefined {
  const [a, b, c, d] = bytes;
  if ((a === 0xff && b === 0xfe && c === 0 && d === 0) || (a === 0 && b === 0 && c === 0xfe && d === 0xff))
    return 'UTF-32';
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff)) return 'UTF-16';
  const isLetter = (byte: number | undefined) => byte !== undefined && byte > 0;
  if (isLetter(a) && b === 0 && isLetter(c) && d === 0) return 'UTF-16';
  if (a === 0 && isLetter(b) && c === 0 && isLetter(d)) return 'UTF-16';
  return undefined;
}

/** A line break is one byte and part of no other character, so that each line can be tried alone. */
function firstBrokenLine(bytes: Uint8Array): number {
  let start = 0;
  let line = 1;
  const decoder = new TextDecoder('utf-8', { fatal: true });
  while (start < bytes.length) {
    const end = bytes.indexOf(0x0a, start);
    const piece = bytes.subarray(start, end < 0 ? bytes.length : end);
    try {
      decoder.decode(piece);
    } catch {
      return line;
    }
    if (end < 0) break;
    start = end + 1;
    line += 1;
  }
  return line;
}
