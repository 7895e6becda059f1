import type { SessionPrediction, Timeline } from '@larkhold/engine';
import { nothing, svg, type TemplateResult } from 'lit';

/** Widths and heights in the picture's own units; the page stretches it. */
const WIDTH = 1000;
const HEIGHT = 60;
const baseY = HEIGHT - 2;
const topY = 6;

/**
 * What is left along a timeline, on the same scale of time.
 * @param timeline any timeline
 * @param fatigue what the model says of it
 * @param words what it shows, for those who do not see it
 * @returns an SVG element
 */
export function fatiguePicture(timeline: Timeline, fatigue: SessionPrediction, words: string): TemplateResult {
  const x = scaleOf(timeline);
  const y = (reserve: number) => round(topY + (1 - reserve) * (baseY - topY));
  const curve = fatigue.curve.map(({ atMs, reserve }) => `${x(atMs)} ${y(reserve)}`).join('L');
  const end = fatigue.failsAt && fatigue.curve.at(-1);
  return svg`<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" preserveAspectRatio="none" role="img" aria-label=${words} class="fatigue">
    <line class="ground" x1="0" x2=${WIDTH} y1=${baseY} y2=${baseY}></line>
    <path class="curve" d=${`M${curve}`}></path>
    ${end ? svg`<line class="fails" x1=${x(end.atMs)} x2=${x(end.atMs)} y1="0" y2=${HEIGHT}></line>` : nothing}
  </svg>`;
}

function scaleOf({ durationMs }: Timeline): (ms: number) => number {
  return (ms) => round((ms / Math.max(1, durationMs)) * WIDTH);
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
