import { drillsByDay, monthBeside } from '@larkhold/engine';
import { tallestOf } from '@larkhold/ui';
import { formatDay, formatMonth, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { PlaceElement } from '../shell/place-element.ts';
import './lark-drill-entry.ts';

/**
 * The drills of a month, a row of strokes each, all on one scale: the newest day first.
 *
 * @prop month 'yyyy-mm'
 * @prop openId the drill that begins open
 * @event lark-month the month before was asked for; detail `{ month }`
 */
@customElement('month-drills')
export class MonthDrills extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      section {
        margin-top: var(--gap);
        padding-top: 0.4rem;
      }
      .day {
        display: grid;
        grid-template-columns: 4.3rem minmax(0, 1fr);
        border-bottom: 1px solid var(--rule);
      }
      h3 {
        padding: 0.85rem 0;
        color: var(--dim);
        font-size: var(--text-small);
        font-weight: 400;
        font-variant-numeric: tabular-nums;
      }
      .none {
        padding: 0.8rem 0;
      }
      .row {
        margin-top: 0.6rem;
      }
      /* Very large text, or an entry that is open on a phone: the day is above. */
      @media (max-width: 17rem) {
        .day {
          grid-template-columns: minmax(0, 1fr);
        }
        h3 {
          padding-bottom: 0;
        }
      }
      @media (max-width: 40rem) {
        .day:has([data-open]) {
          grid-template-columns: minmax(0, 1fr);
        }
        .day:has([data-open]) h3 {
          padding-bottom: 0;
        }
      }
    `,
  ];

  @property() month = '';
  @property({ attribute: false }) openId: string | undefined;

  override render() {
    const { app, month, openId } = this;
    if (!app || month === '') return nothing;
    const drills = app.view.journal.drills.filter(({ date }) => date.startsWith(month));
    const tallestMs = tallestOf(drills.flatMap(({ reps }) => reps));
    const before = monthBeside(month, -1);
    return html`<section aria-labelledby="rows">
      <h2 id="rows" class="visually-hidden">${say('month.rows')}</h2>
      ${drills.length === 0 ? html`<p class="none dim">${say('month.none')}</p>` : nothing}
      ${repeat(
        drillsByDay(drills),
        ({ day }) => day,
        (ofDay) => html`<div class="day">
          <h3>
            <span aria-hidden="true">${formatDay(ofDay.day, 'ofMonth')}</span
            ><span class="visually-hidden">${formatDay(ofDay.day, 'long')}</span>
          </h3>
          <div>
            ${repeat(
              ofDay.drills,
              ({ id }) => id,
              (record) =>
                html`<lark-drill-entry
                  .record=${record}
                  .tallestMs=${tallestMs}
                  .isOpen=${record.id === openId}
                ></lark-drill-entry>`,
            )}
          </div>
        </div>`,
      )}
      <div class="row">
        <button @click=${() => this.dispatchEvent(new CustomEvent('lark-month', { detail: { month: before } }))}>
          ${say('month.show', { month: formatMonth(before) })}
        </button>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'month-drills': MonthDrills;
  }
}
