import fc from 'fast-check';

/** A change that a bad disk, a bad mailer or a bad person makes to a text. */
const damage = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(40),
  instead: fc.oneof(
    fc.constantFrom('', '"', '{', '}', '[', ']', ',', ':', '\\', '\\ud800', '\0', '\uFEFF'),
    fc.constantFrom('null', 'true', '-0', '1e999', '1e-7', '9007199254740993', '[[[[[['),
    fc.constantFrom('"__proto__":{"x":1},', '"constructor":null,', '"removed":true,', '"version":2'),
    fc.constantFrom('<script>alert(1)</script>', '"2026-02-30"', '"2026-W99"', '"larkhold/program"'),
    fc.json({ maxDepth: 3 }),
    fc.string({ unit: 'binary', maxLength: 8 }),
  ),
});

/**
 * A text that was cut, overwritten and mixed up in a few places.
 * @param text a good one
 */
export const damaged = (text: string): fc.Arbitrary<string> =>
  fc.array(damage, { minLength: 1, maxLength: 4 }).map((damages) =>
    damages.reduce((now, { at, length, instead }) => {
      const from = Math.floor(at * now.length);
      return now.slice(0, from) + instead + now.slice(from + length);
    }, text),
  );

const names = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom('__proto__', 'constructor', 'prototype', 'toString', 'removed', 'id', 'reps', 'strokes'),
);

/** Something of the same kind: most of these are good in a file, and some only nearly. */
const alike = fc.record({
  number: fc.oneof(
    fc.integer({ min: 0, max: 100 }),
    fc.integer(),
    fc.double({ min: 0, max: 60, noNaN: true }),
    fc.constantFrom(-0, 0.1 + 0.2, 1e21, 5e-324, Number.MAX_SAFE_INTEGER),
  ),
  string: fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 30 }),
    fc.constantFrom('2026-02-28', '2026-W53', '2026-11-25T06:30:00.5+01:00', 'held', 'short', 'both', '', ' '),
  ),
  boolean: fc.boolean(),
});

/**
 * A value that is JSON still, with one value or key in it exchanged for another.
 * @param good the value as it should be; it is copied
 */
export const misfilled = (good: unknown): fc.Arbitrary<unknown> =>
  fc.tuple(fc.nat(), fc.jsonValue({ maxDepth: 2 }), fc.option(names), alike, fc.boolean()).map((drawn) => {
    const [seed, other, key, same, isAlike] = drawn;
    const file: unknown = structuredClone(good);
    const places: [Record<string, unknown>, string][] = [];
    const walk = (inner: unknown): void => {
      if (typeof inner !== 'object' || inner === null) return;
      for (const name of Object.keys(inner)) {
        places.push([inner as Record<string, unknown>, name]);
        walk((inner as Record<string, unknown>)[name]);
      }
    };
    walk(file);
    const [holder, name] = places[seed % places.length] ?? [{}, ''];
    // As a file would hold it, and not as an assignment takes it: '__proto__' is then a key like any other.
    const kind = typeof holder[name];
    if (isAlike && (kind === 'number' || kind === 'string' || kind === 'boolean')) {
      holder[name] = same[kind];
      return file;
    }
    const put = Array.isArray(holder) ? name : (key ?? name);
    Object.defineProperty(holder, put, { value: other, enumerable: true, configurable: true, writable: true });
    return file;
  });

/**
 * A text of any kind that somebody may give where a JSON file is asked for.
 * @param text a good file
 */
export const hostileJson = (text: string): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 3, arbitrary: damaged(text) },
    { weight: 5, arbitrary: misfilled(JSON.parse(text)).map((file) => JSON.stringify(file)) },
    { weight: 1, arbitrary: fc.json() },
    { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
  );

/**
 * A line of any kind that somebody may type.
 * @param lines good ones
 * @param words what good ones are made of
 */
export const hostileLine = (lines: readonly string[], words: readonly string[]): fc.Arbitrary<string> =>
  fc.oneof(
    fc.constantFrom(...lines).chain(damaged),
    fc
      .array(fc.oneof(fc.constantFrom(...words), fc.nat().map(String), fc.string({ maxLength: 3 })))
      .map((some) => some.join(' ')),
    fc.string({ unit: 'binary', maxLength: 80 }),
  );
