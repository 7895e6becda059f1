import type { Timeline } from '@larkhold/engine';
import { formatDuration, say } from '@larkhold/words';
import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';

const WIDTH = 1000;
const HEIGHT = 96;
/** How high each step stands: the bow is at rest below, at full draw above. */
const heights = { ready: 4, draw: 44, hold: 84, letDown: 44, rest: 4, setRest: 4 } as const;

/**
 * A timeline to scale: full draw stands high, rest lies low. Blocks are parted by a thin line.
 *
 * @prop timeline what is drawn
 */
@customElement('lark-timeline-picture')
export class LarkTimelinePicture extends LitElement {
  static override styles = css`
    :host {
      display: block;
    }
    figure {
      margin: 0;
    }
    svg {
      display: block;
      width: 100%;
      height: 5.5rem;
    }
    path {
      fill: var(--accent);
    }
    .ground {
      fill: none;
      stroke: var(--faint);
      stroke-width: 1.5;
      vector-effect: non-scaling-stroke;
    }
    figcaption {
      display: flex;
      justify-content: space-between;
      margin-top: 0.3rem;
      color: var(--dim);
      font-size: var(--text-small);
      font-variant-numeric: tabular-nums;
    }
    @media (forced-colors: active) {
      path {
        fill: CanvasText;
      }
    }
  `;

  @property({ attribute: false }) timeline: Timeline | undefined;

  override render() {
    const { timeline } = this;
    if (!timeline || timeline.durationMs === 0) return nothing;
    const x = (ms: number) => ((ms / timeline.durationMs) * WIDTH).toFixed(2);
    const bars = timeline.steps
      .filter(({ kind }) => heights[kind] > 4)
      .map(({ kind, startMs, durationMs }) => {
        const top = HEIGHT - heights[kind];
        const [from, to] = [x(startMs), x(startMs + durationMs)];
        if (kind === 'draw') return `M${from} ${HEIGHT}L${to} ${HEIGHT - heights.hold}V${HEIGHT}Z`;
        if (kind === 'letDown') return `M${from} ${HEIGHT - heights.hold}L${to} ${HEIGHT}H${from}Z`;
        return `M${from} ${HEIGHT}V${top}H${to}V${HEIGHT}Z`;
      });
    const holds = timeline.steps.filter(({ kind }) => kind === 'hold').length;
    const words = say('field.timeline', { n: holds, ms: timeline.durationMs });
    return html`<figure>
      <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" preserveAspectRatio="none" role="img" aria-label=${words}>
        ${svg`<path d=${bars.join('')}></path><path class="ground" d="M0 ${HEIGHT - 0.5}H${WIDTH}"></path>`}
      </svg>
      <figcaption><span>0</span><span>${formatDuration(timeline.durationMs / 2)}</span><span>${formatDuration(timeline.durationMs)}</span></figcaption>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-timeline-picture': LarkTimelinePicture;
  }
}
