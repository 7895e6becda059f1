import {
  createTrends,
  derivedTrends,
  type TrendKind,
  type Trends,
  type TrendVerdict,
  testResults,
  trendKinds,
  trendVerdict,
} from '@larkhold/engine';
import { larkMark } from '@larkhold/ui';
import { say, verdictWords } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../../shell/place-element.ts';

const spans = [
  { key: 'trend.weeks12', weekCount: 12 },
  { key: 'trend.halfYear', weekCount: 26 },
  { key: 'trend.year', weekCount: 52 },
  { key: 'trend.everything', weekCount: undefined },
] as const;

/** How things went over weeks and years: each trend is a chart and a table. */
@customElement('trends-page')
export class TrendsPage extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .row {
        margin-top: 1rem;
      }
      .verdict {
        max-width: 40rem;
        margin: 0.6rem 0 0.8rem;
      }
      .verdict strong {
        display: block;
        font-size: var(--text-large);
      }
      @media (min-width: 68rem) {
        .charts {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          column-gap: calc(var(--gap) * 2);
        }
      }
      details {
        margin-top: calc(var(--gap) * 1.4);
        border-bottom: 1px solid var(--rule);
      }
      details section:first-child {
        margin-top: 0;
        border-top: 0;
      }
      .unrated {
        margin-top: 1rem;
      }
    `,
  ];

  @state() private span = 0;
  #keptVerdict: { journal: unknown; today: string; verdict: TrendVerdict } | undefined;
  #kept: { journal: unknown; today: string; span: number; trends: Trends } | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { points, step, unratedCount } = this.#trends();
    if (points.length === 0) {
      return html`<h1>${say('trend.trends')}</h1>
        ${larkMark()}
        <p>${say('trend.empty')}</p>
        <p><a href="#/week">${say('trend.writeDay')}</a></p>`;
    }
    const charts = (kinds: readonly TrendKind[]) =>
      kinds.map(
        (kind) => html`<section><trend-chart .kind=${kind} .points=${points} .step=${step}></trend-chart></section>`,
      );
    return html`<h1>${say('trend.trends')}</h1>
      ${this.#verdict(this.#verdictNow())}
      <p><a href="#/milestones">${say('trend.toMilestones')}</a></p>
      <div class="row" role="group" aria-label=${say('trend.span')}>
        ${spans.map(
          ({ key }, index) => html`<button
            aria-pressed=${this.span === index ? 'true' : 'false'}
            @click=${() => {
              this.span = index;
            }}
          >
            ${say(key)}
          </button>`,
        )}
      </div>
      <p class="dim small unrated">
        ${say('trend.pressPoint', { point: step === 'day' ? say('trend.pointDay') : say('trend.pointWeek'), unrated: unratedCount > 0 ? say('trend.unrated', { n: unratedCount }) : '' })}
      </p>
      <div class="charts">${charts(trendKinds.filter((kind) => !derivedTrends.has(kind)))}</div>
      <details>
        <summary>${say('trend.derived')}</summary>
        <div class="charts">${charts(trendKinds.filter((kind) => derivedTrends.has(kind)))}</div>
      </details>`;
  }

  /** In words first: what the curves below are for. */
  #verdict(verdict: TrendVerdict) {
    const { head, why } = verdictWords(verdict);
    return html`<p class="verdict"><strong>${head}</strong> ${why}</p>`;
  }

  #verdictNow(): TrendVerdict {
    const { app } = this;
    if (!app) return { verdict: 'unclear' };
    const { journal, programs, today } = app.view;
    const kept = this.#keptVerdict;
    if (kept?.journal === journal && kept.today === today) return kept.verdict;
    const verdict = trendVerdict(journal, testResults(journal.drills, programs), today);
    this.#keptVerdict = { journal, today, verdict };
    return verdict;
  }

  /** Worked out once for a journal and a span: a journal of ten years is not added up for every redraw. */
  #trends(): Trends {
    const { app, span } = this;
    if (!app) return { points: [], step: 'day', unratedCount: 0 };
    const { journal, today } = app.view;
    const kept = this.#kept;
    if (kept && kept.journal === journal && kept.today === today && kept.span === span) return kept.trends;
    const trends = createTrends(journal, today, spans[span]?.weekCount);
    this.#kept = { journal, today, span, trends };
    return trends;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'trends-page': TrendsPage;
  }
}
