import type { DrillRecord } from '@larkhold/engine';
import { DEMO_PREFIX } from '@larkhold/engine';
import { formatDayFrom } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { App } from '../shell/app-context.ts';
import '@larkhold/ui';
import './load/load-summary.ts';
import { drillsByDay } from '@larkhold/engine';
import { PlaceElement } from '../shell/place-element.ts';
import { hrefOf } from '../shell/routing.ts';
import { saveJournal } from '../shell/save-journal.ts';
import './lark-drill-entry.ts';

/** Days shown at first, and more at each press. */
const DAYS_SHOWN = 30;

/**
 * The diary: what was done, newest first, rep by rep.
 *
 * @prop openId the drill that begins open
 */
@customElement('lark-journal')
export class LarkJournal extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      header {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
      }
      h1 {
        flex-basis: 100%;
      }
      lark-day-strip {
        margin-top: var(--gap);
      }
      .day {
        margin-top: calc(var(--gap) * 1.3);
        padding-bottom: 0.45rem;
        border-bottom: 2px solid var(--faint);
        font-size: var(--text);
      }
      .empty {
        margin-top: calc(var(--gap) * 1.5);
        max-width: 34rem;
      }
      .empty p + p {
        margin-top: 0.6rem;
      }
      .row,
      .notice {
        margin-top: var(--gap);
      }
    `,
  ];

  @property({ attribute: false }) openId: string | undefined;
  @state() private daysShown = DAYS_SHOWN;
  @state() private removed: DrillRecord | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { journal, today } = app.view;
    if (journal.drills.length === 0) return this.#empty(app);
    const days = drillsByDay(journal.drills);
    const opened = days.findIndex(({ drills }) => drills.some(({ id }) => id === this.openId));
    const shown = days.slice(0, Math.max(this.daysShown, opened + 1));
    const hasDemo = journal.drills.some(({ id }) => id.startsWith(DEMO_PREFIX));
    return html`<header>
        <h1>Journal</h1>
        <a class="button" href="#/week">This week</a>
        <a class="button" href="#/trends">Trends</a>
        <a class="button" href="#/milestones">Milestones</a>
        <button @click=${() => saveJournal(app)}>Save as a file</button>
      </header>
      ${
        hasDemo
          ? html`<div class="notice">
              <p>The demo journal is in here: half a year of an invented archer.</p>
              <button @click=${() => app.act.removeDemo()}>Remove the demo journal</button>
            </div>`
          : nothing
      }
      ${
        this.removed
          ? html`<div class="notice" role="status">
              <p>Removed: ${this.removed.program}.</p>
              <button @click=${this.#bringBack}>Undo</button>
            </div>`
          : nothing
      }
      <lark-day-strip .journal=${journal} .today=${today}></lark-day-strip>
      <load-summary></load-summary>
      <div @lark-remove=${this.#remove}>
        ${repeat(
          shown,
          ({ day }) => day,
          ({ day, drills }) => html`<h2 class="day">${formatDayFrom(day, today)}</h2>
            ${repeat(
              drills,
              ({ id }) => id,
              (record) =>
                html`<lark-drill-entry .record=${record} .isOpen=${record.id === this.openId}></lark-drill-entry>`,
            )}`,
        )}
      </div>
      ${
        shown.length < days.length
          ? html`<div class="row">
              <button
                @click=${() => {
                  this.daysShown = shown.length + DAYS_SHOWN;
                }}
              >
                Earlier days
              </button>
            </div>`
          : nothing
      }`;
  }

  #empty({ act }: App) {
    return html`<h1>Journal</h1>
      <div class="empty">
        <p>Nothing yet. Every hold you do is written here by itself, and tomorrow's numbers come from it.</p>
        <div class="row">
          <a class="button" href=${hrefOf('line')}>To the line</a>
          <a class="button" href="#/week">Write down a day</a>
          <button @click=${() => act.loadDemo()}>Load a demo journal</button>
        </div>
        <p class="dim small">The demo is half a year of an invented archer. It can be removed again.</p>
      </div>`;
  }

  readonly #remove = (event: CustomEvent<{ record: DrillRecord }>): void => {
    this.removed = event.detail.record;
    void this.app?.act.removeDrills([event.detail.record.id]);
  };

  readonly #bringBack = (): void => {
    const { removed, app } = this;
    this.removed = undefined;
    if (removed && app) void app.act.putDrill({ ...removed, editedAt: app.act.instant() });
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-journal': LarkJournal;
  }
}
