/**
 * How much narrower than they are letters may be drawn, as a share of their width. 0.7 to 0.9 of the height is a good width and 0.5 the least: the
 * capitals of common plain bold typefaces are 0.8 to 0.95 wide, and 0.77 of that is 0.62 to 0.73: good or next to good, never near
 * the least.
 * @source from memory: ISO 9241-3:1992, character width-to-height ratio; the widths are own measurements
 */
export const NARROWEST_LETTERS = 0.77;

/**
 * How much a line has to be narrowed to fit its place at its size.
 * @param place width of the place, CSS pixels
 * @param line `widthEm`: how wide it is, font sizes; `fontPx`: its font size, CSS pixels
 * @returns share of its width, from `NARROWEST_LETTERS` to 1
 */
export function narrowedRatio(place: number, line: { widthEm: number; fontPx: number }): number {
  const ratio = place / (line.widthEm * line.fontPx);
  return Number.isFinite(ratio) ? Math.min(1, Math.max(NARROWEST_LETTERS, ratio)) : 1;
}
