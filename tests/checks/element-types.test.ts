// What a strict TypeScript page needs to know of an element: its tag, and what each of its events carries.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const packages = fileURLToPath(new URL('../../packages', import.meta.url));
const sources = ['ui', 'runner', 'sight'].flatMap((room) =>
  readdirSync(`${packages}/${room}/src`, { recursive: true, encoding: 'utf8' })
    .filter((path) => /^(?!.*\.(test|browser)\.).*\.ts$/.test(path))
    .map((path) => readFileSync(`${packages}/${room}/src/${path}`, 'utf8')),
);
const elements = sources.flatMap((source) =>
  [...source.matchAll(/@customElement\('([\w-]+)'\)/g)].map(([, tag = '']) => ({ tag, source })),
);
const drillEvents = sources.find((source) => source.includes('export interface DrillEvents')) ?? '';
const isTyped = (name: string, source: string): boolean =>
  source.includes(`    '${name}': CustomEvent<`) || drillEvents.includes(`\n  '${name}': {`);
const namesIn = (source: string, pattern: RegExp): string[] =>
  [...source.matchAll(pattern)].map(([, name = '']) => name);

it('finds the elements', () => expect(elements.length).toBeGreaterThanOrEqual(16));

describe.each(elements)('$tag', ({ tag, source }) => {
  it('is in HTMLElementTagNameMap', () => {
    expect(source).toMatch(new RegExp(`interface HTMLElementTagNameMap \\{\\s+'${tag}': \\w+;`));
  });

  it('describes every event that it sends, with the type of its detail', () => {
    const told = namesIn(source, /@event ([\w-]+)/g);
    const sent = namesIn(source, /(?:drillEvent|CustomEvent(?:<\w+>)?|#tell)\(\s*'([\w-]+)'/g);
    expect([...new Set(sent)].sort()).toEqual([...told].sort());
    expect(told.filter((name) => !isTyped(name, source))).toEqual([]);
  });
});
