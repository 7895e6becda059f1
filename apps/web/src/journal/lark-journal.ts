import { DEMO_PREFIX, type DrillRecord, lastBegun, monthsOf } from '@larkhold/engine';
import { larkMark } from '@larkhold/ui';
import { ribbonWords, say } from '@larkhold/words';
import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import './load/load-summary.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { removedNotices } from '../shell/removed-notices.ts';
import { hrefOf } from '../shell/routing.ts';
import './month-calendar.ts';
import './month-drills.ts';
import './year-strip.ts';

/**
 * The diary, a month at a time: its calendar, its drills as rows of strokes, and every other month at a press.
 *
 * @prop openId the drill that begins open; its month is shown
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
      .empty {
        margin-top: calc(var(--gap) * 1.5);
        max-width: 34rem;
      }
      .empty p + p,
      .empty .row + p {
        margin-top: 0.6rem;
      }
      .row,
      .notice {
        margin-top: var(--gap);
      }
      /* On a phone the months are between here and their drills: the last one is at the top. */
      .last {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr);
        gap: 0.8rem;
        align-items: center;
        min-height: var(--touch);
        margin-top: 0.3rem;
        padding: 0.2rem 0;
        border-bottom: 1px solid var(--rule);
        text-decoration: none;
      }
      @media (max-width: 40rem) {
        header .button {
          flex: 1 1 40%;
        }
      }
      @media (min-width: 68rem) {
        .last {
          display: none;
        }
      }
      /* A wide screen: the month on the left, its drills beside it. */
      @media (min-width: 68rem) {
        .columns {
          display: grid;
          grid-template-columns: minmax(0, 30rem) minmax(0, 1fr);
          gap: 0 calc(var(--gap) * 2.5);
          align-items: start;
        }
        .calendar {
          position: sticky;
          top: 1rem;
        }
      }
    `,
  ];

  @property({ attribute: false }) openId: string | undefined;
  /** The month that was chosen, and the drill that was to be open then: another one to open shows its own month. */
  @state() private chosen: { month: string; openId: string | undefined } | undefined;

  #shownId: string | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { journal } = app.view;
    if (journal.drills.length === 0) return html`${this.#empty(app)}${removedNotices(app, 'drill')}`;
    const month = this.#month(app);
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
          ? html`<div class="notice"><div class="said">
              <p>${say('journal.demoIn')}</p>
              <button @click=${() => app.act.removeDemo()}>${say('journal.removeDemo')}</button>
            </div></div>`
          : nothing
      }
      ${removedNotices(app, 'drill')}
      ${this.#last(journal.drills)}
      <div class="columns" @lark-remove=${this.#remove}>
        <div class="calendar">
          <year-strip .month=${month} @lark-month=${this.#choose}></year-strip>
          <month-calendar .month=${month} @lark-month=${this.#choose}></month-calendar>
          <load-summary></load-summary>
        </div>
        <month-drills .month=${month} .openId=${this.openId} @lark-month=${this.#showAbove}></month-drills>
      </div>`;
  }

  #last(drills: readonly DrillRecord[]) {
    const last = lastBegun(drills);
    if (!last) return nothing;
    const { id, date, reps } = last;
    return html`<a class="last" href=${hrefOf('journal', id)} @click=${() => this.openId === id && this.#toOpened(id)}>
      <span class="dim small">${say('journal.last', { day: date })}</span>
      <lark-hold-ribbon .reps=${reps} .unit=${0.05} words=${ribbonWords(reps)}></lark-hold-ribbon>
    </a>`;
  }

  /** A drill that was asked for by its address is on the screen, however long the month above it is. */
  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    if (this.openId === undefined) this.#shownId = undefined;
    else if (this.app && this.#shownId !== this.openId) void this.#toOpened(this.openId);
  }

  async #toOpened(id: string): Promise<void> {
    const drills = this.renderRoot.querySelector('month-drills');
    await drills?.updateComplete;
    const entry = [...(drills?.renderRoot.querySelectorAll('lark-drill-entry') ?? [])].find(
      ({ record }) => record?.id === id,
    );
    if (!entry) return;
    this.#shownId = id;
    await entry.updateComplete;
    entry.scrollIntoView({ block: 'start' });
  }

  #month({ view: { journal, today } }: App): string {
    if (this.chosen && this.chosen.openId === this.openId) return this.chosen.month;
    const opened = journal.drills.find(({ id }) => id === this.openId);
    return opened?.date.slice(0, 7) ?? monthsOf(journal, today).newest;
  }

  readonly #choose = ({ detail: { month } }: CustomEvent<{ month: string }>): void => {
    this.chosen = { month, openId: this.openId };
  };

  /** The month before, asked for below the last row, is read from its top. */
  readonly #showAbove = async (event: CustomEvent<{ month: string }>): Promise<void> => {
    this.#choose(event);
    await this.updateComplete;
    const heading = this.renderRoot.querySelector('year-strip');
    heading?.scrollIntoView({ block: 'start' });
    heading?.renderRoot.querySelector<HTMLElement>('[aria-pressed=true]')?.focus({ preventScroll: true });
  };

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
