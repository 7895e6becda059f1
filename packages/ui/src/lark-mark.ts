import { html, svg, type TemplateResult } from 'lit';

/** The strokes that the lark sits on, as in a ribbon: each a little taller. */
const STROKES = [
  [32, 12],
  [48, 18],
  [64, 23],
  [81, 29],
] as const;
const GROUND_Y = 86;

/**
 * Our own drawing: a strung bow, holds that grow, and a lark on the last of them. Ink and accent come from the page around it.
 * @returns a picture that says nothing to a screen reader
 */
export function larkMark(): TemplateResult {
  return html`<svg class="lark-mark" viewBox="0 0 128 96" aria-hidden="true" fill="none" stroke-linecap="round" stroke-linejoin="round">
    ${svg`<path stroke="currentColor" stroke-width="5" d="M18 10 C9 24 6 36 6 48 C6 60 9 72 18 86"></path>
    <path stroke="currentColor" stroke-width="2" d="M18 10 L18 86"></path>
    ${STROKES.map(
      ([x, tall]) =>
        svg`<path stroke="var(--accent, currentColor)" stroke-width="6" d=${`M${x} ${GROUND_Y - 3} L${x} ${GROUND_Y - tall + 3}`}></path>`,
    )}
    <path fill="currentColor" fill-rule="evenodd" d="M46 52 L64 42 C66 30 76 21 88 20 C90 15 95 12 100 14 C103 15 105 17 106 19 L115 22 L106 25 C106 38 97 48 82 49 C75 49.5 69 49 64 47.5 Z M95 14 L93 6.5 L100 13 Z M99.4 19 a1.6 1.6 0 1 0 3.2 0 a1.6 1.6 0 1 0 -3.2 0 Z"></path>
    <path stroke="currentColor" stroke-width="2" d="M79 49 L78.5 57 M84 49 L84 57"></path>`}
  </svg>`;
}
