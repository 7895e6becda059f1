import { limbPath } from '@larkhold/ui/ribbon';
import { say } from '@larkhold/words';
import { html, svg } from 'lit';

const EFFORTS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;
const STEP = 12;
const BASE = 46;

/**
 * Effort as one strip of eleven strokes, from a dot to full height, filled as far as it was.
 * @param effort 0 to 10, if it was said
 * @param choose told which was pressed
 * @returns a template for a root that has `afterStyles`
 */
export function effortStrip(effort: number | undefined, choose: (effort: number) => void) {
  const tall = (one: number) => 3 + one * 4;
  return html`<div class="strip">
      <svg viewBox="0 0 ${EFFORTS.length * STEP} ${BASE + 2}" preserveAspectRatio="none" aria-hidden="true">
        ${EFFORTS.map(
          (one) =>
            svg`<path class=${effort !== undefined && one <= effort ? 'felt' : ''} d=${limbPath(STEP * (one + 0.5), BASE, tall(one))}></path>`,
        )}
      </svg>
      ${EFFORTS.map(
        (one) => html`<label class=${one === effort ? 'chosen' : ''}>
          <input
            type="radio"
            name="effort"
            aria-label=${`${one} ${say(`effort.${one}`)}`}
            .checked=${effort === one}
            @change=${() => choose(one)}
          /><b aria-hidden="true">${one}</b>
        </label>`,
      )}
    </div>
    <p class="felt-words" aria-hidden="true">${effort === undefined ? '' : say(`effort.${effort as (typeof EFFORTS)[number]}`)}</p>`;
}
