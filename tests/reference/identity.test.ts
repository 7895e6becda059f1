// Identities: RFC 9562, appendix A.6, the example of a UUID of version 7, made and read by the package uuid, an independent oracle.
import { builtInPrograms, formatProgram, parseProgram } from '@larkhold/engine';
import { v4, v7, validate, version } from 'uuid';
import { describe, expect, it } from 'vitest';

const [program] = builtInPrograms;

function idReadBack(id: string): string | undefined {
  const read = parseProgram(formatProgram({ ...program!, id }));
  return 'program' in read ? read.program.id : undefined;
}

describe('the id of a program', () => {
  it('may be of version 7: the example of 1645557742000 ms, 017f22e2-79b0-7', () => {
    const id = v7({ msecs: 1_645_557_742_000 });
    expect(id).toMatch(/^017f22e2-79b0-7/);
    expect(idReadBack(id)).toBe(id);
  });

  it('may be of version 4, as browsers make them', () => {
    const id = v4();
    expect(idReadBack(id)).toBe(id);
  });

  it('is one in every built-in program, each its own', () => {
    const ids = builtInPrograms.map(({ id }) => id ?? '');
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(validate(id) && version(id) > 0).toBe(true);
  });

  it('is refused where it is invalid, at its place in the file', () => {
    for (const id of ['017f22e2-79b0-7', '017f22e279b07cc398c4dc0c0c07398f', 'x']) {
      expect(validate(id)).toBe(false);
      const read = parseProgram(formatProgram({ ...program!, id }));
      const pointers = 'problems' in read ? read.problems.map(({ pointer }) => pointer) : [];
      expect(pointers).toEqual(['/id']);
    }
  });
});
