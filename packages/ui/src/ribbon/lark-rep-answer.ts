import { type Outcome, trueHeldMs } from '@larkhold/engine';
import { formatSeconds, outcomeName, say, seenWords, shortReasonName } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { isApart, type RibbonRep, type ShortReason } from './ribbon-rep.ts';

const outcomes = ['held', 'short', 'skipped', 'unsure'] as const;
const reasons = ['form', 'tired', 'interrupted'] as const;

/**
 * One rep of a drill, corrected in one press; a short one can say why. Where a camera saw it, what it saw, and a press to keep its time or the clock's.
 *
 * @prop rep as it was logged
 * @prop place 'Set 2, rep 3'
 * @prop asksWhy whether the reason of a short rep is asked
 * @prop isBrief whether only the reason is asked for
 * @event lark-outcome another outcome; detail `{ outcome }`
 * @event lark-settle whose time is kept; detail `{ kept }`, 'clock' or 'seen'
 * @event lark-why the reason of a short rep; detail `{ why }`, undefined when it is taken back
 */
@customElement('lark-rep-answer')
export class LarkRepAnswer extends LitElement {
  static override styles = css`
    :host {
      display: grid;
      grid-template-columns: minmax(min(9rem, 100%), 1fr) minmax(0, auto);
      gap: 0.4rem 1rem;
      align-items: center;
      padding: 0.6rem 0;
    }
    .held {
      color: var(--dim);
      font-variant-numeric: tabular-nums;
    }
    div {
      display: flex;
      flex-wrap: wrap;
      gap: 6px;
    }
    .why {
      grid-column: 1 / -1;
      align-items: center;
      justify-content: flex-end;
    }
    button {
      flex: 1 1 auto;
      min-height: 48px;
      min-width: 48px;
      padding: 0.2rem 0.6rem;
      border: 1.5px solid var(--faint);
      border-radius: 10px;
      background: transparent;
      color: var(--ink);
      font: inherit;
      font-size: 1rem;
      cursor: pointer;
      touch-action: manipulation;
    }
    .why button {
      flex: 0 1 auto;
    }
    button:focus-visible {
      outline: 3px solid var(--accent);
      outline-offset: 2px;
    }
    [aria-pressed='true'] {
      border-color: var(--ink);
      font-weight: 700;
      text-decoration: underline;
      text-underline-offset: 4px;
    }
    .seen {
      grid-column: 1 / -1;
      align-items: center;
    }
    .seen p {
      flex: 1 1 100%;
      margin: 0;
    }
    .seen button {
      flex: 0 1 auto;
    }
    @media (max-width: 36rem) {
      :host {
        grid-template-columns: minmax(0, 1fr);
      }
      .why {
        justify-content: flex-start;
      }
      .outcomes button {
        padding-inline: 0.4rem;
      }
    }
  `;

  @property({ attribute: false }) rep: RibbonRep | undefined;
  @property() place = '';
  @property({ type: Boolean }) asksWhy = false;
  @property({ type: Boolean }) isBrief = false;

  override render() {
    const { rep, place } = this;
    if (!rep) return nothing;
    return html`<span class="rep"
        ><span class="place">${place}</span>
        <span class="held">${say('field.heldOf', { held: formatSeconds(rep.heldMs), asked: formatSeconds(rep.prescribedMs) })}</span></span
      >
      ${this.isBrief ? nothing : this.#outcomes(rep, place)}
      ${this.#seen(rep, place)}
      ${this.asksWhy && rep.outcome === 'short' ? this.#why(rep, place) : nothing}`;
  }

  #outcomes(rep: RibbonRep, place: string) {
    return html`<div class="outcomes" role="group" aria-label=${place}>
        ${outcomes.map((outcome) => this.#button(outcomeName(outcome), rep.outcome === outcome, () => this.#tell('lark-outcome', { outcome })))}
      </div>`;
  }

  /** What a camera saw of it; where it and the clock are apart, one press keeps either. */
  #seen(rep: RibbonRep, place: string) {
    if (rep.outcome === 'coming' || rep.outcome === 'now' || !rep.seen) return nothing;
    const seen = { ...rep, outcome: rep.outcome };
    return html`<div class="seen" role="group" aria-label=${say('sight.seenPlace', { place })}>
      <p>${seenWords(seen).join(' ')}</p>
      ${
        isApart(rep)
          ? html`${this.#button(say('sight.keepSeen', { ms: trueHeldMs(seen) }), false, () => this.#tell('lark-settle', { kept: 'seen' }))}
            ${this.#button(say('sight.keepClock', { ms: rep.heldMs }), false, () => this.#tell('lark-settle', { kept: 'clock' }))}`
          : nothing
      }
    </div>`;
  }

  #why(rep: RibbonRep, place: string) {
    return html`<div class="why" role="group" aria-label=${say('field.whyPlace', { place: place })}>
      <span class="held" aria-hidden="true">${say('field.whyQuestion')}</span>
      ${reasons.map((why) =>
        this.#button(shortReasonName(why), rep.why === why, () =>
          this.#tell('lark-why', { why: rep.why === why ? undefined : why }),
        ),
      )}
    </div>`;
  }

  #button(words: string, isPressed: boolean, press: () => void) {
    return html`<button type="button" aria-pressed=${isPressed ? 'true' : 'false'} @click=${press}>${words}</button>`;
  }

  #tell(
    name: string,
    detail: { outcome: Outcome } | { why: ShortReason | undefined } | { kept: 'clock' | 'seen' },
  ): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-rep-answer': LarkRepAnswer;
  }
  interface HTMLElementEventMap {
    'lark-outcome': CustomEvent<{ outcome: Outcome }>;
    'lark-settle': CustomEvent<{ kept: 'clock' | 'seen' }>;
    'lark-why': CustomEvent<{ why: ShortReason | undefined }>;
  }
}
