import { type DrillCalls, drillCalls, type Prescription } from '@larkhold/engine';
import { callFaultWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { allowedCallsOf, answerCalls, unaskedCalls } from '../shell/call-answers.ts';
import { PlaceElement } from '../shell/place-element.ts';

/**
 * Asks, once for each program and each text, whether its lines may be said while the archer is at full draw; says which never are, and why.
 * Nothing where a drill says only our own phrases. A drill can begin unanswered: then the lines are not said.
 *
 * @prop prescription today's numbers
 * @prop programId the program, as `idOf` names it
 */
@customElement('calls-asked')
export class CallsAsked extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      section,
      details {
        margin-top: var(--gap);
      }
      h2 {
        font-size: var(--text-large);
      }
      ul {
        margin: 0.5rem 0;
        padding-left: 1.2rem;
        list-style: disc;
      }
      li {
        overflow-wrap: anywhere;
      }
      .row {
        margin-top: 0.7rem;
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;
  @property({ attribute: false }) programId = '';

  override render() {
    const { app, prescription } = this;
    if (!app || !prescription) return nothing;
    const { kit } = app.view;
    const { shotProcess } = kit;
    const calls = drillCalls(prescription, { shotProcess, allowedCalls: allowedCallsOf(kit, this.programId) });
    const unasked = unaskedCalls(kit, this.programId, calls);
    const allowed = allowedCallsOf(kit, this.programId).filter((words) => calls.said.includes(words));
    const silenced = calls.unsaid.filter((words) => !unasked.includes(words));
    return html`${unasked.length > 0 ? this.#question(unasked, allowed, silenced) : nothing}
    ${calls.refused.length > 0 ? refusal(calls.refused) : nothing}
    ${unasked.length === 0 && allowed.length + silenced.length > 0 ? this.#answered(allowed, silenced) : nothing}`;
  }

  #question(unasked: readonly string[], allowed: readonly string[], silenced: readonly string[]) {
    return html`<section class="notice" aria-labelledby="asked">
      <h2 id="asked">${say('calls.asks')}</h2>
      ${list(unasked)}
      <p class="small">${say('calls.readThem')}</p>
      <div class="row">
        <button @click=${() => this.#answer([...allowed, ...unasked], silenced)}>${say('calls.allow')}</button>
        <button @click=${() => this.#answer(allowed, [...silenced, ...unasked])}>${say('calls.refuse')}</button>
      </div>
    </section>`;
  }

  #answered(allowed: readonly string[], silenced: readonly string[]) {
    return html`<details>
      <summary>${say('calls.count', { said: allowed.length, unsaid: silenced.length })}</summary>
      ${allowed.length > 0 ? html`<p>${say('calls.allowed')}</p>${list(allowed)}` : nothing}
      ${silenced.length > 0 ? html`<p>${say('calls.refused')}</p>${list(silenced)}` : nothing}
      <button class="quiet" @click=${() => this.#answer([], [])}>${say('calls.askAgain')}</button>
    </details>`;
  }

  #answer(allowed: readonly string[], silenced: readonly string[]): void {
    const { app } = this;
    if (!app) return;
    void app.act.changeKit({ callAnswers: answerCalls(app.view.kit, this.programId, { allowed, silenced }) });
  }
}

function refusal(refused: DrillCalls['refused']) {
  return html`<section class="notice" aria-label=${say('calls.neverSaid')}>
    <ul>
      ${refused.map(({ words, fault }) => html`<li>“<bdi>${words}</bdi>” ${callFaultWords(fault)}</li>`)}
    </ul>
  </section>`;
}

function list(lines: readonly string[]) {
  return html`<ul>
    ${lines.map((words) => html`<li>“<bdi>${words}</bdi>”</li>`)}
  </ul>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'calls-asked': CallsAsked;
  }
}
