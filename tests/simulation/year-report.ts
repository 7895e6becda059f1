import { inventedArchers } from './invented-archers.ts';
import { liveYear } from './live-year.ts';
import { yearPicture } from './year-picture.ts';
import { yearTable } from './year-table.ts';

/**
 * The year of the three invented archers.
 * @returns tables in Markdown, and an SVG file
 */
export function yearReport(): { tables: string; picture: string } {
  const years = inventedArchers.map(liveYear);
  return { tables: `${years.map(yearTable).join('\n\n')}\n`, picture: yearPicture(years) };
}
