import { builtInPrograms, type Program } from '@larkhold/engine';
import { textsOf } from '#texts';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/** One object for each program and language, so that whoever compares programs finds the same one again. */
const made = new Map<string, Program>();

/**
 * A built-in program with its texts in a language. Numbers, id and calls are as they were: it prescribes the same.
 * @param program one of `builtInPrograms`; a program that somebody wrote is returned as its author wrote it
 * @param words the language
 * @returns the program, always the same object
 */
export function programInWords(program: Program, { language }: Words = presentWords()): Program {
  const told = textsOf(language)?.builtIn;
  const own = told?.programs[program.id ?? ''];
  if (!told || !own || !builtInPrograms.includes(program)) return program;
  const key = `${language} ${program.id}`;
  const before = made.get(key);
  if (before) return before;
  const lines = (all: readonly string[]): string[] => all.map((line) => told.lines[line] ?? line);
  const inWords: Program = {
    ...program,
    ...{ title: own.title, about: own.about, source: own.source },
    blocks: program.blocks.map((block, index) => ({ ...block, title: own.blocks[index] ?? block.title })),
    ...(program.warmUp && { warmUp: lines(program.warmUp) }),
    ...(program.coolDown && { coolDown: lines(program.coolDown) }),
  };
  made.set(key, inWords);
  return inWords;
}
