import type { Prescription } from '@larkhold/engine';
import { type Readiness, readinessChoices, readinessWord, readinessWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { choiceStyles } from './choice-styles.ts';

/**
 * Today's own word in one press, kept in the day's diary; what it does to the numbers appears under it at once. A second press takes it back.
 *
 * @prop prescription today's numbers
 */
@customElement('readiness-choice')
export class ReadinessChoice extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    choiceStyles,
    css`
      p {
        margin-top: 0.6rem;
        max-width: 38rem;
        color: var(--dim);
      }
      p:empty {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;

  override render() {
    const { app, prescription } = this;
    if (!app || !prescription) return nothing;
    const { journal, today } = app.view;
    const said = journal.days.find(({ date }) => date === today)?.readiness;
    return html`<details name="choice" @toggle=${this.#onToggle}>
      <summary>${said ? html`<span><span class="dim">${say('readiness.today')}</span> ${readinessWord(said)}</span>` : html`<span>${say('readiness.ask')}</span>`}</summary>
      <div class="row" role="group" aria-label=${say('readiness.today')}>
        ${readinessChoices.map(
          (word) => html`<button
            aria-pressed=${said === word ? 'true' : 'false'}
            @click=${() => this.#say(app, said === word ? undefined : word)}
          >
            ${readinessWord(word)}
          </button>`,
        )}
      </div>
      <p role="status">${readinessWords(said, prescription)}</p>
    </details>`;
  }

  /** An open choice takes the whole row. */
  readonly #onToggle = (event: Event): void => {
    if (event.target instanceof HTMLDetailsElement) this.toggleAttribute('data-open', event.target.open);
  };

  #say({ view, act }: App, readiness: Readiness | undefined): void {
    const { journal, today } = view;
    const entry = journal.days.find(({ date }) => date === today) ?? { date: today };
    void act.putDay({ ...entry, readiness, editedAt: act.instant() });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'readiness-choice': ReadinessChoice;
  }
}
