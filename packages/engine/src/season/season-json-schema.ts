import * as z from 'zod';
import { seasonSchema } from './season.ts';

/** The season file's JSON Schema (2020-12), generated from `seasonSchema`. The rules it cannot say are on the season page. */
export const seasonJsonSchema: Record<string, unknown> = {
  ...z.toJSONSchema(seasonSchema, { target: 'draft-2020-12', io: 'input' }),
  $id: 'larkhold-season-1.schema.json',
  title: 'Larkhold season, version 1',
};
