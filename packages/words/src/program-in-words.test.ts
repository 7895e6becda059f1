import { builtInPrograms, prescribe } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { createWords } from './create-words.ts';
import { languages } from './language.ts';
import { programInWords } from './program-in-words.ts';

const others = Object.keys(languages).filter((language) => language !== 'en');
const english = createWords('en');

describe.each(others)('built-in programs in %s', (language) => {
  const words = createWords(language);

  it.each(builtInPrograms.map((program) => [program.title, program] as const))('says all of %s', (_, program) => {
    const told = programInWords(program, words);
    const texts = ({ title, about, source, warmUp, coolDown, blocks }: typeof program) => [
      ...[title, about, source, ...(warmUp ?? []), ...(coolDown ?? [])],
      ...blocks.map((block) => block.title),
    ];
    const [ours, theirs] = [texts(program), texts(told)];
    expect(theirs).toHaveLength(ours.length);
    for (const [index, text] of theirs.entries()) {
      expect(text).not.toBe('');
      expect(text).not.toBe(ours[index]);
    }
  });

  it('changes no number: the same is prescribed', () => {
    for (const program of builtInPrograms) {
      const numbers = (one: typeof program) => {
        const { blocks, durationMs } = prescribe({ program: one, records: [], today: '2026-11-25' });
        return [durationMs, blocks.map(({ title: _, ...block }) => block)];
      };
      expect(numbers(programInWords(program, words))).toEqual(numbers(program));
    }
  });

  it('leaves what somebody wrote as it is', () => {
    const copy = { ...builtInPrograms[0]! };
    expect(programInWords(copy, words)).toBe(copy);
  });
});

it('is English as it comes', () => {
  for (const program of builtInPrograms) expect(programInWords(program, english)).toBe(program);
});
