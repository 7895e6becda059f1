import { correctOutcome, type DrillRecord, type Outcome, type RepRecord } from '@larkhold/engine';
import { drillWords, formatSeconds, formatTimeOfDay, formatWeight, placeOfRep } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';

const outcomes: readonly { outcome: Outcome; words: string }[] = [
  { outcome: 'held', words: 'Held' },
  { outcome: 'short', words: 'Short' },
  { outcome: 'skipped', words: 'Skipped' },
  { outcome: 'unsure', words: 'Unsure' },
];

/**
 * One drill in the journal: a line when folded, rep by rep when open. A wrong outcome is put right in one press.
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
      .strip {
        display: flex;
        flex-wrap: wrap;
        gap: 3px 4px;
        margin-top: 0.35rem;
        color: var(--dim);
        font-size: 0.8rem;
        line-height: 1;
      }
      .reps li {
        display: grid;
        grid-template-columns: minmax(6.5rem, 1fr) minmax(0, auto);
        gap: 0.3rem 1rem;
        align-items: center;
        padding: 0.55rem 0;
        border-top: 1px solid var(--rule);
      }
      .outcomes {
        display: flex;
        flex-wrap: wrap;
        gap: 0.3rem;
      }
      .outcomes button {
        padding: 0.3rem 0.6rem;
        font-size: var(--text-small);
        font-weight: 500;
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
      @media (max-width: 36rem) {
        .reps li {
          grid-template-columns: 1fr;
        }
        .outcomes button {
          flex: 1 1 auto;
          padding-inline: 0.2rem;
        }
      }
    `,
  ];

  @property({ attribute: false }) record: DrillRecord | undefined;
  @property({ type: Boolean }) isOpen = false;
  @state() private isUnfolded = false;
  @state() private uncorrected: DrillRecord | undefined;

  override render() {
    const { record, app } = this;
    if (!record || !app) return nothing;
    const time = formatTimeOfDay(record.startedAt);
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
              record.effort === undefined ? '' : `effort ${record.effort} of 10`,
              record.pain ? 'pain' : '',
              record.open ? 'not closed' : '',
            ]
              .filter((part) => part !== '')
              .join(' · ')}</span
          >
        </span>
      </summary>
      ${this.isUnfolded || this.isOpen ? this.#inside(record) : nothing}
    </details>`;
  }

  #inside(record: DrillRecord) {
    const units = this.app?.view.kit.units ?? 'metric';
    return html`${
      this.uncorrected
        ? html`<div class="row undo" role="status"><span>Put right.</span><button @click=${this.#undo}>Undo</button></div>`
        : nothing
    }
      <ol class="reps">
        ${record.reps.map((rep, index) => this.#rep(record, rep, index))}
      </ol>
      ${record.onFingersLbf === undefined ? nothing : html`<p class="dim small">On the fingers: ${formatWeight(record.onFingersLbf, units)}</p>`}
      <fieldset>
        <legend>Effort, 0 to 10</legend>
        <select
          aria-label="Effort"
          .value=${record.effort === undefined ? '' : String(record.effort)}
          @change=${(event: Event) => {
            if (event.target instanceof HTMLSelectElement) {
              this.#put({ ...record, effort: event.target.value === '' ? undefined : Number(event.target.value) });
            }
          }}
        >
          <option value="" ?selected=${record.effort === undefined}>not said</option>
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
        />There was pain
      </label>
      <label class="note"
        ><span class="label">Note</span>
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
        <button class="quiet" @click=${() => this.#remove(record)}>Remove this drill</button>
      </div>`;
  }

  #rep(record: DrillRecord, rep: RepRecord, index: number) {
    const place = placeOfRep(rep, record);
    return html`<li>
      <span>${place} <span class="dim numbers">${formatSeconds(rep.heldMs)} of ${formatSeconds(rep.prescribedMs)}</span></span>
      <span class="outcomes" role="group" aria-label=${place}>
        ${outcomes.map(
          ({ outcome, words }) => html`<button
            aria-pressed=${rep.outcome === outcome ? 'true' : 'false'}
            @click=${() => this.#correct(record, index, outcome)}
          >
            ${words}
          </button>`,
        )}
      </span>
    </li>`;
  }

  #correct(record: DrillRecord, index: number, outcome: Outcome): void {
    if (!this.app || record.reps[index]?.outcome === outcome) return;
    this.uncorrected = record;
    this.#put(correctOutcome(record, index, outcome, this.app.act.instant()));
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
