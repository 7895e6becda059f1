import { z } from 'zod';
import { programSchema } from './program.ts';

function generate(): Record<string, unknown> {
  const schema = z.toJSONSchema(programSchema, {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ jsonSchema }) => {
      // The one rule between keys that JSON Schema can say.
      if (jsonSchema.properties?.sets && jsonSchema.properties.letDown) {
        jsonSchema.if = { required: ['sets'], properties: { sets: { minimum: 2 } } };
        // biome-ignore lint/suspicious/noThenProperty: `then` is the schema language's own key
        jsonSchema.then = { required: ['setRest'] };
      }
    },
  });
  return { ...schema, $id: 'larkhold-program-1.schema.json', title: 'Larkhold drill program, version 1' };
}

/** The program file's JSON Schema (2020-12), generated from `programSchema`. The rules it cannot say are on the program file page. */
export const programJsonSchema: Record<string, unknown> = generate();
