import type { DayMark } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { css, html, LitElement, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { pageStyles } from './page-styles.ts';

const STEP = 12;
const SIZE = 9;

/**
 * A strip of days: a full mark for a drill, a low one for other work, a dot for nothing. It only shows; there is nothing to win.
 *
 * @prop days oldest first, a whole number of weeks
 */
@customElement('day-strip')
export class DayStrip extends LitElement {
  static override styles = [
    pageStyles,
    css`
      svg {
        display: block;
        width: 100%;
        max-width: 44rem;
        margin-bottom: 0.4rem;
      }
      .drill {
        fill: currentColor;
      }
      .other {
        fill: none;
        stroke: currentColor;
      }
      .nothing {
        fill: var(--dim);
      }
    `,
  ];

  @property({ attribute: false }) days: readonly { date: string; mark: DayMark }[] = [];

  override render() {
    const { days } = this;
    const count = (mark: DayMark) => days.filter((day) => day.mark === mark).length;
    const gaps = Math.floor((days.length - 1) / 7);
    const width = days.length * STEP + gaps * 6;
    const words = say('field.strip', { days: days.length, drills: count('drill'), others: count('other') });
    return html`<svg viewBox="0 0 ${width} 22" role="img" aria-label=${words}>
        ${days.map(({ mark }, index) => this.#mark(mark, index * STEP + Math.floor(index / 7) * 6))}
      </svg>
      <p class="dim small" aria-hidden="true">${words}</p>`;
  }

  #mark(mark: DayMark, x: number) {
    if (mark === 'drill') return svg`<rect class="drill" x=${x} y="1" width=${SIZE} height="20" rx="2"></rect>`;
    if (mark === 'other')
      return svg`<rect class="other" x=${x + 0.75} y="11" width=${SIZE - 1.5} height="9.250" rx="2" stroke-width="1.5"></rect>`;
    return svg`<circle class="nothing" cx=${x + SIZE / 2} cy="19" r="1.6"></circle>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'day-strip': DayStrip;
  }
}
