import type { Program } from './program.ts';

/**
 * Whether two programs ask for the same. Built-in programs have other words in another language: what is done is compared, not what it is called.
 * @param one a program
 * @param other another one
 * @returns true where tool and blocks are the same, titles left out
 */
export function isSameDrill(one: Program, other: Program): boolean {
  return done(one) === done(other);
}

function done({ tool, blocks }: Program): string {
  return JSON.stringify([tool, blocks.map((block) => ({ ...block, title: '' }))]);
}
