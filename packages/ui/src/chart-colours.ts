/** What a chart is drawn with. */
export interface ChartColours {
  /** Of what was measured. */
  ink: string;
  /** Of what explains it. */
  dim: string;
  rule: string;
  fontFamily: string;
}

let kept: ChartColours | undefined;

/**
 * Reads the page's colours for a canvas, once a frame: every reading after a chart was put in lets the browser work out all styles again.
 * @returns the colours as the theme has them now
 */
export function chartColours(): ChartColours {
  if (kept) return kept;
  const style = getComputedStyle(document.body);
  const read = (name: string): string => style.getPropertyValue(name).trim();
  kept = { ink: read('--ink'), dim: read('--dim'), rule: read('--rule'), fontFamily: style.fontFamily };
  requestAnimationFrame(() => {
    kept = undefined;
  });
  return kept;
}
