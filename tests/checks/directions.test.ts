import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const { forbidden } = createRequire(import.meta.url)('../../.dependency-cruiser.cjs');

/** Each rule of the dependency check is shown a small wrong tree, so that it is known to turn red. */
describe('the import directions', () => {
  let tree: string;
  const before = process.cwd();

  beforeEach(() => {
    tree = mkdtempSync('/tmp/larkhold-directions-');
    process.chdir(tree);
  });

  afterEach(() => {
    process.chdir(before);
    rmSync(tree, { recursive: true });
  });

  async function broken(files: Record<string, string>): Promise<string[]> {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(tree, path)), { recursive: true });
      writeFileSync(join(tree, path), text);
    }
    const options = { ruleSet: { forbidden }, validate: true, tsPreCompilationDeps: true } as const;
    const { output } = await cruise(
      [...new Set(Object.keys(files).map((path) => path.split('/')[0] ?? path))],
      options,
    );
    if (typeof output === 'string') throw new TypeError(output);
    return output.summary.violations.map((violation) => violation.rule.name);
  }

  it('refuses a circle', async () => {
    const names = await broken({
      'packages/cues/src/a.js': "import { b } from './b.js'; export const a = b;",
      'packages/cues/src/b.js': "import { a } from './a.js'; export const b = a;",
    });
    expect(names).toContain('no-circle');
  });

  it('refuses an engine room that reads a room to its right', async () => {
    const names = await broken({
      'packages/engine/src/program/a.js': "import { b } from '../session/b.js'; export const a = b;",
      'packages/engine/src/session/b.js': 'export const b = 1;',
    });
    expect(names).toContain('engine-program');
  });

  it('refuses the engine reading another package', async () => {
    const names = await broken({
      'packages/engine/src/a.js': "import { b } from '../../cues/src/index.js'; export const a = b;",
      'packages/cues/src/index.js': 'export const b = 1;',
    });
    expect(names).toContain('package-engine');
  });

  it('refuses a deep import', async () => {
    const names = await broken({
      'packages/runner/src/a.js': "import { b } from '../../engine/src/units/b.js'; export const a = b;",
      'packages/engine/src/units/b.js': 'export const b = 1;',
    });
    expect(names).toContain('no-deep-import');
  });

  it('refuses anybody importing the app', async () => {
    const names = await broken({
      'packages/store/src/a.js': "import { b } from '../../../apps/web/src/b.js'; export const a = b;",
      'apps/web/src/b.js': 'export const b = 1;',
    });
    expect(names).toContain('nobody-imports-the-app');
  });
});
