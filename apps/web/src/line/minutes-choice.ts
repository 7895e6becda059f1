import { idOf, type Prescription, type Program } from '@larkhold/engine';
import { reasonWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { todaysPrescription } from '../shell/todays-prescription.ts';
import { choiceStyles } from './choice-styles.ts';

const choices = [2, 5, 10, 15, 20, 30, 45] as const;
/** Other programs offered at most, and the least of the minutes that one of them must fill. */
const MOST_OFFERED = 3;
const LEAST_SHARE = 0.4;

/**
 * How long the archer has. Its effect on the numbers is shown where it is pressed, and programs that fit whole are offered.
 *
 * @prop minutes the time there is; undefined for time enough
 * @prop prescription today's numbers in that time
 * @event lark-minutes other minutes; detail `{ minutes }`
 */
@customElement('minutes-choice')
export class MinutesChoice extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    choiceStyles,
    css`
      .effect {
        margin-top: 0.6rem;
        max-width: 38rem;
        color: var(--dim);
      }
      .whole {
        margin-top: 0.8rem;
      }
    `,
  ];

  @property({ attribute: false }) minutes: number | undefined;
  @property({ attribute: false }) prescription: Prescription | undefined;

  override render() {
    const { app, minutes, prescription } = this;
    if (!app || !prescription) return nothing;
    const name = (one: number | undefined) =>
      one === undefined ? say('line.timeForAll') : say('line.minutes', { ms: one * 60_000 });
    const cuts = prescription.reasons.filter(({ rule }) => rule === 'minutes');
    return html`<details name="choice" class="minutes" @toggle=${this.#onToggle}>
      <summary><span><span class="dim">${say('line.iHave')}</span> ${name(minutes)}</span></summary>
      <div class="row" role="group" aria-label=${say('line.iHave')}>
        ${[undefined, ...choices].map(
          (one) =>
            html`<button aria-pressed=${minutes === one ? 'true' : 'false'} @click=${() => this.#choose(one)}>${name(one)}</button>`,
        )}
      </div>
      <div class="effect" role="status">${cuts.map((cut) => html`<p>${reasonWords(cut)}</p>`)}</div>
      ${minutes !== undefined && cuts.length > 0 ? this.#whole(app, minutes) : nothing}
    </details>`;
  }

  #whole(app: App, minutes: number) {
    const fits = (program: Program): boolean => {
      if (program === app.view.chosen || program.tool !== app.view.chosen.tool) return false;
      const { durationMs } = todaysPrescription(app.view, program);
      return durationMs <= minutes * 60_000 && durationMs >= minutes * 60_000 * LEAST_SHARE;
    };
    const found = app.view.programs.filter(fits).slice(0, MOST_OFFERED);
    if (found.length === 0) return nothing;
    return html`<div class="whole">
      <p class="dim">${say('today.whole')}</p>
      <div class="row">
        ${found.map((program) => html`<button @click=${() => app.act.chooseProgram(idOf(program))}>${program.title}</button>`)}
      </div>
    </div>`;
  }

  #choose(minutes: number | undefined): void {
    this.dispatchEvent(new CustomEvent('lark-minutes', { detail: { minutes }, bubbles: true, composed: true }));
  }

  /** An open choice takes the whole row. */
  readonly #onToggle = (event: Event): void => {
    if (event.target instanceof HTMLDetailsElement) this.toggleAttribute('data-open', event.target.open);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'minutes-choice': MinutesChoice;
  }
}
