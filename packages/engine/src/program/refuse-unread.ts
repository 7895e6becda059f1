import type { Fault, PlacedThing } from './fault.ts';
import { type Problem, problemAt } from './problem.ts';

/** Deeper than any file of ours nests. */
const deepest = 40;

/** How much of a text is read. */
export interface ReadLimits {
  /** What the file is. */
  thing: PlacedThing;
  /** More commas than such a file has. */
  mostCommas: number;
}

/** Longer between its quotes than any text of a file: one of 4000 characters, each written as a six-character escape. */
const longestText = 24_000;

/**
 * What makes a text not worth parsing, found in one pass: so that no file, however hostile, takes long or exhausts the stack.
 * @param text the file's text
 * @param limits what the file is, and how much of it is read
 * @returns why it is refused unread, with the place, or nothing
 */
export function refuseUnread(text: string, { thing, mostCommas }: ReadLimits): Problem | undefined {
  let depth = 0;
  let commas = 0;
  let inString = false;
  let opened = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (inString) {
      // RFC 8259 section 7: control characters in a text must be escaped; the JSON parser used here lets them pass
      if (code < 0x20) return refuse(text, at, bareControl(code));
      if (code === backslash) at++;
      else if (code === quote) inString = false;
      if (at - opened > longestText) {
        return refuse(text, opened, { rule: 'textTooLong', most: longestText, thing });
      }
    } else if (code === quote) {
      inString = true;
      opened = at;
    } else if (code === openBrace || code === openBracket) {
      if (++depth > deepest) return refuse(text, at, { rule: 'tooDeep', most: deepest, thing });
    } else if (code === closeBrace || code === closeBracket) depth--;
    else if (code === comma && ++commas > mostCommas) {
      return refuse(text, at, { rule: 'tooManyValues', most: mostCommas, thing });
    }
  }
  return undefined;
}

const [quote, backslash, comma] = [0x22, 0x5c, 0x2c];
const [openBrace, closeBrace, openBracket, closeBracket] = [0x7b, 0x7d, 0x5b, 0x5d];

function bareControl(code: number): Fault {
  if (code === 0x0a || code === 0x0d) return { rule: 'textBreaks' };
  return { rule: code === 0x09 ? 'bareTab' : 'bareControl', character: codePointName(code) };
}

/**
 * A character's name as Unicode writes it.
 * @param code its code point
 * @returns such as 'U+0009'
 */
export function codePointName(code: number): string {
  return `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
}

function refuse(text: string, offset: number, fault: Fault): Problem {
  const lines = text.slice(0, offset).split(/\r\n?|\n/);
  return problemAt('', { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 }, { fault });
}
