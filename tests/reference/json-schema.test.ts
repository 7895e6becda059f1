// The published schema (JSON Schema 2020-12) as Ajv, an independent validator, reads it, against this reader of program files.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { builtInPrograms, formatProgram, parseProgram, programJsonSchema } from '@larkhold/engine';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';

const ajv = new Ajv2020({ strict: true, allErrors: true });
// RFC 9562 section 4: 8-4-4-4-12 hexadecimal digits
ajv.addFormat('uuid', /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i);
const validate = ajv.compile(programJsonSchema);

const fixture = readFileSync(new URL('../fixtures/program/v2-weekday-holding.drill.json', import.meta.url), 'utf8');
/** The schema that comes with the package, found as another program finds it. */
const packagedSchema = readFileSync(
  createRequire(import.meta.url).resolve('@larkhold/engine/program.schema.json'),
  'utf8',
);

type Path = readonly (string | number)[];

/** The file with the value at a path replaced, or removed when it is undefined. */
function withValue(path: Path, value: unknown): unknown {
  const file: unknown = JSON.parse(fixture);
  let at = file as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>;
  const last = path.at(-1) ?? '';
  if (value === undefined) delete at[last];
  else at[last] = value;
  return file;
}

const rungs = ['blocks', 0, 'ladder', 'rungs'] as const;
const broken: [Path, unknown][] = [
  ...['format', 'version', 'title', 'tool', 'blocks'].map((key): [Path, unknown] => [[key], undefined]),
  ...['title', 'drill', 'sets', 'reps', 'draw', 'hold', 'letDown', 'rest', 'setRest'].map((key): [Path, unknown] => [
    ['blocks', 0, key],
    undefined,
  ]),
  ...['format', 'title', 'author', 'about', 'source', 'tool', 'warmUp', 'blocks', 'coolDown'].map(
    (key): [Path, unknown] => [[key], 7],
  ),
  ...['title', 'drill', 'sets', 'reps', 'draw', 'hold', 'letDown', 'rest', 'setRest', 'letDownTo', 'hand', 'calls'].map(
    (key): [Path, unknown] => [['blocks', 0, key], false],
  ),
  [['blocks', 0, 'countFrom'], 'call'],
  [['version'], '1'],
  [['id'], 'not-a-uuid'],
  [['title'], ''],
  [['title'], 'x'.repeat(121)],
  [['about'], 'x'.repeat(4001)],
  [['sparkle'], true],
  [['tool'], 'crossbow'],
  [['warmUp'], Array(31).fill('x')],
  [['warmUp'], ['x'.repeat(201)]],
  [['blocks'], []],
  [['blocks'], Array(21).fill(JSON.parse(fixture).blocks[0])],
  [['blocks', 0, 'sets'], 0],
  [['blocks', 0, 'sets'], 21],
  [['blocks', 0, 'reps'], 1.5],
  [['blocks', 0, 'hold'], 0.4],
  [['blocks', 0, 'hold'], 180.1],
  [['blocks', 0, 'rest'], {}],
  [['blocks', 0, 'rest'], { seconds: 1, timesHold: 1 }],
  [['blocks', 0, 'rest'], { seconds: 1801 }],
  [['blocks', 0, 'calls'], ['']],
  [['blocks', 0, 'calls'], 'shot process'],
  [['blocks', 0, 'sparkle'], 1],
  [rungs, []],
  [[...rungs, 0, 'raise'], 'draw'],
  [[...rungs, 0, 'by'], 0],
  [[...rungs, 0, 'until'], undefined],
  [[...rungs, 1, 'resets', 'draw'], 3],
  [['blocks', 0, 'ladder', 'climbAfter', 'cleanSessions'], 0],
  [['blocks', 0, 'ladder', 'deload', 'keep'], undefined],
  [['blocks', 0, 'ladder', 'layoff', 0, 'days'], 366],
  [['blocks', 0, 'ladder', 'weeklyGrowth'], 0.9],
  [['blocks', 1, 'ladder'], { rungs: [{ raise: 'sets', by: 1, until: 2 }] }],
];

describe('the JSON Schema', () => {
  it('is the one in the package', () => {
    // After a change, write JSON.stringify(programJsonSchema, null, 2) to packages/engine/program.schema.json and run `npm run format`.
    expect(JSON.parse(packagedSchema)).toEqual(programJsonSchema);
  });

  it.each([...builtInPrograms.map(formatProgram), fixture])('agrees on a valid file', (text) => {
    expect(validate(JSON.parse(text))).toBe(true);
    expect(parseProgram(text).ok).toBe(true);
  });

  it.each(broken)('agrees that %j set to %j is broken', (path, value) => {
    const file = withValue(path, value);
    expect(validate(file)).toBe(false);
    expect(parseProgram(JSON.stringify(file)).ok).toBe(false);
  });
});
