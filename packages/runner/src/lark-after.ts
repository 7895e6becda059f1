import { correctOutcome, type DrillRecord, type Outcome, type RepRecord } from '@larkhold/engine';
import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { afterStyles } from './after-styles.ts';
import { secondsWords } from './clock-words.ts';
import type { AfterDrill } from './drill-events.ts';
import { buttonStyles, lookStyles } from './glance-look.ts';
import type { RunnerTheme } from './runner-settings.ts';

/** Own words for 0 to 10; the numbers are what is kept. */
const EFFORT_WORDS = [
  'No effort',
  'Hardly any',
  'Light',
  'Easy to keep up',
  'Some effort',
  'Clear effort',
  'Tiring',
  'Hard',
  'Very hard',
  'Nearly all I had',
  'All I had',
] as const;

const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = {
  held: 'Held',
  short: 'Short',
  skipped: 'Skipped',
  unsure: 'Unsure',
};
const OUTCOMES = ['held', 'short', 'skipped', 'unsure'] as const;

/**
 * Asks how a drill was, and lets the archer put reps right. Everything may be left out.
 *
 * @prop record the drill as it was logged
 * @prop theme colours
 * @event lark-after-done saved or skipped; detail `{ effort?, pain?, note?, reps }`
 */
@customElement('lark-after')
export class LarkAfter extends LitElement {
  static override styles = [lookStyles, buttonStyles, afterStyles];

  @property({ attribute: false }) record: DrillRecord | undefined;
  @property({ reflect: true }) theme: RunnerTheme = 'system';
  @state() private effort: number | undefined;
  @state() private pain: boolean | undefined;
  @state() private note = '';
  @state() private corrected: DrillRecord | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('record')) return;
    this.corrected = this.record;
    this.effort = this.record?.effort;
    this.pain = this.record?.pain;
    this.note = this.record?.note ?? '';
  }

  override render() {
    const { corrected } = this;
    if (!corrected) return nothing;
    return html`<form @submit=${this.#onSave}>
      <h2>How was it?</h2>
      <fieldset class="effort">
        <legend>Effort</legend>
        ${EFFORT_WORDS.map(
          (words, effort) => html`<label>
            <input
              type="radio"
              name="effort"
              .checked=${this.effort === effort}
              @change=${() => {
                this.effort = effort;
              }}
            /><b>${effort}</b> <span>${words}</span>
          </label>`,
        )}
      </fieldset>
      <fieldset class="pain">
        <legend>Any pain?</legend>
        ${this.#painChoice('No', false)}${this.#painChoice('Yes', true)}
        <p class="caution" role="status">${this.pain ? 'Stop for today. If it stays, see a doctor or physiotherapist.' : ''}</p>
      </fieldset>
      <label class="note"
        >Note
        <textarea
          rows="3"
          maxlength="4000"
          .value=${this.note}
          @input=${(event: InputEvent) => {
            if (event.target instanceof HTMLTextAreaElement) this.note = event.target.value;
          }}
        ></textarea>
      </label>
      <section aria-labelledby="reps">
        <h3 id="reps">Reps</h3>
        ${corrected.reps.length === 0 ? html`<p>No rep was logged.</p>` : nothing}
        <ol>
          ${corrected.reps.map((rep, index) => this.#rep(rep, index))}
        </ol>
      </section>
      <div class="done">
        <button class="main" type="submit">Save</button>
        <button type="button" @click=${this.#onSkip}>Skip</button>
      </div>
    </form>`;
  }

  #painChoice(words: string, pain: boolean) {
    return html`<label>
      <input
        type="radio"
        name="pain"
        .checked=${this.pain === pain}
        @change=${() => {
          this.pain = pain;
        }}
      />
      <span>${words}</span>
    </label>`;
  }

  #rep(rep: RepRecord, index: number) {
    const name = `Block ${rep.block + 1}, set ${rep.set + 1}, rep ${rep.rep + 1}`;
    return html`<li>
      <span class="rep">${name}${rep.hand === 'opposite' ? ', other hand' : ''}</span>
      <span class="held">${secondsWords(rep.heldMs)} of ${secondsWords(rep.prescribedMs)}</span>
      <span class="outcomes" role="group" aria-label=${name}>
        ${OUTCOMES.map(
          (outcome) => html`<button
            type="button"
            aria-pressed=${rep.outcome === outcome ? 'true' : 'false'}
            @click=${() => this.#correct(index, outcome)}
          >
            ${OUTCOME_WORDS[outcome]}
          </button>`,
        )}
      </span>
    </li>`;
  }

  #correct(index: number, outcome: Outcome): void {
    const { corrected } = this;
    // The archer may press the one that stands already, and what was logged must stay exact.
    if (!corrected || corrected.reps[index]?.outcome === outcome) return;
    const logged = this.record?.reps[index];
    // Back to how it was logged: give back the logged time too.
    this.corrected =
      logged?.outcome === outcome
        ? { ...corrected, reps: corrected.reps.with(index, logged) }
        : correctOutcome(corrected, index, outcome, corrected.endedAt);
  }

  readonly #onSave = (event: SubmitEvent): void => {
    event.preventDefault();
    const note = this.note.trim();
    this.#done({
      ...(this.effort === undefined ? {} : { effort: this.effort }),
      ...(this.pain === undefined ? {} : { pain: this.pain }),
      ...(note === '' ? {} : { note }),
      reps: this.corrected?.reps ?? [],
    });
  };

  /** Skip leaves the questions out; a rep put right stays right. */
  readonly #onSkip = (): void => {
    this.#done({ reps: this.corrected?.reps ?? [] });
  };

  #done(detail: AfterDrill): void {
    this.dispatchEvent(new CustomEvent<AfterDrill>('lark-after-done', { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-after': LarkAfter;
  }
}
