import { z } from 'zod';
import { programSchema } from './program.ts';

/** The one rule between keys that JSON Schema can say: more than one set, or a rung that raises the sets, needs a set rest. */
const needsSetRest = {
  if: {
    type: 'object',
    anyOf: [
      { required: ['sets'], properties: { sets: { type: 'number', minimum: 2 } } },
      {
        required: ['ladder'],
        properties: {
          ladder: {
            type: 'object',
            required: ['rungs'],
            properties: {
              rungs: {
                type: 'array',
                contains: { type: 'object', required: ['raise'], properties: { raise: { const: 'sets' } } },
              },
            },
          },
        },
      },
    ],
  },
  // biome-ignore lint/suspicious/noThenProperty: `then` is the schema language's own key
  then: { type: 'object', required: ['setRest'], properties: { setRest: true } },
};

function generate(): Record<string, unknown> {
  const schema = z.toJSONSchema(programSchema, {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ jsonSchema }) => {
      if (jsonSchema.properties?.sets && jsonSchema.properties.letDown) Object.assign(jsonSchema, needsSetRest);
    },
  });
  return { ...schema, $id: 'larkhold-program-1.schema.json', title: 'Larkhold drill program, version 1' };
}

/** The program file's JSON Schema (2020-12), generated from `programSchema`. The rules it cannot say are on the program file page. */
export const programJsonSchema: Record<string, unknown> = generate();
