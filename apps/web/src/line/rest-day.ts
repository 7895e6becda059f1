import type { Prescription, RestReason } from '@larkhold/engine';
import { reasonWords, restWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { painAnswer } from '../shell/pain-answer.ts';
import { PlaceElement } from '../shell/place-element.ts';

/**
 * A day that is better without a drill: why, first of all; and the question about pain where the way back asks it.
 *
 * @prop prescription today's, with `rest` where the archer is better without a drill
 * @prop because why the season has rest today, where the prescription says nothing
 */
@customElement('rest-day')
export class RestDay extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      :host {
        margin-top: var(--gap);
      }
      h2 {
        font-size: clamp(2rem, 1.6rem + 2vw, 3rem);
        letter-spacing: -0.02em;
      }
      .reason {
        overflow-wrap: anywhere;
        margin-top: 0.5rem;
        font-size: var(--text-large);
        max-width: 34rem;
      }
      fieldset {
        margin: var(--gap) 0 0;
        padding: 0;
        border: 0;
      }
      legend {
        padding: 0;
        font-weight: 600;
      }
      .row {
        margin-top: 0.5rem;
      }
      .still {
        margin-top: var(--gap);
        max-width: 34rem;
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;
  @property({ attribute: false }) because: RestReason | undefined;

  override render() {
    const { app, prescription, because } = this;
    const rest = prescription?.rest;
    if (!app || !prescription || !(rest || because)) return nothing;
    const isSeasons = because && (!rest || rest.rule === 'seasonRest');
    const words = isSeasons ? restWords(because, app.view.season) : rest && reasonWords(rest);
    return html`<h2>${say('rest.day')}</h2>
      <p class="reason">${words}</p>
      ${rest?.rule.startsWith('pain') ? this.#pain(app) : nothing}
      <p class="still dim">${say(prescription.blocks.length > 0 ? 'rest.still' : 'rest.none')}</p>`;
  }

  #pain(app: App) {
    const { journal, today } = app.view;
    const entry = journal.days.find(({ date }) => date === today) ?? { date: today };
    const put = (pain: boolean | undefined) => app.act.putDay({ ...entry, pain, editedAt: app.act.instant() });
    return html`<fieldset>
      <legend>${say('rest.pain')}</legend>
      <p class="dim">${say('after.painMeans')}</p>
      <div class="row">${painAnswer(entry.pain, put)}</div>
    </fieldset>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'rest-day': RestDay;
  }
}
