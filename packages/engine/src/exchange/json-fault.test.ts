import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findJsonFault } from './json-fault.ts';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};
/** JSON with one place changed, cut off or doubled. */
const nearlyJson = fc
  .tuple(
    fc.json({ maxDepth: 4 }),
    fc.nat(),
    fc.constantFrom('', ',', '"', '\\', '}', ']', '{', '[', ':', '0', '\n', 'x', '\u0001', '-', '.'),
  )
  .chain(([text, place, sign]) => {
    const at = place % (text.length + 1);
    const [before, after] = [text.slice(0, at), text.slice(at)];
    return fc.constantFrom(
      text,
      before,
      before + sign + after,
      before + sign + after.slice(1),
      before + after.slice(1),
    );
  });

describe('findJsonFault', () => {
  it('finds a fault in exactly the texts that the platform’s own parser refuses', () => {
    fc.assert(
      fc.property(fc.oneof(nearlyJson, fc.string(), fc.json()), (text) => {
        expect(findJsonFault(text) === undefined).toBe(isJson(text));
      }),
      { numRuns: 20_000, seed: 20_261_127 },
    );
  });

  it('names a place after which nothing could mend the text: what comes before it can still be gone on with', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 3 }), fc.nat(), (text, place) => {
        const cut = text.slice(0, place % text.length);
        const fault = findJsonFault(cut);
        if (!fault) return;
        // A cut-off text is at fault at its end, or where a word or number begins that is cut in its middle.
        expect(cut.slice(fault.column - 1)).toMatch(/^(?:|t|tru?|f|fa|fals?|n|nul?|-|\.|[eE][+-]?)$/);
      }),
      { numRuns: 5000, seed: 20_261_127 },
    );
  });

  it.each([
    ['{"a": 1,}', 1, 9],
    ['{\n  "format": oops', 2, 13],
    ['[1, 2', 1, 6],
    ['', 1, 1],
    ['\uFEFF{"a" 1}', 1, 6],
    ['{"a": "x\ny"}', 1, 9],
    ['{"a": "\\q"}', 1, 9],
    ['{"a": tru}', 1, 7],
    ['[]]', 1, 3],
    ['{"a": 1}\n{', 2, 1],
    ['[1]\r\n[2]', 2, 1],
  ])('%j stops being JSON at line %i, column %i', (text, line, column) => {
    expect(findJsonFault(text)).toEqual({ line, column });
  });

  it('walks lists of a million levels and a string of twenty million signs without running out of stack', () => {
    expect(findJsonFault('['.repeat(1_000_000))).toEqual({ line: 1, column: 100_001 });
    const long = `["${'a'.repeat(20_000_000)}`;
    expect(findJsonFault(long)).toEqual({ line: 1, column: long.length + 1 });
  });
});
