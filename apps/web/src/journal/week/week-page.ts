import { dayNumber, type WeekPage } from '@larkhold/engine';
import { formatDay, pieces } from '@larkhold/words';
import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../../shell/app-context.ts';
import '../../shell/lark-notes.ts';
import '@larkhold/ui';
import { nothingDrawn, tableStyles } from '@larkhold/ui';
import { PlaceElement } from '../../shell/place-element.ts';
import { hrefOf } from '../../shell/routing.ts';
import './day-entry.ts';
import type { Kit } from '@larkhold/store';
import type { DayChange } from './day-entry.ts';
import '@larkhold/ui';
import { daysOfWeek, knownPlaces, mondayOfWeek, placeOfDay, shiftWeek, weekdayOf, weekListing } from '@larkhold/engine';
import { JournalKeeper } from './journal-keeper.ts';
import { weekPageStyles } from './week-page-styles.ts';
import './week-paper.ts';
import { type DaySummary, markDays, summarizeWeek, type WeekSummary } from '@larkhold/engine';
import { doneWords, planWords, say, spanWords, totalsLines, weekDoneWords, weekTitle } from '@larkhold/words';
import { typedIn } from '../../shell/typed-in.ts';

/** Weeks in the strip of days. */
const STRIP_WEEKS = 8;

/**
 * One week: its goal and focus, seven days planned and done, totals, and the review.
 *
 * @prop week ISO week; the week of today when it is absent or there is no such week
 * @prop day the day to open, ISO 8601; today's when it is absent
 */
@customElement('week-page')
export class WeekPageElement extends PlaceElement {
  static override styles = [...PlaceElement.styles, tableStyles, weekPageStyles];

  @property() week: string | undefined;
  @property() day: string | undefined;
  @state() private openDay: string | undefined;
  readonly #keeper = new JournalKeeper(this, () => this.app);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const isFirst = changed.has('app') && changed.get('app') === undefined;
    if (isFirst || changed.has('week') || changed.has('day')) this.openDay = this.day ?? this.app?.view.today;
  }

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { view } = app;
    const { weekStart } = view.kit;
    const thisWeek = weekListing(view.today, weekStart);
    const asked = this.week !== undefined && mondayOfWeek(this.week) !== undefined ? this.week : thisWeek;
    // A link names the ISO week; where the list begins on another day, the day may be on the page beside it.
    const week = this.day !== undefined && isDay(this.day) ? weekListing(this.day, weekStart) : asked;
    const page = this.#keeper.weekOf(week);
    const summary = summarizeWeek(view.journal, page, weekStart);
    return html`<div class="screen">
        ${this.#header(week, thisWeek, summary)} ${this.#focus(page, summary)}
        <div class="two">
          <div>${this.#days(app, summary)}</div>
          <div>
            ${this.#review(page, summary)} ${this.#totals(app, week, summary)} ${this.#aims(page, summary)}
            <p class="foot small">
              <a href="#/files">${say('files.title')}</a>
              <button class="quiet" @click=${() => window.print()}>${say('week.print')}</button>
            </p>
          </div>
        </div>
      </div>
      <week-paper .page=${page} .summary=${summary} .majorGoal=${this.#keeper.goal()}></week-paper>`;
  }

  #header(week: string, thisWeek: string, { days }: WeekSummary) {
    return html`<header>
      <div>
        <h1>${weekTitle(week)}</h1>
        <p class="dim small">${spanWords(
          days.map(({ date }) => date),
          'year',
        )}</p>
      </div>
      <div class="row" role="group" aria-label=${say('week.weeks')}>
        <a class="button" href="#/week/${shiftWeek(week, -1)}" aria-label=${say('week.before')}>←</a>
        ${week === thisWeek ? nothing : html`<a class="button" href="#/week/${thisWeek}">${say('week.thisWeek')}</a>`}
        <a class="button" href="#/week/${shiftWeek(week, 1)}" aria-label=${say('week.after')}>→</a>
      </div>
    </header>`;
  }

  #focus({ week }: WeekPage, summary: WeekSummary) {
    return html`<label class="field"
        >${say('week.focusOne')}<textarea
          class="focus low"
          rows="1"
          maxlength="400"
          autocomplete="off"
          .value=${summary.focus}
          @keydown=${noNewLine}
          @input=${(event: Event) => this.#keeper.changeWeek(week, { focus: typedIn(event).replace(/\s*\n\s*/g, ' ') })}
        ></textarea></label>
      ${summary.isFocusCarried ? html`<p class="dim small">${say('week.carried')}</p>` : nothing}`;
  }

  #aims(page: WeekPage, summary: WeekSummary) {
    const { week } = page;
    const majorGoal = this.#keeper.goal();
    return html`<div class="pair"><details>
        <summary>${pieces('week.focusSketch', { drawn: page.sketch ? html`<span class="dim">${say('week.drawn')}</span>` : nothing })}</summary>
        <lark-sketch-pad
          words=${say('week.sketchOfFocus')}
          .strokes=${page.sketch ?? nothingDrawn}
          @sketch-change=${({ detail }: CustomEvent<number[][]>) =>
            this.#keeper.changeWeek(week, { sketch: detail.length > 0 ? detail : undefined })}
        ></lark-sketch-pad>
      </details>
      <details>
        <summary>${say('week.notes')}</summary>
        <lark-notes .week=${week}></lark-notes>
      </details></div>
      <details>
        <summary>
          <span
            >${say('week.goals')}
            <span class="aims dim"
              >${[majorGoal, page.goal ?? '', planWords(summary) ?? ''].filter((words) => words.trim() !== '').join(' · ')}</span
            ></span
          >
        </summary>
        <label class="field"
          >${say('week.majorGoal')}<input
            maxlength="1000"
            autocomplete="off"
            .value=${majorGoal}
            @input=${(event: Event) => this.#keeper.changeGoal(typedIn(event))}
        /></label>
        <label class="field"
          >${say('week.goal')}<input
            maxlength="1000"
            autocomplete="off"
            .value=${page.goal ?? ''}
            @input=${(event: Event) => this.#keeper.changeWeek(week, { goal: typedIn(event) || undefined })}
        /></label>
        <p><a href="#/milestones">${say('week.milestones')}</a></p>
        <fieldset>
          <legend>${say('week.plannedDays')}</legend>
          <div class="plan">
            ${daysOfWeek(week, 'monday').map((date) => this.#planButton(week, date, summary.plannedDays))}
          </div>
        </fieldset>
      </details>`;
  }

  #planButton(week: string, date: string, planned: readonly number[]) {
    const weekday = weekdayOf(date);
    const isPlanned = planned.includes(weekday);
    const next = isPlanned ? planned.filter((one) => one !== weekday) : [...planned, weekday].sort((a, b) => a - b);
    return html`<button
      aria-pressed=${isPlanned ? 'true' : 'false'}
      aria-label="${formatDay(date, 'short').slice(0, 2)}, ${formatDay(date)}"
      @click=${() => this.#keeper.changeWeek(week, { plannedDays: next })}
    >
      ${formatDay(date, 'short').slice(0, 2)}
    </button>`;
  }

  #days(app: App, summary: WeekSummary) {
    return html`<section aria-labelledby="days">
      <h2 id="days" class="visually-hidden">${say('week.days')}</h2>
      <ol class="days">
        ${summary.days.map((day) => this.#day(app, day))}
      </ol>
      ${this.#opened(app, summary)}
    </section>`;
  }

  /** One of seven: its weekday, what was planned and done, and how it felt; pressed, the day opens below. */
  #day({ view }: App, day: DaySummary) {
    const { date, isPlanned, drills, entry } = day;
    const isOpen = this.openDay === date;
    const plan = isPlanned
      ? drills.length > 0
        ? say('week.plannedAndDone')
        : say('week.plannedHead')
      : drills.length > 0
        ? say('week.done')
        : '';
    const short = formatDay(date, 'short');
    return html`<li>
      <button
        class="day ${date === view.today ? 'today' : ''}"
        aria-expanded=${isOpen ? 'true' : 'false'}
        @click=${() => {
          this.openDay = isOpen ? undefined : date;
        }}
      >
        <span aria-hidden="true">${short.slice(0, 2)}</span>
        <span class="number" aria-hidden="true">${Number(date.slice(8))}</span>
        <span class="mark ${isPlanned ? 'planned' : ''} ${drills.length > 0 ? 'done' : ''} ${day.hasPain ? 'pain' : ''}" aria-hidden="true"></span>
        <span class="feel small dim" aria-hidden="true">${entry?.feel ?? ''}</span>
        <b class="visually-hidden">${formatDay(date)}</b>
        <span class="visually-hidden">${date === view.today ? say('week.isToday') : ''} ${day.hasPain ? say('week.hadPain', { plan }) : plan} · ${doneWords(day) ?? say('week.nothing')}</span>
      </button>
    </li>`;
  }

  #opened({ view }: App, summary: WeekSummary) {
    const day = summary.days.find(({ date }) => date === this.openDay);
    if (!day) return nothing;
    return html`<div class="opened">
      <div class="title">
        <h3>${formatDay(day.date)}</h3>
        <p class="what dim small">${doneWords(day) ?? say('week.nothing')}</p>
      </div>
      ${this.#openDay(view, day)}
    </div>`;
  }

  #openDay({ kit, today, journal }: App['view'], { date, drills }: DaySummary) {
    if (date > today) return html`<p class="open dim">${say('week.toCome')}</p>`;
    const entry = this.#keeper.dayOf(date);
    const place = placeOfDay(journal.days, entry);
    const elsewhere = ({ rangeCheckPlaces }: Pick<Kit, 'rangeCheckPlaces'>) =>
      rangeCheckPlaces.filter((one) => one !== place);
    return html`<div class="open">
      ${
        drills.length > 0
          ? html`<ul class="drills" aria-label=${say('week.drillsHead')}>
              ${drills.map(({ id, program }) => html`<li><a href=${hrefOf('journal', id)}>${program}</a></li>`)}
            </ul>`
          : nothing
      }
      <day-entry
        .entry=${entry}
        .units=${kit.units}
        .place=${place}
        .places=${knownPlaces(journal.days)}
        .checkedPlaces=${kit.rangeCheckPlaces}
        @day-change=${this.#changeDay}
        @range-check-dismiss=${() =>
          this.app?.act.changeKit((now) => ({ rangeCheckPlaces: [...elsewhere(now), place].slice(-20) }))}
        @range-check-show=${() => this.app?.act.changeKit((now) => ({ rangeCheckPlaces: elsewhere(now) }))}
      ></day-entry>
    </div>`;
  }

  readonly #changeDay = ({ detail }: CustomEvent<DayChange>): void => {
    this.#keeper.changeDay(detail.date, detail.changes);
  };

  #totals({ view }: App, week: string, summary: WeekSummary) {
    const isoDays = daysOfWeek(week, 'monday');
    const lastDay = daysOfWeek(week, view.kit.weekStart).at(-1) ?? view.today;
    const marks = markDays(view.journal, lastDay, STRIP_WEEKS * 7);
    return html`<details class="totals">
      <summary>
        <span class="short"><span id="totals">${say('week.totals')}</span> <span class="dim small">${weekDoneWords(summary) ?? say('week.nothing')}</span></span>
      </summary>
      ${view.kit.weekStart === 'monday' ? nothing : html`<p class="dim small">${say('week.ofIsoWeek', { span: spanWords(isoDays) })}</p>`}
      <table aria-labelledby="totals">
        <thead>
          <tr>
            <th scope="col"><span class="visually-hidden">${say('week.what')}</span></th>
            <th scope="col">${say('week.thisWeek')}</th>
            <th scope="col">${say('week.weekBefore')}</th>
          </tr>
        </thead>
        <tbody>
          ${totalsLines(summary).map(
            ({ name, now, before }) => html`<tr>
              <th scope="row">${name}</th>
              <td>${now}</td>
              <td>${before}</td>
            </tr>`,
          )}
        </tbody>
      </table>
      <day-strip .days=${marks}></day-strip>
      <p><a href="#/trends">${say('week.trends')}</a></p>
    </details>`;
  }

  #review(page: WeekPage, { carried: fromReview, isFocusCarried }: WeekSummary) {
    // Where it is this week's focus it is at the head of the page already.
    const carried = isFocusCarried ? undefined : fromReview;
    return html`<section aria-labelledby="review">
      <h2 id="review">${say('week.review')}</h2>
      ${carried ? html`<p class="carried"><span class="dim small">${say('week.fromReview')}</span><br />${carried}</p>` : nothing}
      ${page.comment ? html`<p class="carried comment"><span class="dim small">${say('week.coach')}</span><br />${page.comment}</p>` : nothing}
      ${this.#reviewField(page, 'wentRight', say('week.wentRight'))} ${this.#reviewField(page, 'needsWork', say('week.needsWork'))}
      ${this.#reviewField(page, 'carriedForward', say('week.intoNext'))}
    </section>`;
  }

  #reviewField(page: WeekPage, name: 'wentRight' | 'needsWork' | 'carriedForward', words: string) {
    return html`<label class="field inline"
      ><span>${words}</span><textarea
        class="low"
        maxlength=${name === 'carriedForward' ? 400 : 4000}
        .value=${page[name] ?? ''}
        @input=${(event: Event) => this.#keeper.changeWeek(page.week, { [name]: typedIn(event) || undefined })}
      ></textarea>
    </label>`;
  }
}

function isDay(text: string): boolean {
  try {
    dayNumber(text);
    return true;
  } catch {
    return false;
  }
}

/** The focus is one line of words: it grows, and takes no second one. */
function noNewLine(event: KeyboardEvent): void {
  if (event.key === 'Enter' && !event.isComposing) event.preventDefault();
}

declare global {
  interface HTMLElementTagNameMap {
    'week-page': WeekPageElement;
  }
}
