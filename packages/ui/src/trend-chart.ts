import type { TrendKind, TrendPoint } from '@larkhold/engine';
import { weekListing } from '@larkhold/engine';
import { formatDay, say, type TrendWords, trendWords } from '@larkhold/words';
import { css, html, LitElement, nothing, type PropertyValues, unsafeCSS } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import './valid-language.ts';
import uPlot from 'uplot';
import plotStyles from 'uplot/dist/uPlot.min.css?inline';
import { chartColours } from './chart-colours.ts';
import { controlStyles, pageStyles, tableStyles } from './page-styles.ts';

const HEIGHT = 170;
const DAY_SECONDS = 86_400;

/**
 * One trend as a chart, and the same numbers as a table. A press on the chart, or a link in the table, opens the day.
 *
 * @prop kind which trend
 * @prop points oldest first
 * @prop step what a point represents
 */
@customElement('trend-chart')
export class TrendChart extends LitElement {
  static override styles = [
    unsafeCSS(plotStyles),
    pageStyles,
    controlStyles,
    tableStyles,
    css`
      .head {
        display: flex;
        flex-wrap: wrap;
        gap: 0 1rem;
        align-items: baseline;
        justify-content: space-between;
      }
      .unit {
        font-weight: 400;
      }
      .plot {
        min-height: ${HEIGHT}px;
        margin: 0.4rem 0;
        cursor: pointer;
      }
      .uplot {
        font: inherit;
      }
      .u-cursor-x,
      .u-cursor-y {
        border-color: var(--dim);
      }
      details {
        border: 0;
      }
      summary {
        color: var(--dim);
        font-weight: 500;
      }
      .rows {
        max-height: 22rem;
        overflow-y: auto;
      }
      th,
      td {
        padding: 0.35rem 0.5rem 0.35rem 0;
      }
      td {
        text-align: right;
      }
    `,
  ];

  @property() kind: TrendKind = 'hold';
  @property({ attribute: false }) points: readonly TrendPoint[] = [];
  @property() step: 'day' | 'week' = 'week';
  @state() private hovered: number | undefined;
  @state() private isOpen = false;
  #plot: uPlot | undefined;
  #width = 0;
  readonly #sizes = new ResizeObserver(([entry]) => {
    const width = Math.floor(entry?.contentRect.width ?? 0);
    // It is called once at the beginning too: then the chart has this width.
    if (width <= 0 || width === this.#width) return;
    this.#width = width;
    this.#plot?.setSize({ width, height: HEIGHT });
  });
  readonly #schemes = ['(prefers-color-scheme: light)', '(forced-colors: active)'].map((query) => matchMedia(query));
  readonly #redraw = (): void => this.#plot?.redraw();

  override connectedCallback(): void {
    super.connectedCallback();
    for (const scheme of this.#schemes) scheme.addEventListener('change', this.#redraw);
    if (this.hasUpdated) this.#draw();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const scheme of this.#schemes) scheme.removeEventListener('change', this.#redraw);
    this.#sizes.disconnect();
    this.#plot?.destroy();
    this.#plot = undefined;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('points') || changed.has('kind')) this.#draw();
  }

  override render() {
    const words = trendWords(this.kind);
    const known = this.#known();
    const shown =
      (this.hovered === undefined ? undefined : this.points[this.hovered]) ??
      known.findLast(({ values }) => values[this.kind] !== 0) ??
      known.at(-1);
    const value = shown?.values[this.kind];
    return html`<div class="head">
        <h2>${words.name} <span class="unit dim small">${words.unit}</span></h2>
        <p class="numbers">
          ${shown && value !== undefined ? html`<strong>${words.format(value)}</strong> <span class="dim">${this.#pointWords(shown)}</span>` : nothing}
        </p>
      </div>
      ${words.about ? html`<p class="dim small">${words.about}</p>` : nothing}
      ${
        known.length === 0
          ? html`<p class="dim">${say('field.nothingYet')}</p>`
          : html`<div class="plot" role="img" aria-label=${this.#summary(words, known)} @click=${this.#openHovered}></div>
              <details @toggle=${this.#onToggle}>
                <summary>${say('field.asTable', { name: words.name })}</summary>
                ${this.isOpen ? this.#table(words, known) : nothing}
              </details>`
      }`;
  }

  #table(words: TrendWords, known: readonly TrendPoint[]) {
    return html`<div class="rows" tabindex="0" role="region" aria-label=${say('field.table', { name: words.name })}>
      <table aria-label=${words.name}>
        <thead class="visually-hidden">
          <tr>
            <th scope="col">${this.step === 'day' ? say('field.day') : say('field.week')}</th>
            <th scope="col">${words.name}</th>
          </tr>
        </thead>
        <tbody>
          ${known.toReversed().map(
            (point) => html`<tr>
              <th scope="row"><a href=${hrefOfDay(point.day)}>${this.#pointWords(point)}</a></th>
              <td>${words.format(point.values[this.kind] ?? 0)}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  #known(): readonly TrendPoint[] {
    return this.points.filter(({ values }) => values[this.kind] !== undefined);
  }

  #pointWords({ day }: TrendPoint): string {
    return this.step === 'day' ? formatDay(day, 'year') : say('field.weekTo', { day });
  }

  #summary({ name, format }: TrendWords, known: readonly TrendPoint[]): string {
    const values = known.map(({ values }) => values[this.kind] ?? 0);
    const [first, last] = [known[0], known.at(-1)];
    if (!first || !last) return name;
    const span = say('field.span', { first: first.day, last: last.day });
    return say('field.summary', {
      name,
      span: span,
      last: format(values.at(-1) ?? 0),
      least: format(Math.min(...values)),
      most: format(Math.max(...values)),
    });
  }

  #draw(): void {
    this.#plot?.destroy();
    this.#plot = undefined;
    this.#sizes.disconnect();
    const place = this.renderRoot.querySelector<HTMLElement>('.plot');
    if (!place) return;
    const { toScale, shape, range } = trendWords(this.kind);
    const halfStep = this.step === 'day' ? DAY_SECONDS / 2 : DAY_SECONDS * 3.5;
    const ink = (): string => chartColours().ink;
    const font = `12px ${chartColours().fontFamily}`;
    const isStrokes = shape === 'bars';
    const axis: uPlot.Axis = {
      stroke: () => chartColours().dim,
      font,
      grid: { stroke: () => chartColours().rule, width: 1 },
      ticks: { show: false },
    };
    // Known from the second drawing on: asking again would have the browser lay out the page for every chart.
    if (this.#width === 0) this.#width = Math.max(Math.floor(place.clientWidth), 200);
    const options: uPlot.Options = {
      width: this.#width,
      height: HEIGHT,
      legend: { show: false },
      cursor: { y: false, drag: { x: false, y: false }, points: { show: shape === 'line' } },
      tzDate: (seconds) => uPlot.tzDate(new Date(seconds * 1000), 'Etc/UTC'),
      scales: {
        // Half a step more at either end, so that the first bar and the last are whole.
        x: { range: (_plot, first, last) => [first - halfStep, last + halfStep] },
        y: { range: (_plot, _least, most) => (range ? [range[0], range[1]] : [0, most > 0 ? most * 1.1 : 1]) },
      },
      axes: [
        { ...axis, grid: { show: false }, size: 28, space: 70, values: dateWords },
        { ...axis, size: 48 },
      ],
      series: [
        {},
        {
          stroke: ink,
          ...(isStrokes ? { fill: ink, paths: strokePaths, width: 0 } : { width: 2 }),
          points: { show: shape === 'line' && this.points.length <= 90, size: 5, fill: ink },
          spanGaps: true,
        },
      ],
      hooks: {
        setCursor: [
          ({ cursor }) => {
            this.hovered = cursor.idx ?? undefined;
          },
        ],
      },
    };
    const at = this.points.map(({ day }) => Date.parse(`${day}T12:00:00Z`) / 1000);
    const values = this.points.map(({ values }) => {
      const value = values[this.kind];
      return value === undefined ? null : toScale(value);
    });
    this.#plot = new uPlot(options, [at, values], place);
    this.#sizes.observe(place);
  }

  readonly #openHovered = (): void => {
    const point = this.hovered === undefined ? undefined : this.points[this.hovered];
    if (point) location.hash = hrefOfDay(point.day);
  };

  readonly #onToggle = (event: Event): void => {
    this.isOpen = event.target instanceof HTMLDetailsElement && event.target.open;
  };
}

/** Half the width of a stroke at its foot: a share of its place, up to a limit in CSS pixels. */
const FOOT_RATIO = 0.36;
const MOST_FOOT_PX = 7;

/** Strokes on the ground, as in a ribbon: wide at the foot, leaning a little. */
const strokePaths: uPlot.Series.PathBuilder = (plot, series, from, to) => {
  const fill = new Path2D();
  const [days, values] = [plot.data[0], plot.data[series] ?? []];
  const ground = plot.valToPos(0, 'y', true);
  const foot = Math.min((plot.bbox.width / Math.max(1, days.length)) * FOOT_RATIO, MOST_FOOT_PX * devicePixelRatio);
  for (let at = from; at <= to; at += 1) {
    const value = values[at];
    if (!value) continue;
    const x = plot.valToPos(days[at] ?? 0, 'x', true);
    const top = plot.valToPos(value, 'y', true);
    const [middle, tip] = [(ground + top) / 2, x + foot * 0.4];
    fill.moveTo(x - foot, ground);
    fill.quadraticCurveTo(x - foot, middle, tip - foot * 0.4, top);
    fill.lineTo(tip + foot * 0.4, top);
    fill.quadraticCurveTo(x + foot * 0.8, middle, x + foot, ground);
  }
  return { fill, stroke: null };
};

const MANY_DAYS_SECONDS = 300 * DAY_SECONDS;

/** Months are words: digits would be read one way here and another way there. */
function dateWords(_plot: uPlot, seconds: number[]): string[] {
  const isLong = (seconds.at(-1) ?? 0) - (seconds[0] ?? 0) > MANY_DAYS_SECONDS;
  return seconds.map((second) =>
    formatDay(new Date(second * 1000).toISOString().slice(0, 10), isLong ? 'month' : 'tick'),
  );
}

/** The archer's own first day of the week does not matter here: the page finds the day by its name. */
function hrefOfDay(day: string): string {
  return `#/week/${weekListing(day, 'monday')}/${day}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'trend-chart': TrendChart;
  }
}
