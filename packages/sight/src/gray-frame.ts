/** One picture in shades of grey, a byte a pixel, row by row. */
export interface GrayFrame {
  width: number;
  height: number;
  data: Uint8Array | Uint8ClampedArray;
}

/**
 * How bright a picture is, from every seventh pixel.
 * @param frame any picture
 * @returns the mean, 0 black to 255 white
 */
export function brightnessOf({ data }: GrayFrame): number {
  let sum = 0;
  let count = 0;
  for (let at = 0; at < data.length; at += 7) {
    sum += data[at] ?? 0;
    count++;
  }
  return count === 0 ? 0 : sum / count;
}
