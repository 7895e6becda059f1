import { encode } from 'uqr';

/** The longest text that is offered as a QR code, bytes: version 25 with low correction, about what a phone reads from a screen. Own limit. */
export const longestQrBytes = 1273;

/**
 * A text as a QR code, drawn as one path of unit squares.
 * @param text a link
 * @returns width and height in squares with the quiet zone, and the path's data; undefined when the text is too long to be read well
 * @source ISO/IEC 18004: version 25 at level L holds 1273 bytes; the quiet zone is four squares
 */
export function qrOf(text: string): { size: number; path: string } | undefined {
  if (new TextEncoder().encode(text).length > longestQrBytes) return undefined;
  const { size, data } = encode(text, { ecc: 'L', border: 4 });
  const path = data.flatMap((row, y) => row.map((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : ''))).join('');
  return { size, path };
}
