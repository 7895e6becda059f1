import type { DaySummary, WeekPage, WeekSummary } from '@larkhold/engine';
import { larkMark } from '@larkhold/ui';
import { doneWords, formatDay, say, spanWords, totalsLines, weekTitle } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';

/** The longest focus that fits on one line when it is printed large, characters. */
const SHORT_FOCUS = 32;

/**
 * The week for the wall: one A4 or Letter page, black on white. Long texts are cut off, so that it stays one page; what is not yet written
 * gets lines to write on.
 *
 * @prop page the week's page
 * @prop summary what was planned and done
 * @prop majorGoal in the archer's own words
 */
@customElement('week-paper')
export class WeekPaper extends LitElement {
  static override styles = css`
    :host {
      display: block;
      background: #fff;
      color: #000;
    }
    /* With every text at its longest this fits on Letter (279 mm high) between the margins that browsers print with; with little on it, it fills the sheet. */
    .lark-mark {
      position: absolute;
      top: 0;
      right: 2mm;
      width: 15mm;
      height: auto;
      --accent: #777;
      --ground: #fff;
    }
    article {
      position: relative;
      display: flex;
      flex-direction: column;
      box-sizing: border-box;
      min-height: 240mm;
      max-width: 190mm;
      margin: 0 auto;
      padding: 0 2mm;
      font-size: 10.5pt;
      line-height: 1.25;
    }
    h1,
    h2,
    p,
    dl,
    dd {
      margin: 0;
    }
    h1 {
      font-size: 20pt;
    }
    h2 {
      margin-top: 3mm;
      font-size: 10.5pt;
      font-weight: 700;
    }
    .top {
      display: flex;
      gap: 5mm;
      align-items: end;
    }
    .top > div {
      flex: 1;
      min-width: 0;
    }
    lark-hold-ribbon {
      --ribbon-ink: #000;
      --faint: #777;
    }
    lark-sketch-pad {
      --ink: #000;
      --raised: #fff;
      --faint: #777;
      flex: none;
      width: 30mm;
    }
    .focus {
      margin-top: 2mm;
      padding: 2.5mm 3mm;
      border: 1.5pt solid #000;
      font-size: 16pt;
      font-weight: 700;
    }
    .focus.short {
      font-size: 24pt;
    }
    .text {
      display: -webkit-box;
      overflow: hidden;
      -webkit-box-orient: vertical;
      -webkit-line-clamp: 3;
      overflow-wrap: anywhere;
    }
    .focus .text,
    .goal .text {
      -webkit-line-clamp: 2;
    }
    .blank {
      flex: 1 1 10mm;
      min-height: 10mm;
      max-height: 20mm;
      border-bottom: 0.5pt solid #777;
    }
    table {
      width: 100%;
      margin-top: 3mm;
      border-collapse: collapse;
    }
    th,
    td {
      padding: 1mm;
      border-bottom: 0.5pt solid #777;
      text-align: left;
      vertical-align: top;
      font-weight: 400;
    }
    .days {
      flex: 1 0 auto;
    }
    .days :is(th, td) {
      padding-top: 1.5mm;
    }
    .days th {
      width: 30mm;
      white-space: nowrap;
      font-weight: 700;
    }
    .days td:nth-child(2) {
      width: 24mm;
      font-size: 13pt;
      line-height: 1;
    }
    .days .text {
      -webkit-line-clamp: 2;
      font-size: 10pt;
    }
    .totals :is(th, td):not(:first-child) {
      text-align: right;
    }
    .totals thead th {
      font-size: 9pt;
    }
  `;

  @property({ attribute: false }) page: WeekPage | undefined;
  @property({ attribute: false }) summary: WeekSummary | undefined;
  @property({ attribute: false }) majorGoal = '';

  override render() {
    const { page, summary } = this;
    if (!page || !summary) return nothing;
    const totals = totalsLines(summary);
    return html`<article>
      ${larkMark()}
      <h1>${weekTitle(page.week)}</h1>
      <p>${spanWords(
        summary.days.map(({ date }) => date),
        'year',
      )}</p>
      <div class="top">
        <div>${this.#part(say('week.majorGoal'), this.majorGoal, 'goal')} ${this.#part(say('week.goal'), page.goal, 'goal')}</div>
        ${
          page.sketch
            ? html`<lark-sketch-pad isFixed words=${say('week.sketchOfFocus')} .strokes=${page.sketch}></lark-sketch-pad>`
            : nothing
        }
      </div>
      ${this.#part(say('week.focus'), summary.focus, summary.focus.length <= SHORT_FOCUS ? 'focus short' : 'focus')}
      <table class="days">
        <tbody>
          ${summary.days.map(
            (day) => html`<tr>
              <th scope="row">${formatDay(day.date, 'short')}</th>
              <td>${day.drills[0] ? ribbonOf(day.drills[0]) : day.isPlanned ? '○' : ''}</td>
              <td><span class="text">${planned(day)}</span></td>
            </tr>`,
          )}
        </tbody>
      </table>
      <table class="totals">
        <thead>
          <tr>
            <th></th>
            ${totals.map(({ name }) => html`<th scope="col">${name}</th>`)}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">${say('week.thisWeek')}</th>
            ${totals.map(({ now }) => html`<td>${now}</td>`)}
          </tr>
          <tr>
            <th scope="row">${say('week.weekBefore')}</th>
            ${totals.map(({ before }) => html`<td>${before}</td>`)}
          </tr>
        </tbody>
      </table>
      ${this.#part(say('week.wentRight'), page.wentRight)} ${this.#part(say('week.needsWork'), page.needsWork)}
      ${this.#part(say('week.intoNext'), page.carriedForward)}
    </article>`;
  }

  #part(name: string, text: string | undefined, kind = '') {
    return html`<h2>${name}</h2>
      ${text?.trim() ? html`<div class=${kind}><p class="text">${text}</p></div>` : html`<div class="blank" role="presentation"></div>`}`;
  }
}

/** The day's drill in one row, however many reps it has. */
function ribbonOf({ reps }: DaySummary['drills'][number]) {
  return html`<lark-hold-ribbon .reps=${reps} .unit=${0.024} .widest=${Number.POSITIVE_INFINITY}></lark-hold-ribbon>`;
}

/** What was done; on a day to come, what is planned. */
function planned(day: DaySummary): string {
  const done = doneWords(day);
  const words = done ?? (day.isPlanned ? say('week.drillPlanned') : '');
  return day.hasPain ? say('week.hadPain', { plan: words || say('week.nothing') }) : words;
}

declare global {
  interface HTMLElementTagNameMap {
    'week-paper': WeekPaper;
  }
}
