import {
  daysOfMonth,
  daysOfWeek,
  type MonthDay,
  type MonthWeek,
  monthBeside,
  monthsOf,
  weeksOfMonth,
} from '@larkhold/engine';
import { limbPath } from '@larkhold/ui';
import { formatDay, formatDuration, formatMonth, say, weekTitle } from '@larkhold/words';
import { html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { monthCalendarStyles } from './month-calendar-styles.ts';

/** A day's drawing in its own units: holds rise from the ground line, arrows hang below it. */
const BOX = { width: 16, ground: 40, height: 54 } as const;
const TALL = 32;
const LONG = 9;

/** The largest of the month: the one at full height. */
interface Most {
  heldMs: number;
  arrowsCount: number;
}

/**
 * A month as the archer lived it, a line of strokes for each week: each day's stroke is as tall as what was held, an arrow's shaft hangs below it
 * as long as the arrows were many, and pain is marked above. Each day leads to its page, each week to its own.
 *
 * @prop month the one that is shown, 'yyyy-mm'
 * @event lark-month the month before or after was asked for; detail `{ month }`
 */
@customElement('month-calendar')
export class MonthCalendar extends PlaceElement {
  static override styles = [...PlaceElement.styles, monthCalendarStyles];

  @property() month = '';

  override render() {
    const { app, month } = this;
    if (!app || month === '') return nothing;
    const { journal, today, kit } = app.view;
    const days = daysOfMonth(journal, month);
    const weeks = weeksOfMonth(days, kit.weekStart);
    const most = {
      heldMs: Math.max(1, ...days.map(({ heldMs }) => heldMs)),
      arrowsCount: Math.max(1, ...days.map(({ arrowsCount }) => arrowsCount)),
    };
    const { heldMs, arrowsCount } = sumOf(days);
    const drilled = days.filter((day) => day.heldMs > 0).length;
    const names = daysOfWeek(weeks[0]?.week ?? '', kit.weekStart).map((date) => formatDay(date, 'short').slice(0, 2));
    return html`<section aria-labelledby="month">
      <div class="top">
        <h2 id="month">${formatMonth(month)}</h2>
        <div class="row">
          <button aria-label=${say('month.before')} @click=${() => this.#turn(month, -1)}>←</button>
          <button aria-label=${say('month.after')} ?disabled=${month >= monthsOf(journal, today).last} @click=${() => this.#turn(month, 1)}>→</button>
        </div>
      </div>
      <p class="dim small" role="status">${say('month.sum', { ms: heldMs, arrows: arrowsCount, drilled })}</p>
      <div class="week names" aria-hidden="true">${names.map((name) => html`<span class="name">${name}</span>`)}</div>
      <ol>
        ${weeks.map((week) => this.#week(week, today, most))}
      </ol>
      <p class="dim small key">${say('month.key')}</p>
    </section>`;
  }

  #week({ week, days }: MonthWeek, today: string, most: Most): TemplateResult {
    const { heldMs, arrowsCount } = sumOf(days.filter((day) => day !== undefined));
    return html`<li class="week">
      ${days.map((day) => (day ? this.#day(day, week, today, most) : html`<span class="other"></span>`))}
      <a class="sum" href=${`#/week/${week}`}>
        <span>${weekTitle(week)}</span>
        ${heldMs > 0 ? html`<b>${formatDuration(heldMs)}</b>` : nothing}
        ${arrowsCount > 0 ? html`<span class="dim">${say('month.arrows', { n: arrowsCount })}</span>` : nothing}
      </a>
    </li>`;
  }

  #day({ date, heldMs, arrowsCount, hasPain }: MonthDay, week: string, today: string, most: Most): TemplateResult {
    const said = say('month.day', {
      day: date,
      held: heldMs > 0 ? formatDuration(heldMs) : say('month.nothing'),
      arrows: arrowsCount,
      pain: hasPain ? 'yes' : 'other',
    });
    const tall = heldMs > 0 ? Math.max(5, (heldMs / most.heldMs) * TALL) : 0;
    return html`<a class="day" href=${`#/week/${week}/${date}`} aria-current=${date === today ? 'date' : nothing}>
      <span class="visually-hidden">${said}</span>
      <svg viewBox="0 0 ${BOX.width} ${BOX.height}" aria-hidden="true">
        ${tall > 0 ? svg`<path class="held" d=${limbPath(BOX.width / 2, BOX.ground, tall)}></path>` : nothing}
        ${arrowsCount > 0 ? svg`<path class="arrows" d=${shaft(Math.max(4, (arrowsCount / most.arrowsCount) * LONG))}></path>` : nothing}
        ${hasPain ? svg`<path class="pain" d=${painMark(BOX.ground - tall - 4)}></path>` : nothing}
      </svg>
      <span class="date" aria-hidden="true">${Number(date.slice(8))}</span>
    </a>`;
  }

  #turn(month: string, by: 1 | -1): void {
    this.dispatchEvent(new CustomEvent('lark-month', { detail: { month: monthBeside(month, by) } }));
  }
}

/** An arrow that hangs from the ground, its fletching at the end. */
function shaft(long: number): string {
  const [x, top] = [BOX.width / 2, BOX.ground + 1];
  const end = top + long;
  return `M${x} ${top}V${end}M${x - 2} ${end + 0.5}l2 -2l2 2`;
}

/** A cross above the stroke. */
function painMark(y: number): string {
  const x = BOX.width / 2 + 1;
  return `M${x - 2.5} ${y - 2.5}l5 5M${x + 2.5} ${y - 2.5}l-5 5`;
}

function sumOf(days: readonly MonthDay[]): Most {
  return {
    heldMs: days.reduce((sum, day) => sum + day.heldMs, 0),
    arrowsCount: days.reduce((sum, day) => sum + day.arrowsCount, 0),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'month-calendar': MonthCalendar;
  }
}
