/** What a chart is drawn with. */
export interface ChartColours {
  /** Of what was measured. */
  ink: string;
  /** Of what explains it. */
  dim: string;
  rule: string;
  fontFamily: string;
}

let kept: { colours: ChartColours; theme: string } | undefined;

/**
 * Reads the page's colours for a canvas, once a frame: every reading after a chart was put in lets the browser work out all styles again.
 * @returns the colours as the theme has them now
 */
export function chartColours(): ChartColours {
  const theme = themeNow();
  if (kept?.theme === theme) return kept.colours;
  // A canvas would take the system's colours, which forced colours consist of, as those of a light page; an element knows which they are here.
  const probe = document.body.appendChild(document.createElement('span'));
  probe.style.forcedColorAdjust = 'none';
  const read = (name: string): string => {
    probe.style.color = `var(${name})`;
    return getComputedStyle(probe).color;
  };
  const { fontFamily } = getComputedStyle(probe);
  const colours = { ink: read('--ink'), dim: read('--dim'), rule: read('--rule'), fontFamily };
  kept = { colours, theme };
  probe.remove();
  requestAnimationFrame(() => {
    kept = undefined;
  });
  return colours;
}

/** A theme may change before the next frame: a page that is hidden has none. Asked of the page without working out its styles. */
function themeNow(): string {
  const { matches: isLight } = matchMedia('(prefers-color-scheme: light)');
  const { matches: isForced } = matchMedia('(forced-colors: active)');
  return `${isLight} ${isForced} ${document.documentElement.dataset.theme}`;
}
