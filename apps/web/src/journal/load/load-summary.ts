import { type LoadSums, type Loads, loadsOf, WORKLOAD_RATIO_CAUTION } from '@larkhold/engine';
import { tableStyles } from '@larkhold/ui';
import { formatCount, formatDuration, formatImpulse, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { AppView } from '../../shell/app-context.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import './on-fingers-estimate.ts';

const kept = new WeakMap<AppView['journal'], { key: string; loads: Loads }>();

/** What today, this week and the week before cost: time at full draw, draw impulse, load, and how they compare with what came before. */
@customElement('load-summary')
export class LoadSummary extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    tableStyles,
    css`
      details {
        margin-top: var(--gap);
        border-bottom: 1px solid var(--rule);
      }
      .inside {
        container-type: inline-size;
        padding-bottom: var(--gap);
      }
      th,
      td {
        padding: 0.4rem 0.6rem 0.4rem 0;
        text-align: right;
      }
      th:first-child {
        text-align: left;
      }
      th:last-child,
      td:last-child {
        padding-right: 0;
      }
      thead th {
        color: var(--dim);
        font-size: var(--text-small);
      }
      @container (min-width: 16rem) {
        table {
          overflow-wrap: normal;
        }
      }
      @media (max-width: 26rem) {
        table {
          font-size: var(--text-small);
        }
        th,
        td {
          padding-right: 0.4rem;
        }
      }
      p {
        margin-top: 0.7rem;
        max-width: 38rem;
      }
      .caution {
        padding-left: 0.9rem;
        border-left: 2px solid var(--accent);
      }
    `,
  ];

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const loads = keptLoads(app.view);
    const { today, week, weekBefore, sevenDays } = loads;
    const columns = [today, week, weekBefore];
    const row = (name: string, cell: (sums: LoadSums) => string) => html`<tr>
      <th scope="row">${name}</th>
      ${columns.map((sums) => html`<td>${wrapping(cell(sums))}</td>`)}
    </tr>`;
    return html`<details>
      <summary>${say('load.costThisWeek', { ms: week.heldMs })}</summary>
      <div class="inside">
        <table>
          <caption class="visually-hidden">
            ${say('load.cost')}
          </caption>
          <thead>
            <tr>
              <td></td>
              <th scope="col">${say('load.today')}</th>
              <th scope="col">${say('load.thisWeek')}</th>
              <th scope="col">${say('load.weekBefore')}</th>
            </tr>
          </thead>
          <tbody>
            ${row(say('load.fullDraw'), ({ heldMs }) => formatDuration(heldMs))}
            ${
              columns.some(({ seenMs }) => seenMs !== undefined)
                ? row(say('load.asSeen'), ({ seenMs = 0 }) => (seenMs === 0 ? '–' : formatDuration(seenMs)))
                : nothing
            }
            ${row(say('load.impulse'), ({ impulseNs }) => (impulseNs === undefined ? '–' : formatImpulse(impulseNs)))}
            ${row(say('load.load'), ({ load }) => formatCount(load))}
          </tbody>
        </table>
        <p class="dim small">
          ${say('load.about', { leftOut: leftOutWords(loads) })}
        </p>
        <on-fingers-estimate></on-fingers-estimate>
        ${
          sevenDays
            ? html`<p>
                ${say('load.sevenDays', {
                  load: sevenDays.total,
                  rest:
                    sevenDays.monotony === undefined || sevenDays.strain === undefined
                      ? say('load.alike')
                      : say('load.monotony', { monotony: sevenDays.monotony, strain: sevenDays.strain }),
                })}
              </p>`
            : nothing
        }
        ${this.#ratios(loads)}
      </div>
    </details>`;
  }

  #ratios({ rollingRatio, fadingRatio }: Loads) {
    if (rollingRatio === undefined || fadingRatio === undefined) {
      return html`<p class="dim">${say('load.needs28')}</p>`;
    }
    return html`<p>
        ${say('load.ratios', { rolling: rollingRatio, fading: fadingRatio })}
      </p>
      <p class="caution small">${WORKLOAD_RATIO_CAUTION}</p>`;
  }
}

function keptLoads({ journal, kit, today }: AppView): Loads {
  const key = `${today} ${kit.drawWeightLbf}`;
  const found = kept.get(journal);
  if (found?.key === key) return found.loads;
  const loads = loadsOf(journal, kit, today);
  kept.set(journal, { key, loads });
  return loads;
}

/** In a narrow column a number and its unit may be on two lines. */
function wrapping(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}

function leftOutWords({ week, weekBefore }: Loads): string {
  const unrated = week.unratedCount + weekBefore.unratedCount;
  const unweighed = week.unweighedCount + weekBefore.unweighedCount;
  return [
    ...(unrated > 0 ? [say('load.unrated', { n: unrated })] : []),
    ...(unweighed > 0 ? [say('load.unweighed', { n: unweighed })] : []),
  ].join(' ');
}

declare global {
  interface HTMLElementTagNameMap {
    'load-summary': LoadSummary;
  }
}
