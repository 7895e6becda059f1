import { addToInstant } from '../units/instant.ts';

/**
 * Puts lines together as a calendar file wants them.
 * @param lines content lines, not folded
 * @returns the text: lines end in CRLF and are folded at 75 octets
 * @source RFC 5545, section 3.1
 */
export function formatCalendarLines(lines: readonly string[]): string {
  return lines.map((line) => `${foldLine(line)}\r\n`).join('');
}

/**
 * A day as a calendar file writes it.
 * @param day ISO 8601
 * @returns '20261125'
 */
export function formatCalendarDay(day: string): string {
  return day.replaceAll('-', '');
}

const instantWithOffset = /^(\d{4}-\d\d-\d\dT[\d:.]+)(?:Z|([+-])(\d\d):?(\d\d))$/;

/**
 * An instant that a file gave.
 * @param instant ISO 8601 with offset, or anything else
 * @returns the instant as RFC 5545 writes UTC, 'form 2'; undefined if it can't be read
 */
export function readUtc(instant: string): string | undefined {
  try {
    return formatUtc(instant);
  } catch {
    return undefined;
  }
}

/**
 * An instant as RFC 5545 writes UTC, 'form 2'.
 * @param instant ISO 8601 with offset
 * @returns '20261125T060000Z'
 * @throws RangeError if it is not an instant
 */
export function formatUtc(instant: string): string {
  const match = instantWithOffset.exec(instant);
  if (match === null) throw new RangeError(`instant: expected ISO 8601 with an offset, got '${instant}'`);
  const [, local, sign, hours = '0', minutes = '0'] = match;
  const offsetMs = (Number(hours) * 60 + Number(minutes)) * (sign === '-' ? -60_000 : 60_000);
  const utc = addToInstant(`${local}Z`, -offsetMs);
  return `${utc.slice(0, 19).replaceAll(/[-:]/g, '')}Z`;
}

/**
 * Any text as a value of a calendar file.
 * @param text anything
 * @returns it with backslash, semicolon, comma and line break escaped; other control characters are not allowed
 * @source RFC 5545, 3.3.11
 */
export function escapeText(text: string): string {
  return text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[\p{Surrogate}]/gu, '\uFFFD')
    .replaceAll(/[\\;,]/g, (character) => `\\${character}`)
    .replaceAll('\n', '\\n')
    .replaceAll(/\p{Cc}/gu, '');
}

/** Breaks a line so that no part is over 75 octets of UTF-8, never inside a character. */
function foldLine(line: string): string {
  let folded = '';
  let octets = 0;
  for (const character of line) {
    const point = character.codePointAt(0) ?? 0;
    const size = point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
    if (octets + size > 75) {
      folded += '\r\n ';
      octets = 1;
    }
    folded += character;
    octets += size;
  }
  return folded;
}
