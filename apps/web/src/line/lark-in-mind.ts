import { summarizeWeek, weekListing } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import '@larkhold/ui';
import { nothingDrawn, type Strokes } from '@larkhold/ui';

/**
 * What the archer keeps in mind: the week's focus and the shot process, in words and drawn. Nothing where neither is written.
 *
 * @prop isDrilling small and calm, in one strip, for beside a drill
 */
@customElement('lark-in-mind')
export class LarkInMind extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .part {
        display: flex;
        flex-wrap: wrap;
        gap: 0.8rem 1.6rem;
        justify-content: space-between;
        align-items: start;
      }
      .part > div {
        flex: 1 1 14rem;
        min-width: 0;
        overflow-wrap: anywhere;
      }
      .part lark-sketch-pad {
        flex: 0 1 11rem;
      }
      .focus {
        margin-top: 0.35rem;
        font-size: var(--text-large);
      }
      ol {
        margin-top: 0.35rem;
        padding-left: 1.4rem;
        list-style: decimal;
      }
      .strip {
        display: flex;
        gap: 0.8rem;
        align-items: center;
        justify-content: center;
        padding: 0.3rem 1rem;
        color: var(--dim);
        font-size: 1.05rem;
        line-height: 1.3;
      }
      .strip div {
        min-width: 0;
      }
      .strip p {
        display: -webkit-box;
        overflow: hidden;
        overflow-wrap: anywhere;
        -webkit-box-orient: vertical;
        -webkit-line-clamp: 2;
      }
      .strip lark-sketch-pad {
        flex: none;
        width: 4rem;
      }
      /* A phone on its side has room for the number and the buttons only. */
      @media (max-height: 480px) {
        .strip p {
          -webkit-line-clamp: 1;
        }
        .strip lark-sketch-pad,
        .strip .steps {
          display: none;
        }
      }
      .flipped {
        transform: scaleX(-1);
      }
    `,
  ];

  @property({ type: Boolean }) isDrilling = false;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { journal, kit, today } = app.view;
    const week = weekListing(today, kit.weekStart);
    const page = journal.weeks.find((one) => one.week === week) ?? { week };
    const focus = summarizeWeek(journal, page, kit.weekStart).focus.trim();
    const sketch = page.sketch ?? nothingDrawn;
    const steps = kit.shotProcess;
    const shotSketch = kit.shotSketch ?? nothingDrawn;
    const hasFocus = focus !== '' || sketch.length > 0;
    const hasSteps = steps.length > 0 || shotSketch.length > 0;
    if (!hasFocus && !hasSteps) return nothing;
    const focusPicture = drawn(say('line.focusSketch'), sketch);
    const stepsPicture = drawn(say('line.processSketch'), shotSketch);
    if (this.isDrilling) {
      return html`<div class="strip ${kit.viewing.flipped ? 'flipped' : ''}" role="note" aria-label=${say('line.inMind')}>
        ${focusPicture}
        <div>
          ${focus ? html`<p class="words">${focus}</p>` : nothing}
          ${steps.length > 0 ? html`<p class="steps small">${steps.join(' · ')}</p>` : nothing}
        </div>
        ${stepsPicture}
      </div>`;
    }
    return html`${
      hasFocus
        ? html`<section class="part" aria-labelledby="focus">
            <div>
              <h2 id="focus">${say('line.focus')}</h2>
              <p class="focus">${focus}</p>
            </div>
            ${focusPicture}
          </section>`
        : nothing
    }
    ${
      hasSteps
        ? html`<section class="part" aria-labelledby="steps">
            <div>
              <h2 id="steps">${say('line.shotProcess')}</h2>
              <ol>
                ${steps.map((step) => html`<li>${step}</li>`)}
              </ol>
            </div>
            ${stepsPicture}
          </section>`
        : nothing
    }`;
  }
}

function drawn(words: string, strokes: Strokes) {
  return strokes.length > 0
    ? html`<lark-sketch-pad isFixed .strokes=${strokes} words=${words}></lark-sketch-pad>`
    : nothing;
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-in-mind': LarkInMind;
  }
}
