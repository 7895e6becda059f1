import type { Timeline } from '@larkhold/engine';
import { formatDuration, formatSeconds, presentWords, say } from '@larkhold/words';
import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type DrawnSpan, STROKES, strokesGround, timelineStrokes } from './timeline-strokes.ts';

/** A block's part of a timeline. */
interface Row {
  title: string;
  steps: Timeline['steps'];
  fromMs: number;
  spanMs: number;
}

/**
 * A timeline to scale, drawn as a ribbon is: each hold is a stroke as tall as its seconds, and rests are the gaps.
 *
 * @prop timeline what is drawn
 * @prop titles one for each block: each gets a row of its own, all to one scale; none draws all blocks in one row
 */
@customElement('lark-timeline-picture')
export class LarkTimelinePicture extends LitElement {
  static override styles = css`
    :host {
      display: block;
    }
    figure,
    p,
    ol {
      margin: 0;
      padding: 0;
      list-style: none;
    }
    svg {
      display: block;
      width: 100%;
      height: var(--timeline-tall, 4.5rem);
      overflow: visible;
    }
    .strokes {
      fill: var(--ink);
    }
    .ground {
      fill: none;
      stroke: var(--faint);
      stroke-width: 1.5;
      vector-effect: non-scaling-stroke;
    }
    .apart {
      stroke: var(--accent);
      stroke-width: 2;
      vector-effect: non-scaling-stroke;
    }
    li + li {
      margin-top: 0.9rem;
    }
    li p {
      display: flex;
      flex-wrap: wrap;
      gap: 0 0.8rem;
      justify-content: space-between;
      margin-bottom: 0.35rem;
      overflow-wrap: anywhere;
      font-size: var(--text-small);
    }
    .asks,
    figcaption {
      color: var(--dim);
      font-size: var(--text-small);
      font-variant-numeric: tabular-nums;
    }
    figcaption {
      display: flex;
      flex-wrap: wrap;
      gap: 0 1rem;
      justify-content: space-between;
      margin-top: 0.3rem;
    }
    @media (forced-colors: active) {
      .strokes {
        fill: CanvasText;
      }
      .ground,
      .apart {
        stroke: CanvasText;
      }
    }
    @media print {
      .strokes {
        fill: #000;
      }
    }
  `;

  @property({ attribute: false }) timeline: Timeline | undefined;
  @property({ attribute: false }) titles: readonly string[] | undefined;

  override render() {
    const { timeline, titles } = this;
    if (!timeline || timeline.durationMs === 0) return nothing;
    const tallestMs = timeline.steps.reduce(
      (most, { kind, durationMs }) => (kind === 'hold' ? Math.max(most, durationMs) : most),
      1,
    );
    const rows = rowsOf(timeline, titles ?? []);
    if (titles === undefined) return this.#whole(timeline, rows, tallestMs);
    const spanMs = Math.max(...rows.map((row) => row.spanMs));
    return html`<ol>
      ${rows.map(({ title, steps, fromMs }) => {
        const asks = say('field.holdsOf', holdsOf(steps));
        return html`<li>
          <p><b>${title}</b><span class="asks">${asks}</span></p>
          ${picture(timelineStrokes(steps, { fromMs, spanMs, tallestMs }), [], '')}
        </li>`;
      })}
    </ol>`;
  }

  #whole({ steps, durationMs }: Timeline, rows: readonly Row[], tallestMs: number) {
    const span: DrawnSpan = { fromMs: 0, spanMs: durationMs, tallestMs };
    const apart = rows.slice(1).map(({ fromMs }) => (fromMs / durationMs) * STROKES.width);
    const holds = presentWords().list(rows.map((row) => say('field.holdsOf', holdsOf(row.steps))));
    const words = say('field.timeline', { holds, ms: durationMs });
    return html`<figure>
      ${picture(timelineStrokes(steps, span), apart, words)}
      <figcaption aria-hidden="true">
        <span>0</span><span>${say('field.tallest', { ms: tallestMs })}</span><span>${formatDuration(durationMs)}</span>
      </figcaption>
    </figure>`;
  }
}

function picture(strokes: string, apart: readonly number[], words: string) {
  return html`<svg
    viewBox="0 0 ${STROKES.width} ${STROKES.height}"
    preserveAspectRatio="none"
    role=${words === '' ? 'presentation' : 'img'}
    aria-label=${words === '' ? nothing : words}
    aria-hidden=${words === '' ? 'true' : nothing}
  >
    ${svg`<path class="ground" d=${strokesGround}></path><path class="strokes" d=${strokes}></path>
      ${apart.map((x) => svg`<path class="apart" d=${`M${x.toFixed(1)} ${STROKES.height - 8}v8`}></path>`)}`}
  </svg>`;
}

/** One row a block, from where it begins to where its last step ends. */
function rowsOf({ steps }: Timeline, titles: readonly string[]): Row[] {
  const rows: Row[] = [];
  let block = -1;
  for (const step of steps) {
    if (step.block !== block) {
      block = step.block;
      rows.push({ title: titles[block] ?? '', steps: [], fromMs: step.startMs, spanMs: 0 });
    }
    const row = rows.at(-1);
    if (!row) continue;
    row.steps.push(step);
    row.spanMs = step.startMs + step.durationMs - row.fromMs;
  }
  return rows;
}

/** How many holds of how many seconds. */
function holdsOf(steps: Timeline['steps']): { n: number; hold: string } {
  const holds = steps.filter(({ kind }) => kind === 'hold').map(({ durationMs }) => durationMs);
  const [least, most] = [Math.min(...holds), Math.max(...holds)];
  return {
    n: holds.length,
    hold: least === most ? formatSeconds(most) : say('field.fromTo', { least, most }),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-timeline-picture': LarkTimelinePicture;
  }
}
