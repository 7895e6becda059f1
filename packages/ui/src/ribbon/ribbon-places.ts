import type { RibbonRep } from './ribbon-rep.ts';

/** Widths and heights of a ribbon in its own units; the page scales it. */
export const RIBBON = { step: 12, tall: 44, above: 12, below: 5, setGap: 8, blockGap: 16, widest: 484 } as const;
/** Height of one row. */
export const ROW = RIBBON.above + RIBBON.tall + RIBBON.below;

/** Where the strokes of a ribbon are. */
export interface RibbonPlaces {
  /** Middle of each stroke's foot, and its row's ground. */
  feet: readonly { x: number; y: number }[];
  /** Where each row's ground ends. */
  rows: readonly { width: number; y: number }[];
  width: number;
  height: number;
}

/**
 * Puts the strokes in rows: a gap after a set, a wider one after a block, and a new row where the widest is full.
 * @param reps in the order of the drill
 * @param widest of a row, in the ribbon's units
 * @returns where each stroke is
 */
export function placeRibbon(
  reps: readonly Pick<RibbonRep, 'block' | 'set'>[],
  widest: number = RIBBON.widest,
): RibbonPlaces {
  const feet: { x: number; y: number }[] = [];
  const rows: { width: number; y: number }[] = [];
  let left = 0;
  let y = RIBBON.above + RIBBON.tall;
  for (const [index, rep] of reps.entries()) {
    const last = reps[index - 1];
    if (last && last.block !== rep.block) left += RIBBON.blockGap;
    else if (last && last.set !== rep.set) left += RIBBON.setGap;
    if (left > 0 && left + RIBBON.step > widest) {
      left = 0;
      y += ROW;
    }
    feet.push({ x: left + RIBBON.step / 2, y });
    left += RIBBON.step;
    const row = rows.at(-1);
    if (row?.y === y) row.width = left;
    else rows.push({ width: left, y });
  }
  return { feet, rows, width: Math.max(RIBBON.step, ...rows.map(({ width }) => width)), height: y + RIBBON.below };
}
