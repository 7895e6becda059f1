import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const require = createRequire(import.meta.url);
const forbidden: { name: string }[] = [
  ...require('../../.dependency-cruiser.cjs').forbidden,
  ...require('../../.dependency-folders.cjs').forbidden,
];

const reading = (path: string) => `import { b } from '${path}'; export const a = b;`;
const leaf = 'export const b = 1;';
const room = (name: string) => `packages/engine/src/${name}`;

/** A wrong tree that reads from one place to another that it may not read. */
function tree(from: string, to: string): Record<string, string> {
  const up = '../'.repeat(from.split('/').length);
  return { [`${from}/a.js`]: reading(`${up}${to}/b.js`), [`${to}/b.js`]: leaf };
}

/** Wrong trees, each with the rule that must turn red on it. */
const wrongTrees: readonly (readonly [rule: string, files: Record<string, string>])[] = [
  ['no-circle', { 'packages/cues/src/a.js': reading('./b.js'), 'packages/cues/src/b.js': reading('./a.js') }],
  [
    'no-circle',
    {
      'packages/cues/src/a.ts': "import type { B } from './b.ts'; export interface A { b: B }",
      'packages/cues/src/b.ts': "import type { A } from './a.ts'; export interface B { a: A }",
    },
  ],
  [
    'no-folder-circle',
    {
      'packages/cues/src/one/a.js': reading('../two/b.js'),
      'packages/cues/src/two/b.js': leaf,
      'packages/cues/src/two/c.js': reading('../one/d.js'),
      'packages/cues/src/one/d.js': leaf,
    },
  ],
  ['engine-units', tree(room('units'), room('program'))],
  ['engine-program', tree(room('program'), room('session'))],
  ['engine-journal', tree(room('journal'), room('timeline'))],
  ['engine-load', tree(room('load'), room('fatigue'))],
  ['engine-fatigue', tree(room('fatigue'), room('timeline'))],
  ['engine-archer', tree(room('archer'), room('prescription'))],
  ['engine-season', tree(room('season'), room('prescription'))],
  ['engine-prescription', tree(room('prescription'), room('timeline'))],
  ['engine-timeline', tree(room('timeline'), room('session'))],
  ['engine-session', tree(room('session'), room('summary'))],
  ['engine-exchange', tree(room('exchange'), room('demo'))],
  ['engine-summary', tree(room('summary'), room('demo'))],
  ['package-engine', tree('packages/engine/src', 'packages/words/src')],
  ['package-words', tree('packages/words/src', 'packages/cues/src')],
  ['package-cues', tree('packages/cues/src', 'packages/store/src')],
  ['package-sight', tree('packages/sight/src', 'packages/store/src')],
  ['package-store', tree('packages/store/src', 'packages/box/src')],
  ['package-ui', tree('packages/ui/src', 'packages/runner/src')],
  ['package-box', tree('packages/box/src', 'packages/cues/src')],
  ['package-runner', tree('packages/runner/src', 'packages/store/src')],
  ['no-deep-import', tree('packages/runner/src', 'packages/engine/src/units')],
  ['nobody-imports-the-app', tree('packages/store/src', 'apps/web/src')],
  ['places-never-meet', tree('apps/web/src/line', 'apps/web/src/kit')],
  ['shell-below-places', tree('apps/web/src/shell', 'apps/web/src/journal')],
  ['no-unresolvable', { 'packages/cues/src/a.js': reading('./nowhere.js') }],
];

describe('the import directions', () => {
  let folder: string;
  const before = process.cwd();

  beforeEach(() => {
    folder = mkdtempSync('/tmp/larkhold-directions-');
    process.chdir(folder);
  });

  afterEach(() => {
    process.chdir(before);
    rmSync(folder, { recursive: true });
  });

  it.each(wrongTrees)('%s turns red on a wrong tree', async (rule, files) => {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const options = { ruleSet: { forbidden }, validate: true, tsPreCompilationDeps: true } as Parameters<
      typeof cruise
    >[1];
    const { output } = await cruise(
      [...new Set(Object.keys(files).map((path) => path.split('/')[0] ?? path))],
      options,
    );
    if (typeof output === 'string') throw new TypeError(output);
    expect(output.summary.violations.map((violation) => violation.rule.name)).toContain(rule);
  });

  it('are each shown a wrong tree', () => {
    const shown = new Set(wrongTrees.map(([rule]) => rule));
    // The last room may read all others: there is nothing that it must not.
    const rules = forbidden.map(({ name }) => name).filter((name) => name !== 'engine-demo');
    expect(rules.filter((name) => !shown.has(name))).toEqual([]);
  });
});
