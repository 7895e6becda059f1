import type { DrillRecord, Prescription } from '@larkhold/engine';
import { controlStyles, pageStyles } from '@larkhold/ui';
import { drillWords, formatReps, placeOfRep, reasonWords, repWords, say } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { hrefOf } from '../shell/routing.ts';

/**
 * What was logged, and what it changes next.
 *
 * @prop record the drill
 * @prop next the next time's numbers
 * @event lark-told read
 */
@customElement('lark-told')
export class LarkTold extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    css`
      .words {
        margin-top: 0.6rem;
        font-size: var(--text-large);
      }
      .reps {
        margin-top: 0.8rem;
      }
      .next {
        font-size: clamp(1.8rem, 1.4rem + 2vw, 2.6rem);
        font-weight: 700;
        letter-spacing: -0.02em;
        font-variant-numeric: tabular-nums;
      }
      .why {
        margin-top: 0.5rem;
        padding-left: 0.9rem;
        border-left: 2px solid var(--accent);
      }
      .row {
        margin-top: calc(var(--gap) * 1.2);
      }
    `,
  ];

  @property({ attribute: false }) record: DrillRecord | undefined;
  @property({ attribute: false }) next: Prescription | undefined;

  protected override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus();
  }

  override render() {
    const { record, next } = this;
    if (!record || !next) return nothing;
    const odd = record.reps.flatMap((rep) => {
      const words = repWords(rep);
      return words === undefined ? [] : [`${placeOfRep(rep, record)}. ${words}`];
    });
    return html`<h1 tabindex="-1">${say('line.logged')}</h1>
      <p class="words">${drillWords(record)}</p>
      <ul class="reps">
        ${odd.map((words) => html`<li>${words}</li>`)}
      </ul>
      <section aria-labelledby="next">
        <h2 id="next">${say('line.nextTime')}</h2>
        ${next.blocks.map((block) => html`<p class="next">${formatReps(block)}</p>`)}
        <ul class="why" aria-label=${say('line.why')}>
          ${next.reasons.map((reason) => html`<li>${reasonWords(reason)}</li>`)}
        </ul>
        ${record.pain ? html`<p class="words">${say('line.pain')}</p>` : nothing}
      </section>
      <div class="row">
        <button class="main" @click=${() => this.dispatchEvent(new CustomEvent('lark-told'))}>${say('line.done')}</button>
        <a class="button" href=${hrefOf('journal', record.id)}>${say('line.inJournal')}</a>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-told': LarkTold;
  }
}
