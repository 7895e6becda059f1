import type { Complaint, Fault } from '@larkhold/engine';
import type { ParametersOf, Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/**
 * What is wrong with a file, in words.
 * @param complaint a problem as a reader of files reports it
 * @param words the language
 * @returns what was found, what was expected, what to do: one to three sentences
 * @example problemWords({ fault: { rule: 'atLeast', limit: 1 }, found: { kind: 'text', found: '0' } }) // 'Expected at least 1. Found 0.'
 */
export function problemWords({ fault, missing, found }: Complaint, words: Words = presentWords()): string {
  const { rule, ...facts } = fault;
  return [
    ...(missing === undefined ? [] : [words.say('fault.missing', { key: missing })]),
    faultWords(words, rule, facts),
    ...(found === undefined ? [] : [foundWords(words, found)]),
  ].join(' ');
}

function faultWords(words: Words, rule: Fault['rule'], facts: object): string {
  const say: (key: `fault.${Fault['rule']}`, facts: never) => string = words.say;
  return say(`fault.${rule}`, facts as never); // each fault carries what its sentence needs: `Fits` checks it
}

function foundWords(words: Words, found: NonNullable<Complaint['found']>): string {
  if (found.kind === 'text') return words.say('fault.found', { found: found.found });
  if (found.kind === 'list') return words.say('fault.foundList', { count: String(found.count) });
  return words.say('fault.foundObject');
}

/** The facts of a fault that its sentence does not get, or gets in a wrong shape; `never` where all is well. Numbers of a file may be read as text. */
type Unfit<Facts, Needs> = {
  [Name in keyof Needs]: Name extends keyof Facts
    ? Facts[Name] extends Needs[Name]
      ? never
      : [Facts[Name], string] extends [number, Needs[Name]]
        ? never
        : Name
    : Name;
}[keyof Needs];
type Fits = {
  [Rule in Fault['rule']]: Unfit<Extract<Fault, { rule: Rule }>, ParametersOf<`fault.${Rule}`>>;
}[Fault['rule']];
type AllFit = [Fits] extends [never] ? true : Fits;
true satisfies AllFit;
