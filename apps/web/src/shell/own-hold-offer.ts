import { type DrillRecord, isAtOdds, type OwnHold } from '@larkhold/engine';
import { estimateWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from './app-context.ts';
import { BASELINE_ID, lastBaseline, ownHoldOf, retestWords } from './own-hold.ts';
import { PlaceElement } from './place-element.ts';

/** Longest and shortest that the kit keeps, seconds. */
const LEAST_SECONDS = 1;
const MOST_SECONDS = 600;

/**
 * The archer's longest hold: what is known, and offers, each of which needs a yes: the baseline test, its result, the journal's
 * own estimate where it disagrees with the kit.
 *
 * @prop drilled a drill that was just done: then only its result is offered, if it was the baseline test
 */
@customElement('own-hold-offer')
export class OwnHoldOffer extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      p + p,
      .row {
        margin-top: 0.6rem;
      }
      .row {
        align-items: end;
      }
      input {
        width: 6.5rem;
      }
      .notice {
        margin-top: var(--gap);
      }
    `,
  ];

  @property({ attribute: false }) drilled: DrillRecord | undefined;
  @state() private declined: string | undefined;
  @state() private problem = '';

  override render() {
    const { app, drilled } = this;
    if (!app) return nothing;
    if (drilled) return drilled.programId === BASELINE_ID ? this.#result(app, drilled.id) : nothing;
    const own = ownHoldOf(app.view);
    return html`<p>${ownWords(own)}</p>
      ${this.#result(app)} ${this.#atOdds(app, own)} ${this.#retest(app, own)}
      <div class="row">
        <label
          >${say('ownHold.field')}
          <input
            type="number"
            inputmode="numeric"
            min=${LEAST_SECONDS}
            max=${MOST_SECONDS}
            step="1"
            .value=${app.view.kit.maxHoldSeconds === undefined ? '' : String(app.view.kit.maxHoldSeconds)}
            @change=${(event: Event) => this.#type(app, event)}
          />
        </label>
      </div>
      <p class="small" role="alert">${this.problem}</p>`;
  }

  /** The result of a test that the kit does not hold yet. */
  #result({ view, act }: App, id?: string) {
    const last = lastBaseline(view.journal.drills, view.programs);
    if (!last || (id !== undefined && last.record.id !== id)) return nothing;
    const { seconds } = last;
    if (seconds === undefined || seconds === view.kit.maxHoldSeconds || this.declined === last.record.id)
      return nothing;
    if (id === undefined && retestWords(last, view.today) !== undefined) return nothing;
    const said = view.kit.maxHoldSeconds;
    const facts = { day: last.record.date, ms: seconds * 1000 };
    return html`<div class="notice" role="group" aria-label=${say('ownHold.test')}>
      <p>
        ${said === undefined ? say('ownHold.result', facts) : say('ownHold.resultOther', { ...facts, kit: said * 1000 })}
      </p>
      <div class="row">
        <button @click=${() => act.changeKit({ maxHoldSeconds: seconds })}>${say('ownHold.take', { ms: seconds * 1000 })}</button>
        <button
          class="quiet"
          @click=${() => {
            this.declined = last.record.id;
          }}
        >
          ${say('ownHold.leave')}
        </button>
      </div>
    </div>`;
  }

  #atOdds({ act }: App, own: OwnHold) {
    if (own.kind !== 'said' || own.estimate.kind !== 'estimate' || !isAtOdds(own)) return nothing;
    const seconds = Math.min(MOST_SECONDS, Math.max(LEAST_SECONDS, Math.round(own.estimate.seconds)));
    return html`<div class="notice" role="group" aria-label=${say('ownHold.disagree')}>
      <p>${say('ownHold.disagreeWith', { estimate: estimateWords(own.estimate) })}</p>
      <button @click=${() => act.changeKit({ maxHoldSeconds: seconds })}>${say('ownHold.take', { ms: seconds * 1000 })}</button>
    </div>`;
  }

  #retest({ view, act }: App, own: OwnHold) {
    const test = view.programs.find(({ id }) => id === BASELINE_ID);
    const due = retestWords(lastBaseline(view.journal.drills, view.programs), view.today);
    if (!test || (own.kind === 'said' && due === undefined)) return nothing;
    return html`${due ? html`<p>${due}</p>` : nothing}
      <div class="row">
        ${
          view.chosen === test
            ? html`<p class="dim">${say('ownHold.testToday')}</p>`
            : html`<button @click=${() => act.chooseProgram(BASELINE_ID)}>${say('ownHold.takeTest')}</button>`
        }
      </div>`;
  }

  #type({ act }: App, event: Event): void {
    const { target } = event;
    if (!(target instanceof HTMLInputElement)) return;
    const seconds = target.value === '' ? undefined : Number(target.value);
    const isGood =
      seconds === undefined ? !target.validity.badInput : seconds >= LEAST_SECONDS && seconds <= MOST_SECONDS;
    this.problem = isGood ? '' : say('ownHold.outOfRange', { least: LEAST_SECONDS, most: MOST_SECONDS });
    if (isGood) void act.changeKit({ maxHoldSeconds: seconds });
  }
}

function ownWords(own: OwnHold): string {
  if (own.kind === 'said') return say('ownHold.asKit', { ms: own.seconds * 1000 });
  const estimate = estimateWords(own.estimate);
  return own.kind === 'estimated' ? say('ownHold.fromJournal', { estimate }) : estimate;
}

declare global {
  interface HTMLElementTagNameMap {
    'own-hold-offer': OwnHoldOffer;
  }
}
