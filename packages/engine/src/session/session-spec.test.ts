import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const room = fileURLToPath(new URL('.', import.meta.url));

describe('the session rules', () => {
  it('each have a test, and no test quotes another', () => {
    const rules = [...readFileSync(`${room}SPEC.md`, 'utf8').matchAll(/^- (S\d+):/gm)];
    const quotes = readdirSync(room)
      .filter((name) => name.endsWith('.test.ts'))
      .flatMap((name) => [...readFileSync(`${room}${name}`, 'utf8').matchAll(/\[(S\d+)\]/g)]);
    const numbersOf = (found: Iterable<RegExpMatchArray>) => [...new Set([...found].map((match) => match[1]))].sort();
    expect(rules).toHaveLength(numbersOf(rules).length); // no number twice
    expect(numbersOf(quotes)).toEqual(numbersOf(rules));
  });
});
