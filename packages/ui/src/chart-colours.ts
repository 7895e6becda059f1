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
  // A canvas would take the system's colours, which forced colours consist of, as those of a light page; an element knows which they are here.
  const probe = document.body.appendChild(document.createElement('span'));
  probe.style.forcedColorAdjust = 'none';
  const read = (name: string): string => {
    probe.style.color = `var(${name})`;
    return getComputedStyle(probe).color;
  };
  const { fontFamily } = getComputedStyle(probe);
  kept = { ink: read('--ink'), dim: read('--dim'), rule: read('--rule'), fontFamily };
  probe.remove();
  requestAnimationFrame(() => {
    kept = undefined;
  });
  return kept;
}
