import { RIBBON } from './ribbon-places.ts';
import type { RibbonRep, ShortReason } from './ribbon-rep.ts';

/** Half the width of a stroke at its foot and at its tip, and how far the tip leans. */
const FOOT = 2.4;
const TIP = 1.2;
const LEAN = 1.6;
/** A hold of a second is still seen. */
const LEAST_TALL = 4;

/**
 * One stroke: a limb, wider at the foot, leaning a little.
 * @param x middle of the foot
 * @param y the ground
 * @param tall height in the ribbon's units
 * @param wide 1 for the usual width, less where many have to fit
 * @returns an SVG path
 */
export function limbPath(x: number, y: number, tall: number, wide = 1): string {
  const [top, lean] = [y - tall, LEAN * wide * (tall / RIBBON.tall)];
  const half = y - tall / 2;
  const [foot, tip] = [FOOT * wide, TIP * wide];
  return `M${r(x - foot)} ${r(y)}Q${r(x - foot)} ${r(half)} ${r(x + lean - tip)} ${r(top + tip)}A${r(tip)} ${r(tip)} 0 0 1 ${r(x + lean + tip)} ${r(top + tip)}Q${r(x + foot - 0.6 * wide)} ${r(half)} ${r(x + foot)} ${r(y)}Z`;
}

/**
 * A stroke that broke: what was held, cut off aslant.
 * @param x middle of the foot
 * @param y the ground
 * @param tall height of the break in the ribbon's units
 * @returns an SVG path
 */
export function brokenPath(x: number, y: number, tall: number): string {
  const top = y - tall;
  return `M${r(x - FOOT)} ${r(y)}V${r(top + 2.6)}L${r(x + FOOT)} ${r(top - 1.4)}V${r(y)}Z`;
}

/**
 * The rest of a broken stroke, up to what was asked: a hairline.
 * @param x middle of the foot
 * @param y the ground
 * @param from height of the break
 * @param to height that was asked
 * @returns an SVG path; empty where there is no room to see one
 */
export function missingPath(x: number, y: number, from: number, to: number): string {
  if (to - from < 4) return '';
  const lean = LEAN * (to / RIBBON.tall);
  return `M${r(x + 0.4)} ${r(y - from - 3)}L${r(x + lean)} ${r(y - to)}`;
}

/**
 * A skipped rep: a stroke laid down.
 * @param x middle of its place
 * @param y the ground
 * @returns an SVG path
 */
export function laidPath(x: number, y: number): string {
  return `M${r(x - 4.8)} ${r(y - 1)}Q${r(x - 1)} ${r(y - 5.4)} ${r(x + 4.8)} ${r(y - 3)}L${r(x + 4.8)} ${r(y - 1)}Z`;
}

/** The mark above a short rep: a ring for form, a sinking tip for tired, two bars for an interruption. */
const marks: Readonly<Record<ShortReason, (x: number, y: number) => string>> = {
  form: (x, y) => `M${r(x - 2.3)} ${r(y)}a2.3 2.3 0 1 1 4.6 0a2.3 2.3 0 1 1 -4.6 0`,
  tired: (x, y) => `M${r(x - 3)} ${r(y - 2)}L${r(x)} ${r(y + 2)}L${r(x + 3)} ${r(y - 2)}`,
  interrupted: (x, y) => `M${r(x - 1.7)} ${r(y - 2.4)}v4.8M${r(x + 1.7)} ${r(y - 2.4)}v4.8`,
};

/**
 * The mark of the reason that was given for a short rep.
 * @param why the reason
 * @param x middle of the stroke's foot
 * @param y the ground
 * @param tall height that was asked
 * @returns an SVG path, to be stroked
 */
export function reasonPath(why: ShortReason, x: number, y: number, tall: number): string {
  return marks[why](x + LEAN * (tall / RIBBON.tall), y - tall - 5.5);
}

/**
 * How tall a time is drawn.
 * @param ms held or asked, milliseconds
 * @param tallestMs the hold at full height, milliseconds
 * @returns height in the ribbon's units
 */
export function tallOf(ms: number, tallestMs: number): number {
  if (ms <= 0) return 0;
  return Math.max(LEAST_TALL, Math.min(1, ms / Math.max(1, tallestMs)) * RIBBON.tall);
}

/**
 * The hold at full height when the page does not say.
 * @param reps of a ribbon
 * @returns the longest that was asked or held, milliseconds
 */
export function tallestOf(reps: readonly RibbonRep[]): number {
  return reps.reduce((most, { prescribedMs, heldMs }) => Math.max(most, prescribedMs, heldMs), 1);
}

function r(value: number): number {
  return Math.round(value * 100) / 100;
}
