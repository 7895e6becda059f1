import type { SessionPrediction } from '@larkhold/engine';
import { css, nothing, svg } from 'lit';

/** Widths and heights in the picture's own units; the page stretches it over the width of the timeline above. */
const WIDTH = 1000;
const HEIGHT = 96;
const TOP = 4;
const BASE = HEIGHT - 2;

/** Colours and strokes of the picture. Shape tells what is what: full line, dotted range, dashed end. */
export const reserveStyles = css`
  svg.reserve {
    display: block;
    width: 100%;
    height: 5.5rem;
    overflow: visible;
  }
  svg.reserve * {
    vector-effect: non-scaling-stroke;
    fill: none;
  }
  .reserve .ground {
    stroke: var(--faint);
    stroke-width: 1.5;
  }
  .reserve .half {
    stroke: var(--rule);
    stroke-width: 1;
  }
  .reserve .curve {
    stroke: var(--accent);
    stroke-width: 2.5;
    stroke-linejoin: round;
  }
  .reserve .range {
    stroke: var(--dim);
    stroke-width: 1.25;
    stroke-dasharray: 2 4;
  }
  .reserve .fails {
    stroke: var(--ink);
    stroke-width: 2;
    stroke-dasharray: 6 4;
  }
  @media (forced-colors: active) {
    .reserve .curve,
    .reserve .fails {
      stroke: CanvasText;
    }
  }
`;

/** What is drawn. */
export interface ReservePicture {
  /** Length of the timeline, milliseconds. */
  durationMs: number;
  prediction: SessionPrediction;
  /** The same drill for the ends of the range that the longest hold lies in. */
  range?: readonly SessionPrediction[];
  /** What it shows, for those who do not see it. */
  words: string;
}

/**
 * What is left along a drill, to the same scale of time as the timeline above it: all at the top, nothing at the ground.
 * @param picture length, prediction and words
 * @returns an SVG element; its styles are `reserveStyles`
 */
export function reservePicture({ durationMs, prediction, range = [], words }: ReservePicture) {
  const x = (ms: number): number => round((ms / Math.max(1, durationMs)) * WIDTH);
  const y = (reserve: number): number => round(TOP + (1 - reserve) * (BASE - TOP));
  const path = ({ curve }: SessionPrediction): string =>
    `M${curve.map(({ atMs, reserve }) => `${x(atMs)} ${y(reserve)}`).join('L')}`;
  const end = prediction.failsAt && prediction.curve.at(-1);
  return svg`<svg class="reserve" viewBox="0 0 ${WIDTH} ${HEIGHT}" preserveAspectRatio="none" role="img" aria-label=${words}>
    <line class="half" x1="0" x2=${WIDTH} y1=${y(0.5)} y2=${y(0.5)}></line>
    <line class="ground" x1="0" x2=${WIDTH} y1=${BASE} y2=${BASE}></line>
    ${range.map((one) => svg`<path class="range" d=${path(one)}></path>`)}
    <path class="curve" d=${path(prediction)}></path>
    ${end ? svg`<line class="fails" x1=${x(end.atMs)} x2=${x(end.atMs)} y1="0" y2=${HEIGHT}></line>` : nothing}
  </svg>`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
