import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyProgram } from '../../../../tests/fixtures/program/any-program.ts';
import { formatProgram } from './format-program.ts';
import { parseProgram } from './parse-program.ts';

describe('any valid program', () => {
  it('is read back as it was written, and writes the same text again', () => {
    fc.assert(
      fc.property(anyProgram, (program) => {
        const text = formatProgram(program);
        const parsed = parseProgram(text);

        expect(parsed).toEqual({ ok: true, program });
        expect(parsed.ok && formatProgram(parsed.program)).toBe(text);
      }),
      { numRuns: 60, seed: 20_261_125 },
    );
  }, 60_000);
});
