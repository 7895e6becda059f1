import { dayNumber, dayOfNumber, type Journal } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';

const DAYS = 28;
const STEP = 12;

/**
 * The last four weeks as a strip: a standing mark for a day with a drill, a dot for one without.
 *
 * @prop journal what was done
 * @prop today the strip's last day
 * @prop bare whether the count is left out, because it is beside the strip already
 */
@customElement('lark-day-strip')
export class LarkDayStrip extends LitElement {
  static override styles = css`
    :host {
      display: block;
    }
    figure {
      margin: 0;
    }
    svg {
      display: block;
      width: min(100%, 26rem);
      height: auto;
      overflow: visible;
    }
    line {
      stroke: var(--ink);
      stroke-width: 3;
      stroke-linecap: round;
    }
    circle {
      fill: var(--dim);
    }
    .today {
      stroke: var(--accent);
      fill: none;
      stroke-width: 2;
    }
    figcaption {
      margin-top: 0.5rem;
      color: var(--dim);
      font-size: var(--text-small);
    }
  `;

  @property({ attribute: false }) journal: Pick<Journal, 'drills'> | undefined;
  @property() today = '';
  @property({ type: Boolean }) bare = false;

  override render() {
    const { journal, today } = this;
    if (!journal || today === '') return nothing;
    const drilled = new Set(journal.drills.map(({ date }) => date));
    if (drilled.size === 0) return nothing;
    const last = dayNumber(today);
    const days = Array.from({ length: DAYS }, (_, index) => dayOfNumber(last - DAYS + 1 + index));
    const count = days.filter((day) => drilled.has(day)).length;
    const marks = days.map((day, index) => {
      const x = index * STEP + STEP / 2;
      return drilled.has(day)
        ? svg`<line x1=${x} y1="4" x2=${x} y2="20"></line>`
        : svg`<circle cx=${x} cy="19.500" r="1.500"></circle>`;
    });
    return html`<figure>
      <svg viewBox="0 0 ${DAYS * STEP} 30" aria-hidden="true">
        ${marks}${svg`<path class="today" d="M${(DAYS - 1) * STEP + 1.5} 28h9"></path>`}
      </svg>
      ${this.bare ? nothing : html`<figcaption>${say('field.drilledOn', { n: count, of: DAYS })}</figcaption>`}
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-day-strip': LarkDayStrip;
  }
}
