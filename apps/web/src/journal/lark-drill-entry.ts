import { correctOutcome, type DrillRecord, type Outcome, type RepRecord, settleSeen } from '@larkhold/engine';
import { isAsAsked, type ShortReason } from '@larkhold/ui';
import { drillWords, formatTimeOfDay, formatWeight, placeOfRep, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';

/**
 * One drill in the journal: its ribbon when folded; when open, the reps that did not go as asked, and any other at a press on its stroke. A
 * wrong outcome is corrected in one press.
 *
 * @prop record the drill
 * @prop isOpen begins open
 */
@customElement('lark-drill-entry')
export class LarkDrillEntry extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      details {
        border-top: 0;
        border-bottom: 1px solid var(--rule);
      }
      summary {
        align-items: baseline;
        padding: 0.7rem 0;
      }
      summary > span {
        flex: 1;
        min-width: 0;
        overflow-wrap: anywhere;
      }
      summary .dim {
        display: block;
        font-weight: 400;
      }
      summary lark-hold-ribbon {
        margin-top: 0.5rem;
      }
      .reps li {
        border-top: 1px solid var(--rule);
      }
      .hint {
        margin: 0.2rem 0 0.8rem;
      }
      .undo {
        margin-bottom: 0.8rem;
      }
      fieldset {
        margin: 1.1rem 0 0;
        padding: 0;
        border: 0;
        min-width: 0;
      }
      legend,
      .label {
        padding: 0 0 0.4rem;
        font-weight: 600;
      }
      .note {
        display: block;
        margin-top: 1.1rem;
      }
      .row.end {
        margin: 1rem 0 1.4rem;
      }
    `,
  ];

  @property({ attribute: false }) record: DrillRecord | undefined;
  @property({ type: Boolean }) isOpen = false;
  @state() private isUnfolded = false;
  @state() private picked: number | undefined;
  @state() private uncorrected: DrillRecord | undefined;

  override render() {
    const { record, app } = this;
    if (!record || !app) return nothing;
    const time = formatTimeOfDay(record.startedAt);
    const isOpen = this.isUnfolded || this.isOpen;
    return html`<details
      ?open=${this.isOpen}
      @toggle=${(event: Event) => {
        if (event.target instanceof HTMLDetailsElement) this.isUnfolded = event.target.open;
      }}
    >
      <summary>
        <span
          >${record.program}
          <span class="dim small">${drillWords(record)}</span>
          <span class="dim small"
            >${[
              time,
              record.effort === undefined ? '' : say('journal.effortOf', { effort: record.effort }),
              record.pain ? say('journal.pain') : '',
              record.open ? say('journal.notClosed') : '',
            ]
              .filter((part) => part !== '')
              .join(' · ')}</span
          >
          ${isOpen ? nothing : html`<lark-hold-ribbon .reps=${record.reps} .unit=${0.055} words=""></lark-hold-ribbon>`}
        </span>
      </summary>
      ${isOpen ? this.#inside(record) : nothing}
    </details>`;
  }

  #inside(record: DrillRecord) {
    const units = this.app?.view.kit.units ?? 'metric';
    return html`${
      this.uncorrected
        ? html`<div class="row undo" role="status"><span>${say('journal.corrected')}</span><button @click=${this.#undo}>${say('journal.undo')}</button></div>`
        : nothing
    }
      <lark-hold-ribbon
        picks
        .reps=${record.reps}
        .picked=${this.picked}
        @lark-pick=${(event: CustomEvent<{ index: number }>) => {
          this.picked = event.detail.index;
        }}
      ></lark-hold-ribbon>
      <p class="hint dim small">${say('today.press')}</p>
      <ol class="reps">
        ${record.reps.map((rep, index) => (index === this.picked || !isAsAsked(rep) ? this.#rep(record, rep, index) : nothing))}
      </ol>
      ${record.onFingersLbf === undefined ? nothing : html`<p class="dim small">${say('journal.onFingers', { weight: formatWeight(record.onFingersLbf, units) })}</p>`}
      <fieldset>
        <legend>${say('journal.effortScale')}</legend>
        <select
          aria-label=${say('journal.effort')}
          .value=${record.effort === undefined ? '' : String(record.effort)}
          @change=${(event: Event) => {
            if (event.target instanceof HTMLSelectElement) {
              this.#put({ ...record, effort: event.target.value === '' ? undefined : Number(event.target.value) });
            }
          }}
        >
          <option value="" ?selected=${record.effort === undefined}>${say('journal.notSaid')}</option>
          ${Array.from({ length: 11 }, (_, effort) => html`<option value=${effort} ?selected=${record.effort === effort}>${effort}</option>`)}
        </select>
      </fieldset>
      <label class="tick">
        <input
          type="checkbox"
          .checked=${record.pain === true}
          @change=${(event: Event) => {
            if (event.target instanceof HTMLInputElement) this.#put({ ...record, pain: event.target.checked });
          }}
        />${say('journal.hadPain')}
      </label>
      <label class="note"
        ><span class="label">${say('journal.note')}</span>
        <textarea
          maxlength="4000"
          .value=${record.note ?? ''}
          @change=${(event: Event) => {
            if (event.target instanceof HTMLTextAreaElement) {
              const note = event.target.value.trim();
              this.#put({ ...record, note: note === '' ? undefined : note });
            }
          }}
        ></textarea>
      </label>
      <div class="row end">
        <button class="quiet" @click=${() => this.#remove(record)}>${say('journal.removeDrill')}</button>
      </div>`;
  }

  #rep(record: DrillRecord, rep: RepRecord, index: number) {
    return html`<li>
      <lark-rep-answer
        ?data-picked=${index === this.picked}
        .rep=${rep}
        asksWhy
        .place=${placeOfRep(rep, record)}
        @lark-why=${(event: CustomEvent<{ why: ShortReason | undefined }>) => this.#explain(record, index, event.detail.why)}
        @lark-outcome=${(event: CustomEvent<{ outcome: Outcome }>) => this.#correct(record, index, event.detail.outcome)}
        @lark-settle=${(event: CustomEvent<{ kept: 'clock' | 'seen' }>) => this.#settle(record, index, event.detail.kept)}
      ></lark-rep-answer>
    </li>`;
  }

  #settle(record: DrillRecord, index: number, kept: 'clock' | 'seen'): void {
    if (!this.app) return;
    this.uncorrected = record;
    this.picked = index;
    this.#put(settleSeen(record, index, kept, this.app.act.instant()));
  }

  #correct(record: DrillRecord, index: number, outcome: Outcome): void {
    if (!this.app || record.reps[index]?.outcome === outcome) return;
    this.uncorrected = record;
    // What was corrected stays in sight, also when it is no longer doubtful.
    this.picked = index;
    this.#put(correctOutcome(record, index, outcome, this.app.act.instant()));
  }

  /** Why a short rep was let down. */
  #explain(record: DrillRecord, index: number, why: ShortReason | undefined): void {
    const rep = record.reps[index];
    if (!rep) return;
    const { why: _, ...rest } = rep;
    this.#put({ ...record, reps: record.reps.with(index, why === undefined ? rest : { ...rest, why }) });
  }

  readonly #undo = (): void => {
    if (this.uncorrected) this.#put(this.uncorrected);
    this.uncorrected = undefined;
  };

  #put(record: DrillRecord): void {
    const { app } = this;
    if (app) void app.act.putDrill({ ...record, editedAt: app.act.instant() });
  }

  #remove(record: DrillRecord): void {
    this.dispatchEvent(new CustomEvent('lark-remove', { detail: { record }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-drill-entry': LarkDrillEntry;
  }
}
