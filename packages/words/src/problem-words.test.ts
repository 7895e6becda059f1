import {
  type Complaint,
  type Fault,
  faultMessage,
  faultSentences,
  parseProgram,
  parseQuickLine,
  parseSeason,
} from '@larkhold/engine';
import { expect, it } from 'vitest';
import { createWords } from './create-words.ts';
import { problemWords } from './problem-words.ts';

const english = createWords('en');
const german = createWords('de');
const block = {
  title: 'Holds',
  drill: 'holding',
  sets: 1,
  reps: 5,
  draw: 3,
  hold: 30,
  letDown: 3,
  rest: { seconds: 20 },
};
const program = { format: 'larkhold/program', version: 2, title: 'Weekday', tool: 'bow', blocks: [block] };
const season = { format: 'larkhold/season', version: 1, title: 'Winter', blocks: [{}], restDays: [{ from: 'x' }] };
const rungs = [{ raise: 'hold', by: 5, until: 20, resets: { hold: 5, reps: 9 } }];

/** Files and lines that are wrong in many ways. */
const problems: Complaint[] = [
  ...['', '{', '[]', '{}', '{"a":1,"a":2}', '{"a":"\u0001"}', '{"a" 1}', `${'['.repeat(60)}`],
  ...[
    { ...program, version: 9 },
    { ...program, colour: 1, tool: 'rope', title: 7, blocks: 'none' },
    { ...program, blocks: [] },
  ],
  ...[
    { ...block, sets: 2 },
    { ...block, reps: 0, hold: 500 },
    { ...block, hold: 1.25 },
    { ...block, ladder: { rungs } },
  ].map((one) => ({ ...program, blocks: [one] })),
]
  .map((file) => parseProgram(typeof file === 'string' ? file : JSON.stringify(file)))
  .concat(parseSeason(JSON.stringify(season)) as ReturnType<typeof parseProgram>)
  .flatMap((read) => (read.ok ? [] : read.problems))
  .concat(
    ['3x10', '1x5 hold 5 rest 20 fast', '2x5 hold 5 rest 20'].flatMap((line) => {
      const read = parseQuickLine(line);
      return (read.ok ? [] : read.problems) as never[];
    }),
  );

it('says in English what the engine says, for the engine’s own sentences are the English ones', () => {
  expect(new Set(problems.map(({ fault }) => fault.rule)).size).toBeGreaterThan(15);
  const bare = (text: string) => text.replaceAll('\u00a0', ' ');
  for (const problem of problems) expect(bare(problemWords(problem, english))).toBe(bare(faultMessage(problem)));
});

it('says all of it in German, with nothing left unfilled', () => {
  for (const problem of problems) {
    const said = problemWords(problem, german);
    expect(said).not.toBe(problemWords(problem, english));
    expect(said).toMatch(/^\S.*\.$/s);
    expect(said).not.toMatch(/Expected|Found|undefined|\{\w+\}/);
  }
  const tooFew: Complaint = { fault: { rule: 'atLeast', limit: 1 }, found: { kind: 'text', found: '0' } };
  expect(problemWords(tooFew, german)).toBe('Erwartet: mindestens 1. Gefunden: 0.');
});

it('has a sentence for every rule that a reader can report', () => {
  const sentences = Object.keys(faultSentences).filter((key) => !/missing$|found/.test(key));
  const rules = new Set<string>(sentences.map((key) => key.slice('fault.'.length)));
  for (const { fault } of problems) expect(rules).toContain(fault.rule satisfies Fault['rule']);
});
