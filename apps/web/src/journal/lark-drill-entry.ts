import {
  correctOutcome,
  correctWhy,
  type DrillRecord,
  type Outcome,
  type RepRecord,
  settleSeen,
} from '@larkhold/engine';
import { isAsAsked, type ShortReason } from '@larkhold/ui';
import { drillWords, formatTimeOfDay, formatWeight, placeOfRep, ribbonWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { painAnswer } from '../shell/pain-answer.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { typedIn } from '../shell/typed-in.ts';

/** Reps that a ribbon has in one row: rows of the same height are on the same scale. */
const ONE_ROW = 40;

/**
 * One drill in the journal: its ribbon when folded; when open, the reps that did not go as asked, and any other at a press on its stroke. A
 * wrong outcome is corrected in one press.
 *
 * @prop record the drill
 * @prop isOpen begins open
 * @prop tallestMs the hold that gets full height when it is folded, milliseconds: rows below each other share it
 */
@customElement('lark-drill-entry')
export class LarkDrillEntry extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      details {
        border-top: 0;
      }
      summary {
        min-height: var(--touch);
        padding: 0.25rem 0;
      }
      .line {
        display: flex;
        flex: 1;
        flex-wrap: wrap;
        gap: 0.15rem 0.8rem;
        align-items: center;
        min-width: 0;
      }
      .name {
        flex: 1 1 6.5rem;
        min-width: 0;
        line-height: 1.25;
        overflow-wrap: anywhere;
      }
      .flag {
        font-size: var(--text-small);
        font-weight: 400;
      }
      .flag.pain {
        color: var(--accent);
        font-weight: 650;
      }
      .line lark-hold-ribbon {
        flex: 1 1 6.5rem;
        max-width: 22rem;
        --ribbon-beside: 0;
      }
      lark-hold-ribbon[fills] {
        height: 2.3rem;
      }
      :host(:not(:first-child)) details {
        border-top: 1px solid var(--rule);
      }
      .reps li {
        border-top: 1px solid var(--rule);
      }
      .facts {
        margin-bottom: 0.5rem;
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
  @property({ attribute: false }) tallestMs: number | undefined;
  @state() private isUnfolded = false;
  @state() private picked: number | undefined;
  @state() private uncorrected: DrillRecord | undefined;

  override render() {
    const { record, app } = this;
    if (!record || !app) return nothing;
    const isOpen = this.isUnfolded || this.isOpen;
    return html`<details
      ?open=${this.isOpen}
      @toggle=${(event: Event) => {
        if (!(event.target instanceof HTMLDetailsElement)) return;
        this.isUnfolded = event.target.open;
        this.toggleAttribute('data-open', this.isUnfolded);
      }}
    >
      <summary>
        <span class="line">
          <span class="name"
            >${record.program} ${record.pain ? html`<span class="flag pain">${say('journal.pain')}</span>` : nothing}
            ${record.open ? html`<span class="flag dim">${say('journal.notClosed')}</span>` : nothing}</span
          >
          ${
            isOpen
              ? nothing
              : html`<lark-hold-ribbon
                  ?fills=${record.reps.length <= ONE_ROW}
                  .reps=${record.reps}
                  .tallestMs=${this.tallestMs}
                  .unit=${0.05}
                  words=${ribbonWords(record.reps)}
                ></lark-hold-ribbon>`
          }
        </span>
      </summary>
      ${isOpen ? this.#inside(record) : nothing}
    </details>`;
  }

  #inside(record: DrillRecord) {
    const units = this.app?.view.kit.units ?? 'metric';
    const effort = record.effort === undefined ? [] : [say('journal.effortOf', { effort: record.effort })];
    const facts = [formatTimeOfDay(record.startedAt), ...effort, drillWords(record)];
    return html`<p class="facts dim small">${facts.join(' · ')}</p>
    ${
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
            const effort = typedIn(event);
            this.#put({ ...record, effort: effort === '' ? undefined : Number(effort) });
          }}
        >
          <option value="" ?selected=${record.effort === undefined}>${say('journal.notSaid')}</option>
          ${Array.from({ length: 11 }, (_, effort) => html`<option value=${effort} ?selected=${record.effort === effort}>${effort}</option>`)}
        </select>
      </fieldset>
      <fieldset class="pain">
        <legend>${say('after.pain')}</legend>
        <p class="dim small">${say('after.painMeans')}</p>
        ${painAnswer(record.pain, (pain) => this.#put({ ...record, pain }))}
      </fieldset>
      <label class="note"
        ><span class="label">${say('journal.note')}</span>
        <textarea
          maxlength="4000"
          .value=${record.note ?? ''}
          @change=${(event: Event) => {
            this.#put({ ...record, note: typedIn(event).trim() || undefined });
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
    if (this.app) this.#put(correctWhy(record, index, why, this.app.act.instant()));
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
