import type { DrillRecord } from '@larkhold/engine';
import { ribbonWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '@larkhold/ui';
import { PlaceElement } from '../shell/place-element.ts';
import { hrefOf } from '../shell/routing.ts';
import { newestDrills } from './newest-drills.ts';

const MOST_SHOWN = 5;

/**
 * The last drills as ribbons on one scale, the newest on top: what was held lately, at a glance.
 *
 * @prop drills that may be shown, in any order
 */
@customElement('last-drills')
export class LastDrills extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      li + li {
        border-top: 1px solid var(--rule);
      }
      li a {
        display: grid;
        grid-template-columns: minmax(min-content, 6rem) minmax(0, 1fr);
        gap: 0.8rem;
        align-items: center;
        padding: 0.5rem 0;
        min-height: var(--touch);
        text-decoration: none;
      }
      .day {
        white-space: nowrap;
      }
      ul {
        margin-top: 0.4rem;
      }
      @media (max-width: 22rem) {
        li a {
          grid-template-columns: minmax(0, 1fr);
        }
      }
    `,
  ];

  @property({ attribute: false }) drills: readonly DrillRecord[] = [];

  override render() {
    const withReps = this.drills.filter(({ reps }) => reps.length > 0);
    const shown = newestDrills(withReps, MOST_SHOWN);
    if (shown.length === 0) return nothing;
    const tallestMs = Math.max(...shown.flatMap(({ reps }) => reps.map(({ prescribedMs }) => prescribedMs)));
    return html`<section aria-labelledby="last">
      <h2 id="last">${say('today.last')}</h2>
      <ul>
        ${shown.map(
          (record) => html`<li>
            <a href=${hrefOf('journal', record.id)}>
              <span class="day dim small">${say('today.day', { day: record.date })}</span>
              <lark-hold-ribbon
                .reps=${record.reps}
                .tallestMs=${tallestMs}
                .unit=${0.05}
                words=${ribbonWords(record.reps)}
              ></lark-hold-ribbon>
            </a>
          </li>`,
        )}
      </ul>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'last-drills': LastDrills;
  }
}
