import { expect, it } from 'vitest';
import { builtInPrograms } from './built-in-programs.ts';
import { isSameDrill } from './is-same-drill.ts';
import type { Program } from './program.ts';

const [starter, twenty] = builtInPrograms as readonly [Program, Program];

it('compares what is done, not what it is called', () => {
  const [block] = starter.blocks;
  const inOtherWords = { ...starter, title: 'Vereinseinstieg', blocks: [{ ...block!, title: 'Kurze Halte' }] };
  expect(isSameDrill(starter, inOtherWords)).toBe(true);
  expect(isSameDrill(starter, { ...starter, tool: 'band' })).toBe(false);
  expect(isSameDrill(starter, { ...starter, blocks: [{ ...block!, hold: block!.hold + 1 }] })).toBe(false);
  expect(isSameDrill(starter, twenty)).toBe(false);
});
