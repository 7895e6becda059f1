import type { DrillRecord } from '@larkhold/engine';
import { DEMO_PREFIX } from '@larkhold/engine';
import { larkMark } from '@larkhold/ui';
import { formatDayFrom, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { App } from '../shell/app-context.ts';
import './load/load-summary.ts';
import { drillsByDay } from '@larkhold/engine';
import { PlaceElement } from '../shell/place-element.ts';
import { removedNotices } from '../shell/removed-notices.ts';
import { hrefOf } from '../shell/routing.ts';
import './lark-drill-entry.ts';
import './month-calendar.ts';

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

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { journal, today } = app.view;
    if (journal.drills.length === 0) return html`${this.#empty(app)}${removedNotices(app, 'drill')}`;
    const days = drillsByDay(journal.drills);
    const opened = days.findIndex(({ drills }) => drills.some(({ id }) => id === this.openId));
    const shown = days.slice(0, Math.max(this.daysShown, opened + 1));
    const hasDemo = journal.drills.some(({ id }) => id.startsWith(DEMO_PREFIX));
    return html`<header>
        <h1>${say('journal.journal')}</h1>
        <a class="button" href="#/week">${say('journal.thisWeek')}</a>
        <a class="button" href="#/trends">${say('journal.trends')}</a>
        <a class="button" href="#/milestones">${say('journal.milestones')}</a>
        <a class="button" href="#/files">${say('files.title')}</a>
      </header>
      ${
        hasDemo
          ? html`<div class="notice">
              <p>${say('journal.demoIn')}</p>
              <button @click=${() => app.act.removeDemo()}>${say('journal.removeDemo')}</button>
            </div>`
          : nothing
      }
      ${removedNotices(app, 'drill')}
      <month-calendar></month-calendar>
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
                ${say('journal.earlier')}
              </button>
            </div>`
          : nothing
      }`;
  }

  #empty({ act }: App) {
    return html`<h1>${say('journal.journal')}</h1>
      <div class="empty">
        ${larkMark()}
        <p>${say('journal.empty')}</p>
        <div class="row">
          <a class="button" href=${hrefOf('line')}>${say('journal.toLine')}</a>
          <a class="button" href="#/week">${say('journal.writeDay')}</a>
          <button @click=${() => act.loadDemo()}>${say('journal.loadDemo')}</button>
        </div>
        <p class="dim small">${say('journal.demoAbout')}</p>
      </div>`;
  }

  readonly #remove = (event: CustomEvent<{ record: DrillRecord }>): void => {
    void this.app?.act.removeDrills([event.detail.record.id]);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-journal': LarkJournal;
  }
}
