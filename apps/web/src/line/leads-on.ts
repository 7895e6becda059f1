import { idOf, nextPrograms, type Prescription } from '@larkhold/engine';
import { leadsWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';

/**
 * What today counts for, what leads on, and, at the top of a ladder, what comes next: offered, never forced.
 *
 * @prop prescription today's
 * @prop isDone whether today's drill is done: then nothing more counts today
 */
@customElement('leads-on')
export class LeadsOn extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      h2 {
        font-size: var(--text);
      }
      h2 + p,
      p + p,
      .row {
        margin-top: 0.35rem;
      }
      p {
        max-width: 38rem;
      }
      .next {
        margin-top: var(--gap);
      }
      .small a {
        display: inline-block;
        padding-block: 0.3rem; /* WCAG 2.2, 2.5.8: at least 24 px to press */
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;
  @property({ type: Boolean }) isDone = false;

  override render() {
    const { app, prescription } = this;
    if (!app || !prescription) return nothing;
    const leads = this.isDone ? [] : leadsWords(prescription);
    return html`${leads.length > 0 ? html`<h2>${say('leads.title')}</h2>${leads.map((words) => html`<p>${words}</p>`)}` : nothing}
      ${this.#next(app, prescription)}
      <p class="small"><a class="dim" href="#/known">${say('known.title')}</a></p>`;
  }

  #next({ view, act }: App, { reasons }: Prescription) {
    const { chosen } = view;
    const isTop = reasons.some(({ rule }) => rule === 'top');
    const next = isTop
      ? nextPrograms(chosen).flatMap(({ id }) => view.programs.find((one) => one.id === id) ?? [])
      : [];
    if (next.length === 0) return nothing;
    return html`<div class="next">
      <h2>${say('next.title', { program: chosen.title })}</h2>
      <p class="dim">${say('next.about')}</p>
      <div class="row">
        ${next.map((program) => html`<button @click=${() => act.chooseProgram(idOf(program))}>${say('next.take', { title: program.title })}</button>`)}
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'leads-on': LeadsOn;
  }
}
