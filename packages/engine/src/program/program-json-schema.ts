import * as z from 'zod';
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

/** A block of a test: one set, one hand, no ladder. */
const testBlock = {
  type: 'object',
  properties: {
    sets: { type: 'number', maximum: 1 },
    hand: { type: 'string', enum: ['usual', 'opposite'] },
    ladder: false,
  },
};
const only = (key: string, value: string | number, type: string) => ({
  type: 'object',
  required: [key],
  properties: { [key]: { type, const: value } },
});

/** The rules of a test that JSON Schema can say. */
const testRules = {
  allOf: [
    {
      if: only('kind', 'test', 'string'),
      // biome-ignore lint/suspicious/noThenProperty: `then` is the schema language's own key
      then: {
        type: 'object',
        required: ['measure'],
        properties: { measure: true, blocks: { type: 'array', maxItems: 1, items: testBlock } },
      },
      else: { type: 'object', properties: { measure: false } },
    },
    {
      if: only('measure', 'longest-hold-seconds', 'string'),
      // biome-ignore lint/suspicious/noThenProperty: `then` is the schema language's own key
      then: {
        type: 'object',
        properties: {
          blocks: {
            type: 'array',
            items: { type: 'object', properties: { reps: { type: 'number', maximum: 1 } } },
          },
        },
      },
    },
    {
      if: only('version', 1, 'number'),
      // biome-ignore lint/suspicious/noThenProperty: `then` is the schema language's own key
      then: { type: 'object', properties: { kind: false, measure: false } },
    },
  ],
};

function generate(): Record<string, unknown> {
  const schema = z.toJSONSchema(programSchema, {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ jsonSchema }) => {
      if (jsonSchema.properties?.sets && jsonSchema.properties.letDown) Object.assign(jsonSchema, needsSetRest);
    },
  });
  const title = 'Larkhold drill program, version 2';
  return { ...schema, ...testRules, $id: 'larkhold-program-2.schema.json', title };
}

/** The program file's JSON Schema (2020-12), generated from `programSchema`. The rules it cannot say are on the program file page. */
export const programJsonSchema: Record<string, unknown> = generate();
