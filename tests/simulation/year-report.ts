import { inventedArchers } from './invented-archers.ts';
import { liveYear } from './live-year.ts';
import { besideFixed } from './year-beside-fixed.ts';
import { singleCautions } from './year-cautions.ts';
import { yearPicture } from './year-picture.ts';
import { yearTable } from './year-table.ts';

/**
 * The year of the invented archers, with what a fixed plan would have done to the same.
 * @returns tables in Markdown, and an SVG file
 */
export function yearReport(): { tables: string; picture: string } {
  const years = inventedArchers.map((archer) => liveYear(archer));
  const fixed = inventedArchers.map((archer) => liveYear(archer, 'fixed'));
  return {
    tables: `${[besideFixed(years, fixed), singleCautions(), ...years.map(yearTable)].join('\n\n')}\n`,
    picture: yearPicture(years),
  };
}
