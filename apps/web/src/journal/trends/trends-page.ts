import { say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../../shell/place-element.ts';
import '@larkhold/ui';
import { createTrends, type Trends, trendKinds } from '@larkhold/engine';

const spans = [
  { key: 'trend.weeks12', weekCount: 12 },
  { key: 'trend.halfYear', weekCount: 26 },
  { key: 'trend.year', weekCount: 52 },
  { key: 'trend.everything', weekCount: undefined },
] as const;

/** How things went over weeks and years: eight trends, each a chart and a table. */
@customElement('trends-page')
export class TrendsPage extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .row {
        margin-top: 1rem;
      }
      .unrated {
        margin-top: 1rem;
      }
    `,
  ];

  @state() private span = 0;
  #kept: { journal: unknown; today: string; span: number; trends: Trends } | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { points, step, unratedCount } = this.#trends();
    if (points.length === 0) {
      return html`<h1>${say('trend.trends')}</h1>
        <p>${say('trend.empty')}</p>
        <p><a href="#/week">${say('trend.writeDay')}</a></p>`;
    }
    return html`<h1>${say('trend.trends')}</h1>
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
      ${trendKinds.map(
        (kind) => html`<section><trend-chart .kind=${kind} .points=${points} .step=${step}></trend-chart></section>`,
      )}`;
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
