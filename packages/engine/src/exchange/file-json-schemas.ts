import * as z from 'zod';
import { drillRecordSchema } from '../journal/drill-record.ts';
import { repRecordSchema } from '../journal/rep-record.ts';
import { programJsonSchema } from '../program/program-json-schema.ts';
import { seasonJsonSchema } from '../season/season-json-schema.ts';
import { handOverSchema } from './hand-over.ts';
import { journalFileSchema, journalVersion } from './journal-file.ts';

/**
 * The JSON Schema (2020-12) of a file.
 * @param schema the file's
 * @param name as in `format`, without `larkhold/`
 * @param version of the file
 * @returns a plain object. What a schema can't say (days that exist, texts without lone surrogates) the parser says
 */
export function fileJsonSchema(schema: z.ZodType, name: string, version: number): Record<string, unknown> {
  // Reps are read by hand for speed: their list is described here.
  const reps = { type: 'array', maxItems: 20_000, items: z.toJSONSchema(repRecordSchema, { io: 'input' }) };
  const made = z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    io: 'input',
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      if (zodSchema === drillRecordSchema.shape.reps) Object.assign(jsonSchema, reps);
    },
  });
  return { ...made, $id: `larkhold-${name}-${version}.schema.json`, title: `Larkhold ${name}, version ${version}` };
}

/**
 * The JSON Schemas (2020-12) of the files that the engine reads. Made on asking: no start of an app waits for them.
 * @returns the schemas by the name in a file's `format`
 */
export function fileJsonSchemas(): Record<'program' | 'season' | 'journal' | 'hand-over', Record<string, unknown>> {
  return {
    program: programJsonSchema,
    season: seasonJsonSchema,
    journal: fileJsonSchema(journalFileSchema, 'journal', journalVersion),
    'hand-over': fileJsonSchema(handOverSchema, 'hand-over', handOverSchema.shape.version.value),
  };
}
