import { type DayEntry, dayNumber, dayOfNumber, type Journal, weekListing } from '@larkhold/engine';
import { limbPath } from '@larkhold/ui';
import { formatDay, formatDuration, presentWords, say } from '@larkhold/words';
import { css, html, nothing, svg } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';

/** What a day of the calendar shows. */
interface MonthDay {
  date: string;
  heldMs: number;
  arrowsCount: number;
  hasPain: boolean;
}

const WEEK_DAYS = 7;
const TALL = 30;
/** Day numbers of a Monday, a Saturday and a Sunday; weeks are counted from them. */
const starts = { monday: dayNumber('2024-01-01'), saturday: dayNumber('2024-01-06'), sunday: dayNumber('2024-01-07') };

/** A month as the archer lived it: for each day a stroke as tall as what was held, its arrows, and whether there was pain. Each day leads to its page. */
@customElement('month-calendar')
export class MonthCalendar extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      :host {
        margin-top: var(--gap);
      }
      .top {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem 0.8rem;
        align-items: center;
        justify-content: space-between;
      }
      .days {
        display: grid;
        grid-template-columns: repeat(7, minmax(0, 1fr));
        gap: 2px;
        margin-top: 0.6rem;
      }
      .name {
        color: var(--dim);
        font-size: 0.8rem;
        text-align: center;
      }
      a {
        display: grid;
        grid-template-rows: auto 2rem minmax(1.2em, auto);
        justify-items: center;
        min-height: 4.6rem;
        padding: 0.2rem 0;
        border-bottom: 1px solid var(--rule);
        font-size: 0.8rem;
        line-height: 1.2;
        text-decoration: none;
        font-variant-numeric: tabular-nums;
      }
      a:hover {
        background: var(--raised);
      }
      a[aria-current] .date {
        border-bottom: 3px solid var(--accent);
      }
      .date {
        color: var(--dim);
      }
      svg {
        height: 2rem;
        width: 1rem;
        overflow: visible;
      }
      path {
        fill: var(--ink);
      }
      .pain {
        font-weight: 700;
        border-bottom: 2px solid currentColor;
      }
      .done {
        overflow-wrap: anywhere;
        text-align: center;
      }
      @media (max-width: 30rem) {
        .arrows {
          display: none;
        }
      }
    `,
  ];

  /** The month that is shown, 'yyyy-mm'; the present one where none was chosen. */
  @state() private month: string | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { journal, today, kit } = app.view;
    const month = this.month ?? today.slice(0, 7);
    const days = daysOf(journal, month);
    const mostMs = Math.max(1, ...days.map(({ heldMs }) => heldMs));
    const first = dayNumber(`${month}-01`);
    const lead = (first - starts[kit.weekStart] + WEEK_DAYS * 100_000) % WEEK_DAYS;
    const heldMs = days.reduce((sum, day) => sum + day.heldMs, 0);
    const arrows = days.reduce((sum, day) => sum + day.arrowsCount, 0);
    const at = (index: number) => dayOfNumber(first - lead + index);
    const name = monthName(month);
    return html`<section aria-labelledby="month">
      <div class="top">
        <h2 id="month">${name}</h2>
        <div class="row">
          <button class="quiet" @click=${() => this.#turn(month, -1)}>${say('month.before')}</button>
          <button class="quiet" ?disabled=${month >= today.slice(0, 7)} @click=${() => this.#turn(month, 1)}>${say('month.after')}</button>
        </div>
      </div>
      <p class="dim small" role="status">${say('month.sum', { ms: heldMs, arrows, drilled: days.filter((day) => day.heldMs > 0).length })}</p>
      <div class="days">
        ${Array.from({ length: WEEK_DAYS }, (_, index) => html`<span class="name" aria-hidden="true">${formatDay(at(index), 'short').slice(0, 2)}</span>`)}
        ${Array.from({ length: lead }, () => html`<span></span>`)}
        ${days.map((day) => this.#day(day, today, mostMs, weekListing(day.date, kit.weekStart)))}
      </div>
    </section>`;
  }

  #day({ date, heldMs, arrowsCount, hasPain }: MonthDay, today: string, mostMs: number, week: string) {
    const held = heldMs > 0 ? formatDuration(heldMs) : '';
    const said = say('month.day', {
      day: date,
      held: held === '' ? say('month.nothing') : held,
      arrows: arrowsCount,
      pain: hasPain ? 'yes' : 'other',
    });
    return html`<a
      href=${`#/week/${week}/${date}`}
      aria-current=${date === today ? 'date' : nothing}
      ><span class="visually-hidden">${said}</span><span class="date" aria-hidden="true">${Number(date.slice(8))}</span>
      <svg viewBox="0 0 12 32" aria-hidden="true">
        ${heldMs > 0 ? svg`<path d=${limbPath(6, 32, Math.max(5, (heldMs / mostMs) * TALL))}></path>` : nothing}
      </svg>
      <span class="done" aria-hidden="true"
        >${hasPain ? html`<span class="pain">!</span> ` : nothing}${
          arrowsCount > 0 ? html`<span class="arrows">${say('month.arrows', { n: arrowsCount })}</span>` : nothing
        }</span
      ></a
    >`;
  }

  #turn(month: string, by: 1 | -1): void {
    const middle = dayNumber(`${month}-15`) + by * 30;
    this.month = dayOfNumber(middle).slice(0, 7);
  }
}

function daysOf({ drills, days }: Journal, month: string): MonthDay[] {
  const first = dayNumber(`${month}-01`);
  const entries = new Map<string, DayEntry>(
    days.filter(({ date }) => date.startsWith(month)).map((day) => [day.date, day]),
  );
  const ofMonth = drills.filter(({ date }) => date.startsWith(month));
  return Array.from({ length: 31 }, (_, index) => dayOfNumber(first + index))
    .filter((date) => date.startsWith(month))
    .map((date) => {
      const here = ofMonth.filter((drill) => drill.date === date);
      const entry = entries.get(date);
      return {
        date,
        heldMs: here.reduce((sum, { reps }) => sum + reps.reduce((all, { heldMs }) => all + heldMs, 0), 0),
        arrowsCount: (entry?.arrows ?? []).reduce((sum, { count }) => sum + count, 0),
        hasPain: entry?.pain === true || here.some(({ pain }) => pain === true),
      };
    });
}

function monthName(month: string): string {
  const at = new Date(`${month}-15T00:00:00Z`);
  return new Intl.DateTimeFormat(presentWords().locale, { month: 'long', year: 'numeric', timeZone: 'UTC' }).format(at);
}

declare global {
  interface HTMLElementTagNameMap {
    'month-calendar': MonthCalendar;
  }
}
