import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultMessage } from './fault.ts';
import { explainJsonFault, findJsonFault } from './json-fault.ts';

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

describe('explainJsonFault', () => {
  const said = (text: string): string => {
    const { line, column, fault } = explainJsonFault(text) ?? { fault: { rule: 'unfit' } as const };
    return `${line}:${column} ${faultMessage({ fault })}`;
  };

  // What RFC 8259 allows at each place.
  it.each([
    ['{', '1:2', 'ends too early. Expected a key in quotes or a closing curly bracket.'],
    ['{\n', '1:2', 'ends too early. Expected a key in quotes or a closing curly bracket.'],
    ['[', '1:2', 'ends too early. Expected a value or a closing square bracket.'],
    ['{"a"', '1:5', 'ends too early. Expected a colon.'],
    ['{"a":', '1:6', 'ends too early. Expected a value'],
    ['{"a": "b', '1:9', 'ends too early. Expected a closing quote.'],
    ['{"a": 1', '1:8', 'ends too early. Expected a comma or a closing curly bracket.'],
    ['{"a": 1,', '1:9', 'ends too early. Expected a key in quotes.'],
    ['{"a": [1, 2', '1:12', 'ends too early. Expected a comma or a closing square bracket.'],
    ['hello', '1:1', 'expected an opening curly bracket, found “hello”'],
    ['{"a": 1,}', '1:9', 'expected a key in quotes, found “}”'],
    ['{a: 1}', '1:2', 'expected a key in quotes or a closing curly bracket, found “a”'],
    ["{'a': 1}", '1:2', "expected a straight double quote, found “'”"],
    ['{“a”: 1}', '1:2', 'expected a straight double quote, found ““”'],
    ['{"a": .5}', '1:7', 'expected a number such as 30, 0.5 or -2, found “.”'],
    ['{"a": True}', '1:7', 'expected a value, such as 30, true or a text in quotes, found “True”'],
    ['{"a": "\\q"}', '1:9', 'expected one of the escapes of JSON'],
    ['{"a": "\\u12G4"}', '1:12', 'expected four hexadecimal digits, found “G4”'],
    ['{"a": "x\ny"}', '1:9', 'a text breaks off at the end of its line'],
    ['{"a": "x\u0001"}', '1:9', 'bare control character U+0001'],
    ['{"a"\u0000: 1}', '1:5', 'expected a colon, found “U+0000”'],
    ['{} {}', '1:4', 'expected the end of the file, found “{”'],
  ])('%j', (text, place, words) => {
    expect(said(text).startsWith(`${place} This is not JSON: `)).toBe(true);
    expect(said(text)).toContain(words);
  });
});
