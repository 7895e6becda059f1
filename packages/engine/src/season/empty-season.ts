import { type Season, seasonSchema } from './season.ts';

/**
 * A season with nothing in it: its weekdays are the sensible ones.
 * @param title what it is called
 * @returns a valid season
 * @throws TypeError where the title is invalid
 * @example emptySeason('Winter').blocks // []
 */
export function emptySeason(title: string): Season {
  const read = seasonSchema.safeParse({ format: 'larkhold/season', version: 1, title, blocks: [] });
  if (!read.success) throw new TypeError(`title is '${title}'; expected 1 to 120 characters`);
  return read.data;
}
