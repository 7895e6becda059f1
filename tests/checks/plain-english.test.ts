import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Turns that read as a translation, and the usual words for them. */
const turns: readonly (readonly [RegExp, string])[] = [
  [/\bso many\b/i, 'how many, this many'],
  [/\bso (long|often)\b(?! that)/i, 'how long, for this time, how often'],
  [/\bput right\b/i, 'corrected'],
  [
    /\b(as|where|until) (it|they|the (?!archer)\w+) stands?\b(?! (still|for|up|in for|since))/i,
    'as it is, where it is',
  ],
  [/\bwhat (it|they|a \w+|the \w+) stands? on\b/i, 'what it needs'],
  [/\b(is|are) told (of|again|anew|once|as such|at once|by name)\b/i, 'is reported'],
  [/\b(is|are|was|were) had\b/i, 'is there'],
  [/\bstands? (beside|above|over|before|with|alone|apart|at full height)\b/i, 'is beside, is above, is kept'],
  [
    /\b(is|are|was|were|be|been)( not| never)? taken (for|away|off|out|in|over|up|down)\b/i,
    'mistaken for, removed, imported',
  ],
  [/\bwhere (it|a \w+|the \w+) stood\b/i, 'where it was'],
  [/\b(that|it|date|day|title|rest|past|look) is none\b/i, 'is invalid, does not count'],
  [/\b[Aa]new\b(?!\.\w| [=:])|\b(nought|whereof|thereof)\b/, 'again, zero'],
  [/\bcomes? about\b/i, 'happens'],
  [/\bgone on from\b/i, 'continued, resumed'],
  [/\bwhat of (a|the|it) (\w+ ){0,3}(is|was|does|will|another|limits|belongs)\b/i, 'the parts of it that'],
  [/\b(be|is|was) had again\b/i, 'repeated'],
  [/\bshall\b/i, 'should, must, will'],
  [/\bits likes?\b/i, 'ones like it'],
  [/(\/\*\*|\/\/|^ *\*) So (much|far|few|soon|near|late) (?!that|as)/, 'how much, how far, how soon'],
  [/\bby so (much|many|far|few)\b/i, 'how far, by this much'],
];

/** Whether a text has any of them: most have none, and are read once. */
const any = new RegExp(turns.map(([turn]) => turn.source).join('|'), 'im');

/** The turns in a text, with their lines. */
function found(text: string): string[] {
  if (!any.test(text)) return [];
  return text
    .split('\n')
    .flatMap((line, index) =>
      turns.filter(([turn]) => turn.test(line)).map(([, usual]) => `${index + 1}: say ${usual}: ${line.trim()}`),
    );
}

it('says comments, test names, docs and sentences in usual words', () => {
  const files = ['packages', 'apps', 'tests', 'docs', 'scripts'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(ts|mjs|md|css|html)$/.test(name))
      .filter((name) => !/node_modules|[/\\]?dist(-types)?[/\\]|[/\\]de[/\\]|fixtures|plain-english\.test/.test(name))
      .map((name) => join(folder, name)),
  );
  files.push('README.md', 'DEVELOPERS.md', 'CONTRIBUTING.md', 'SECURITY.md', 'CHANGELOG.md');
  expect(files.length).toBeGreaterThan(900);
  const all = files.flatMap((file) => found(readFileSync(join(root, file), 'utf8')).map((line) => `${file}:${line}`));
  expect(all).toEqual([]);
});

it('finds each turn, and leaves usual English alone', () => {
  for (const text of [
    '/** So many drills are drawn. */',
    'The longest hold is at least so long.',
    'A wrong outcome is put right in one press.',
    '@param record the record as it stands.',
    'What the app stands on',
    'A rep is told once.',
    'The number stands beside it.',
    'A live page is not taken for lost time.',
    'Where the drill stood when it was last drawn.',
    'A day that is none.',
    'Reads everything anew.',
    'What of a season comes about.',
    'The values that what of the kit is shared among.',
    'A snapshot is gone on from.',
    'The kit as it shall be.',
    'A program and its likes.',
    '/** So soon after a one a zero makes it ten, milliseconds. */',
    'The hand is off by so much.',
  ])
    expect([text, found(text).length]).toEqual([text, 1]);
  for (const text of [
    'Whether a journal is so long that the page must get turns.',
    'read from where the archer is standing',
    'Nobody vouches for that rep, and the drill is told to go on.',
    'where the clock stands still',
    '`{id}` stands for a program of the rack',
    'It is taken as 96 to the inch, so much is known.',
  ])
    expect([text, found(text)]).toEqual([text, []]);
});
