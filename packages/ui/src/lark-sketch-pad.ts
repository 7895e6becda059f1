import { say } from '@larkhold/words';
import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { controlStyles, pageStyles } from './page-styles.ts';
import { beginStroke, drawOn, type Strokes, strokePath } from './stroke-path.ts';

const SIZE = 500;

/**
 * A square to draw in with finger, pen or mouse; or a drawing to look at.
 *
 * @prop strokes the drawing
 * @prop isFixed only shows it
 * @prop words what is drawn, for those who do not see it
 * @event sketch-change a stroke was drawn or taken back; detail is the drawing
 */
@customElement('lark-sketch-pad')
export class LarkSketchPad extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    css`
      svg {
        display: block;
        width: 100%;
        max-width: 22rem;
        aspect-ratio: 1;
        border: 1.5px solid var(--faint);
        border-radius: var(--radius);
        background: var(--raised);
      }
      svg.open {
        touch-action: none;
        cursor: crosshair;
      }
      path {
        fill: var(--ink);
      }
      .row {
        margin-top: 0.5rem;
      }
    `,
  ];

  @property({ attribute: false }) strokes: Strokes = [];
  @property({ type: Boolean }) isFixed = false;
  @property() words = say('field.sketch');
  /** The drawing while a pointer draws on it; a redraw of the page that gives `strokes` again must not take the line away. */
  @state() private drawn: Strokes | undefined;
  #pointer: number | undefined;

  override render() {
    const { isFixed } = this;
    const strokes = this.drawn ?? this.strokes;
    const count = say('field.strokes', { n: strokes.length });
    return html`${svg`<svg
        class=${isFixed ? '' : 'open'}
        viewBox="0 0 ${SIZE} ${SIZE}"
        role="img"
        aria-label="${this.words}, ${count}"
        @pointerdown=${this.#onDown}
        @pointermove=${this.#onMove}
        @pointerup=${this.#onUp}
        @pointercancel=${this.#onUp}
      >${strokes.map((stroke) => svg`<path d=${strokePath(stroke, SIZE)}></path>`)}</svg>`}
      ${
        isFixed
          ? nothing
          : html`<div class="row">
              <button type="button" ?disabled=${strokes.length === 0} @click=${() => this.#change(strokes.slice(0, -1))}>
                ${say('field.takeBack')}
              </button>
              <button type="button" class="quiet" ?disabled=${strokes.length === 0} @click=${() => this.#change([])}>
                ${say('field.clear')}
              </button>
            </div>`
      }`;
  }

  readonly #onDown = (event: PointerEvent): void => {
    // One pointer draws; the palm that rests beside a pen does not.
    if (this.isFixed || this.#pointer !== undefined || event.button !== 0) return;
    this.#pointer = event.pointerId;
    if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId);
    this.#draw(event, beginStroke);
  };

  readonly #onMove = (event: PointerEvent): void => {
    if (event.pointerId !== this.#pointer) return;
    // A busy page gets several moves at once; all of them belong to the line.
    const moves = event.getCoalescedEvents?.() ?? [];
    for (const move of moves.length > 0 ? moves : [event]) this.#draw(move, drawOn, event.currentTarget);
  };

  readonly #onUp = (event: PointerEvent): void => {
    if (event.pointerId !== this.#pointer) return;
    this.#pointer = undefined;
    this.#change(this.drawn ?? this.strokes);
  };

  #draw(event: PointerEvent, how: typeof drawOn, target: EventTarget | null = event.currentTarget): void {
    if (!(target instanceof Element)) return;
    const { left, top, width, height } = target.getBoundingClientRect();
    this.drawn = how(this.drawn ?? this.strokes, (event.clientX - left) / width, (event.clientY - top) / height);
  }

  #change(strokes: Strokes): void {
    this.drawn = undefined;
    this.strokes = strokes;
    this.dispatchEvent(new CustomEvent('sketch-change', { detail: strokes }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-sketch-pad': LarkSketchPad;
  }
  interface HTMLElementEventMap {
    'sketch-change': CustomEvent<Strokes>;
  }
}
