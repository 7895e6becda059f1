import { say } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controlStyles, pageStyles } from './page-styles.ts';

const questions = ['range.backstop', 'range.surroundings', 'range.bystanders', 'range.light'] as const;

/**
 * What to look at before arrows are shot at home. Only words: it judges nothing. It is put away for one place at a time.
 *
 * @prop place the archer's own name for it; empty until it is named
 * @event range-check-dismiss the archer has read it and does not want to see it again at this place
 */
@customElement('range-check')
export class RangeCheck extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    css`
      button {
        overflow-wrap: anywhere; /* the name of a place is of any length */
      }
      .notice {
        padding: 0.3rem 0.8rem;
        gap: 0.2rem;
      }
      details {
        border: 0;
      }
      summary {
        min-height: var(--touch);
        font-weight: 500;
        font-size: var(--text-small);
        line-height: 1.35;
      }
      ul {
        margin: 0.4rem 0;
        padding-left: 1.2rem;
        list-style: disc;
      }
      button.quiet {
        padding-left: 0;
      }
    `,
  ];

  @property() place = '';

  override render() {
    return html`<aside class="notice" aria-label=${say('range.shooting')}>
      <details>
        <summary><span><strong>${say('range.question')}</strong> ${say('range.rules')}</span></summary>
        <ul>
          ${questions.map((key) => html`<li>${say(key)}</li>`)}
        </ul>
        <p>${say('range.ifNot')}</p>
        ${this.place === '' ? html`<p class="dim small">${say('range.namePlace')}</p>` : nothing}
      </details>
      ${
        this.place === ''
          ? nothing
          : html`<button type="button" class="quiet" @click=${this.#onDismiss}>${say('range.checked', { place: this.place })}</button>`
      }
    </aside>`;
  }

  readonly #onDismiss = (): void => {
    this.dispatchEvent(new CustomEvent('range-check-dismiss', { bubbles: true, composed: true }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'range-check': RangeCheck;
  }
  interface HTMLElementEventMap {
    'range-check-dismiss': CustomEvent<null>;
  }
}
