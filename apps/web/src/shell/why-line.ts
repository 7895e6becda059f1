import type { Prescription } from '@larkhold/engine';
import { type NumberPiece, type Piece, whySentences } from '@larkhold/words';
import { css, html, nothing } from 'lit';

/** How numbers that can be asked about look: as the text around them, with a dotted line below. */
export const whyStyles = css`
  button.asks {
    display: inline;
    min-width: 0;
    min-height: 0;
    padding: 0;
    border: 0;
    border-radius: 4px;
    font: inherit;
    letter-spacing: inherit;
    line-height: inherit;
    text-align: inherit;
    text-decoration: underline dotted var(--dim);
    text-decoration-thickness: max(1.5px, 0.035em);
    text-underline-offset: 0.18em;
  }
  button.asks:hover,
  button.asks[aria-expanded='true'] {
    text-decoration-style: solid;
    text-decoration-color: var(--accent);
  }
  .answer {
    margin-top: 0.75rem;
    padding: 0.7rem 0.9rem;
    border-radius: var(--radius);
    background: var(--raised);
    max-width: 38rem;
  }
  .answer:empty {
    display: none;
  }
  .answer p + p {
    margin-top: 0.35rem;
  }
`;

/** What a line of numbers needs. */
export interface WhyLine {
  prescription: Prescription;
  pieces: readonly Piece[];
  /** The number whose reasons are shown, if any. */
  asked: NumberPiece | undefined;
  /** Told which number was pressed; undefined when its reasons are to be put away. */
  ask(piece: NumberPiece | undefined): void;
  /** Class of the line's paragraph. */
  look: string;
}

const isSame = (one: NumberPiece, other: NumberPiece | undefined): boolean =>
  other !== undefined && one.block === other.block && one.number === other.number;

/**
 * A line of text in which every number is a button that answers "why?"; the answer appears under the line.
 * @param line pieces, and which was asked about
 * @returns a template for a root that has `whyStyles`
 */
export function whyLine({ prescription, pieces, asked, ask, look }: WhyLine) {
  const here = pieces.filter((piece) => typeof piece !== 'string').find((piece) => isSame(piece, asked));
  const button = (piece: NumberPiece) => {
    const isOpen = isSame(piece, asked);
    return html`<button class="asks" aria-label=${piece.why} aria-expanded=${isOpen ? 'true' : 'false'} @click=${() => ask(isOpen ? undefined : piece)}>${piece.text}</button>`;
  };
  return html`<p class=${look}>${pieces.map((piece) => (typeof piece === 'string' ? piece : button(piece)))}</p>
    <div class="answer" role="status">${
      here ? whySentences(prescription, here).map((sentence) => html`<p>${sentence}</p>`) : nothing
    }</div>`;
}
