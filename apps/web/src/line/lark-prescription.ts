import type { PrescribedBlock, Prescription, Reason } from '@larkhold/engine';
import { controlStyles, pageStyles } from '@larkhold/ui';
import type { Units } from '@larkhold/words';
import {
  cautionsOf,
  doseLine,
  lengthLine,
  type NumberPiece,
  type Piece,
  reasonWithoutNext,
  restLine,
  say,
} from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { whyLine, whyStyles } from '../shell/why-line.ts';

/** More blocks than these are listed in smaller numbers. */
const MOST_LARGE = 2;

/** Cautions that hold for every drill. */
const GENERAL = ['stopOnPain', 'coachFirst'];

/** How many characters fit across a phone in the largest size. */
const SHORT_NUMBERS = 9;

/**
 * Today's numbers, large, each with its reason in words and more at a press; cautions and warm-up below. The caution of a drawn string is not among
 * them: it is where the drill begins.
 *
 * @prop prescription today's numbers
 * @prop units the archer's
 * @slot between the numbers and what to read before: the button that begins
 */
@customElement('lark-prescription')
export class LarkPrescription extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    whyStyles,
    css`
      .block + .block {
        margin-top: 1.4rem;
      }
      .large {
        font-size: var(--text-numbers);
        font-weight: 700;
        letter-spacing: -0.035em;
        line-height: 1.02;
        font-variant-numeric: tabular-nums;
      }
      .block {
        container-type: inline-size;
      }
      /* The longest, 20 × 60 × 180 s, still fits on one line of a phone. */
      .large.long {
        font-size: min(var(--text-numbers), 12.5cqi);
        white-space: nowrap;
      }
      .many .large {
        font-size: clamp(2.2rem, 1.7rem + 2.6vw, 3.2rem);
      }
      .title {
        color: var(--dim);
      }
      .rest {
        margin-top: 0.35rem;
        font-size: var(--text-large);
      }
      .why {
        margin-top: 0.75rem;
        padding-left: 0.9rem;
        border-left: 2px solid var(--accent);
        max-width: 38rem;
      }
      .why li + li {
        margin-top: 0.35rem;
      }
      .total {
        margin-top: 1rem;
        color: var(--dim);
      }
      .folds {
        margin-top: var(--gap);
        border-bottom: 1px solid var(--rule);
      }
      .lines {
        padding: 0 0 1rem 1.1rem;
      }
      .lines li + li {
        margin-top: 0.4rem;
      }
      .cautions {
        margin-top: 1rem;
        max-width: 38rem;
      }
      .cautions p + p {
        margin-top: 0.35rem;
      }
      .caution {
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;
  @property() units: Units = 'metric';
  @state() private asked: NumberPiece | undefined;

  override render() {
    const { prescription } = this;
    if (!prescription) return nothing;
    const { blocks, reasons, cautionFacts, warmUp, coolDown } = prescription;
    const cautions = cautionsOf(prescription);
    // What is special to this drill is never folded away; what holds for every drill is with the warm-up. That of a drawn string is beside Begin.
    const ofRules = (rules: readonly string[]) =>
      cautions.filter((_, index) => rules.includes(cautionFacts?.[index]?.rule ?? ''));
    const general = ofRules(GENERAL);
    const elsewhere = [...general, ...ofRules(['dryFire'])];
    const [first, ...others] = cautions.filter((caution) => !elsewhere.includes(caution));
    return html`<div class=${blocks.length > MOST_LARGE ? 'many' : ''}>
        ${blocks.map((block) => this.#block(block, prescription))}
      </div>
      ${this.#why(reasons.filter(({ block }) => block === undefined))}
      ${this.#line('total', lengthLine(prescription), prescription)}
      <div class="cautions">
        ${first ? html`<p class="caution">${first}</p>` : nothing} ${others.map((caution) => html`<p>${caution}</p>`)}
      </div>
      <slot></slot>
      <div class="folds">
        ${this.#fold(say('line.warmUp'), warmUp)} ${this.#fold(say('line.beforeDraw'), general)} ${this.#fold(say('line.coolDown'), coolDown)}
      </div>`;
  }

  #block(block: PrescribedBlock, prescription: Prescription) {
    const { blocks, reasons } = prescription;
    const dose = doseLine(block);
    const isLong =
      dose.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('').length > SHORT_NUMBERS;
    return html`<div class="block">
      <p class="title">${blocks.length > 1 ? block.title : nothing}</p>
      ${this.#line(isLong ? 'large long' : 'large', dose, prescription)} ${this.#line('rest', restLine(block, this.units), prescription)}
      ${this.#why(reasons.filter((reason) => reason.block === block.block))}
    </div>`;
  }

  #line(look: string, pieces: readonly Piece[], prescription: Prescription) {
    const ask = (piece: NumberPiece | undefined): void => {
      this.asked = piece;
    };
    return whyLine({ prescription, pieces, asked: this.asked, ask, look });
  }

  #why(reasons: readonly Reason[]) {
    if (reasons.length === 0) return nothing;
    return html`<ul class="why" aria-label=${say('line.why')}>
      ${reasons.map((reason) => html`<li>${reasonWithoutNext(reason)}</li>`)}
    </ul>`;
  }

  #fold(title: string, lines: readonly string[] | undefined) {
    if (!lines || lines.length === 0) return nothing;
    return html`<details>
      <summary>${title}</summary>
      <ul class="lines">
        ${lines.map((line) => html`<li>${line}</li>`)}
      </ul>
    </details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-prescription': LarkPrescription;
  }
}
