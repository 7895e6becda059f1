import { formatCounted } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../../shell/place-element.ts';
import '@larkhold/ui';
import { createTrends, type Trends, trendKinds } from '@larkhold/engine';

const spans = [
  { words: '12 weeks', weekCount: 12 },
  { words: 'Half a year', weekCount: 26 },
  { words: 'A year', weekCount: 52 },
  { words: 'Everything', weekCount: undefined },
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
      return html`<h1>Trends</h1>
        <p>Nothing yet. Trends show once there is a drill or a day in the journal.</p>
        <p><a href="#/week">Write down a day</a></p>`;
    }
    return html`<h1>Trends</h1>
      <p><a href="#/milestones">Milestones: what you reached, and what is open</a></p>
      <div class="row" role="group" aria-label="Span">
        ${spans.map(
          ({ words }, index) => html`<button
            aria-pressed=${this.span === index ? 'true' : 'false'}
            @click=${() => {
              this.span = index;
            }}
          >
            ${words}
          </button>`,
        )}
      </div>
      <p class="dim small unrated">
        ${step === 'day' ? 'A point is a day.' : 'A point is a week.'} Press one to open its day.
        ${unratedCount > 0 ? `${formatCounted(unratedCount, 'entry', 'entries')} without effort or minutes count as no load.` : ''}
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
