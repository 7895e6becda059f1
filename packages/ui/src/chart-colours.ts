/** What a chart is drawn with. */
export interface ChartColours {
  ink: string;
  rule: string;
  accent: string;
  fontFamily: string;
}

let kept: ChartColours | undefined;

/**
 * Reads the page's colours for a canvas, once a frame: every reading after a chart was put in lets the browser work out all styles anew.
 * @returns the colours as the theme has them now
 */
export function chartColours(): ChartColours {
  if (kept) return kept;
  const style = getComputedStyle(document.body);
  const read = (name: string): string => style.getPropertyValue(name).trim();
  kept = { ink: read('--dim'), rule: read('--rule'), accent: read('--accent'), fontFamily: style.fontFamily };
  requestAnimationFrame(() => {
    kept = undefined;
  });
  return kept;
}
