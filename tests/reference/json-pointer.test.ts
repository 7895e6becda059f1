import { parseProgram, pointerTo } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';

// RFC 6901, section 5: the document's keys and the pointers that name them.
describe('JSON Pointer', () => {
  it.each([
    [[], ''],
    [['foo'], '/foo'],
    [['foo', 0], '/foo/0'],
    [[''], '/'],
    [['a/b'], '/a~1b'],
    [['c%d'], '/c%d'],
    [['e^f'], '/e^f'],
    [['g|h'], '/g|h'],
    [['i\\j'], '/i\\j'],
    [['k"l'], '/k"l'],
    [[' '], '/ '],
    [['m~n'], '/m~0n'],
  ] as const)('of %j is %j', (path, pointer) => {
    expect(pointerTo(path)).toBe(pointer);
  });

  // Section 4: ~1 is read before ~0, so that "~01" is "~1" and not "/".
  it('tells "~1" as a key from a slash', () => {
    expect(pointerTo(['~1'])).toBe('/~01');
  });

  it('comes with every problem of a program file', () => {
    const text =
      '{"format":"larkhold/program","version":1,"title":"x","tool":"bow","a/b~c":1,"blocks":[{"title":"y","drill":"holding","sets":1,"reps":1,"draw":3,"hold":-5,"letDown":3,"rest":{"seconds":5}}]}';
    const read = parseProgram(text);
    const pointers = 'problems' in read ? read.problems.map(({ pointer }) => pointer) : [];
    expect(pointers).toContain('/blocks/0/hold');
    expect(pointers).toContain('/a~1b~0c');
  });
});
