import type { PrescribedBlock, Prescription, Reason } from '@larkhold/engine';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { formatMinutes, formatReps, formatWeight, type Units } from '../format-for-people.ts';
import { controlStyles, pageStyles } from '../look/page-styles.ts';
import { restWords } from '../program-words.ts';

/** More blocks than these are listed in smaller numbers. */
const MOST_LARGE = 2;

/** So many characters stand in the largest size across a phone. */
const SHORT_NUMBERS = 9;

/**
 * Today's numbers, large, each with its reason in words; cautions and warm-up below.
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
      .caution {
        margin-top: 1rem;
        font-weight: 600;
        max-width: 38rem;
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;
  @property() units: Units = 'metric';

  override render() {
    const { prescription } = this;
    if (!prescription) return nothing;
    const { blocks, reasons, cautions, warmUp, coolDown, durationMs } = prescription;
    const [first, ...more] = cautions;
    return html`<div class=${blocks.length > MOST_LARGE ? 'many' : ''}>
        ${blocks.map((block) => this.#block(block, reasons, blocks.length))}
      </div>
      ${this.#why(reasons.filter(({ block }) => block === undefined))}
      <p class="total">${formatMinutes(durationMs)} in all.</p>
      ${first ? html`<p class="caution">${first}</p>` : nothing}
      <slot></slot>
      <div class="folds">
        ${this.#fold('Warm-up', warmUp)} ${this.#fold('Before you draw', more)} ${this.#fold('Cool-down', coolDown)}
      </div>`;
  }

  #block(block: PrescribedBlock, reasons: readonly Reason[], count: number) {
    const rest = restWords(block);
    return html`<div class="block">
      <p class="title">${count > 1 ? block.title : nothing}</p>
      <p class=${formatReps(block).length > SHORT_NUMBERS ? 'large long' : 'large'}>${formatReps(block)}</p>
      <p class="rest">
        ${rest === '' ? 'one rep' : rest}${block.addedWeightLbf > 0 ? `, ${formatWeight(block.addedWeightLbf, this.units)} added` : ''}${
          block.hand === 'usual' ? '' : block.hand === 'both' ? ', both hands in turn' : ', other hand'
        }
      </p>
      ${this.#why(reasons.filter((reason) => reason.block === block.block))}
    </div>`;
  }

  #why(reasons: readonly Reason[]) {
    if (reasons.length === 0) return nothing;
    return html`<ul class="why" aria-label="Why">
      ${reasons.map(({ change }) => html`<li>${change}</li>`)}
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
