import { layOut, type Prescription } from '@larkhold/engine';
import { STROKES, strokesGround, timelineStrokes } from '@larkhold/ui';
import { nothing, svg, type TemplateResult } from 'lit';

/** A hold that gets full height, whatever the program: rows of a rack are compared with each other. Milliseconds. */
const TALLEST_MS = 60_000;

const drawn = new WeakMap<Prescription, string>();

/**
 * Today's drill of a program as its strokes to scale, for a row: each hold as tall as its seconds, in its place between the rests.
 * @param prescription today's numbers
 * @returns an SVG element that says nothing to those who do not see it; nothing where there is no drill
 */
export function programStrokes(prescription: Prescription): TemplateResult | typeof nothing {
  if (prescription.blocks.length === 0) return nothing;
  return svg`<svg class="strokes" viewBox="0 0 ${STROKES.width} ${STROKES.height}" preserveAspectRatio="none" aria-hidden="true">
    <path d=${pathOf(prescription)}></path>
    <path class="ground" d=${strokesGround}></path>
  </svg>`;
}

function pathOf(prescription: Prescription): string {
  const kept = drawn.get(prescription);
  if (kept !== undefined) return kept;
  const { steps, durationMs } = layOut(prescription);
  const path = timelineStrokes(steps, { fromMs: 0, spanMs: durationMs, tallestMs: TALLEST_MS });
  drawn.set(prescription, path);
  return path;
}
