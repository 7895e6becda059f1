/** How words are drawn, as far as it changes their width. */
export interface WordLook {
  /** CSS font family, as it is computed. */
  family: string;
  weight: 400 | 700;
}

/** Letters of the display are this much closer, as a share of the font size: the style sheet's letter-spacing. */
export const CLOSER_EM = 0.02;
/** Measured at this size, CSS pixels. */
const MEASURED_PX = 100;
/** Width of a sign where nothing can be measured: that of a wide plain typeface. */
const WIDE_SIGN_EM = 0.68;
/** Hinting and digits of equal width take a little more than is measured. */
const SPARE_RATIO = 1.01;

const known = new Map<string, number>();
let canvas: CanvasRenderingContext2D | null | undefined;

/**
 * How wide words are in the display's own font, so that a line can be as large as its place allows.
 * @param words one line
 * @param look its font
 * @returns width in font sizes: 2 means twice as wide as the font is large; at least 1
 */
export function emWidth(words: string, look: WordLook): number {
  const key = `${look.weight} ${look.family} ${words}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  if (known.size > 500) known.clear();
  const width = Math.max(1, (measure(words, look) - CLOSER_EM * [...words].length) * SPARE_RATIO);
  known.set(key, width);
  return width;
}

/**
 * How wide words are when they are put on two lines as even as they can be.
 * @param words with spaces between what may be parted
 * @param look their font
 * @returns the wider line in font sizes; as one line where nothing can be parted
 */
export function twoLineEmWidth(words: string, look: WordLook): number {
  const parts = words.split(' ');
  const ways = parts.slice(1).map((_, at) => {
    const lines = [parts.slice(0, at + 1), parts.slice(at + 1)].map((line) => line.join(' '));
    return Math.max(...lines.map((line) => emWidth(line, look)));
  });
  return Math.min(emWidth(words, look), ...ways);
}

function measure(words: string, { family, weight }: WordLook): number {
  canvas ??= document.createElement('canvas').getContext('2d');
  if (!canvas) return WIDE_SIGN_EM * words.length;
  canvas.font = `${weight} ${MEASURED_PX}px ${family}`;
  return canvas.measureText(words).width / MEASURED_PX;
}
