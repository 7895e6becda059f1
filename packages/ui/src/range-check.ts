import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controlStyles, pageStyles } from './page-styles.ts';

const questions = [
  'Backstop: it stops every arrow, also one that misses the butt.',
  'Surroundings: nothing and nobody behind, beside or above.',
  'Bystanders: people and animals are behind the line, and know.',
  'Light: the butt and the ground before it are well lit.',
] as const;

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
      details {
        border: 0;
      }
      summary {
        font-weight: 500;
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
    return html`<aside class="notice" aria-label="Shooting at home">
      <p>
        <strong>Shooting at home?</strong> Local rules and your club's rules come first. Then check backstop, surroundings, bystanders and
        light.
      </p>
      <details>
        <summary>What to check</summary>
        <ul>
          ${questions.map((line) => html`<li>${line}</li>`)}
        </ul>
        <p>If one line is not true, do not shoot.</p>
      </details>
      ${
        this.place === ''
          ? html`<p class="dim small">Name the place, and this can be put away for it.</p>`
          : html`<button type="button" class="quiet" @click=${this.#onDismiss}>Checked: put this away for ${this.place}</button>`
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
}
