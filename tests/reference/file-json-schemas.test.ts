import { createHandOver, fileJsonSchemas, formatHandOver, formatJournal } from '@larkhold/engine';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyJournal } from '../fixtures/journal/any-journal.ts';

const schemas = fileJsonSchemas();
const ajv = new Ajv2020({ strict: false, validateFormats: false });

describe('the JSON Schemas of files (JSON Schema 2020-12, by an independent validator)', () => {
  it.each(Object.entries(schemas))('%s is a schema', (_name, schema) => {
    expect(ajv.validateSchema(schema)).toBe(true);
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });

  it('a journal that we write is what its schema says', () => {
    const validate = ajv.compile(schemas.journal);
    fc.assert(
      fc.property(anyJournal, (journal) => {
        expect(validate(JSON.parse(formatJournal(journal))), JSON.stringify(validate.errors)).toBe(true);
      }),
      { numRuns: 200, seed: 20261127 },
    );
  });

  it('a journal with a rep that no drill has is not', () => {
    const validate = ajv.compile(schemas.journal);
    const rep = { block: 0, set: 0, rep: 0, hand: 'third', prescribedMs: 1, heldMs: 1, outcome: 'held' };
    const drill = {
      id: 'a',
      program: 'p',
      date: '2026-11-25',
      startedAt: '2026-11-25T06:00:00Z',
      endedAt: '2026-11-25T06:10:00Z',
    };
    const journal = JSON.parse(formatJournal({ drills: [], days: [], weeks: [], notes: [], milestones: [] } as never));
    expect(validate({ ...journal, drills: [{ ...drill, reps: [rep] }] })).toBe(false);
    expect(validate({ ...journal, drills: [{ ...drill, reps: [{ ...rep, hand: 'usual' }] }] })).toBe(true);
  });

  it('a hand-over that we write is what its schema says', () => {
    const validate = ajv.compile(schemas['hand-over']);
    fc.assert(
      fc.property(anyJournal, (journal) => {
        const handOver = createHandOver({
          ...{ journal, archerId: 'a', archer: 'Ada', from: '2000-01-01', to: '2099-12-31' },
          ...{ madeAt: '2026-11-25T06:00:00Z', includesNotes: true, programs: [] },
        });
        expect(validate(JSON.parse(formatHandOver(handOver))), JSON.stringify(validate.errors)).toBe(true);
      }),
      { numRuns: 100, seed: 20261127 },
    );
  });
});
