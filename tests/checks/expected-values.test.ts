import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Constants that tests may import: names that go in, tables of names, and constants whose own value is checked against one that is written out. */
const allowed = [
  ...['BASELINE_ID', 'BODY_POINT_NAMES', 'BOW_BOX', 'DEVICE_MARK', 'DISAGREEMENT_MS', 'FOLD_VERSION', 'HIGHEST_HZ'],
  ...['FATIGUE_CAUTION', 'WORKLOAD_RATIO_CAUTION'],
];

/** Constants that a test imports from what it tests; what only tests use (`trial…`, `tests/`) is written out there. */
function imported(text: string): string[] {
  return [...text.matchAll(/^import \{([^}]*)\} from '([^']+)';/gm)]
    .filter(([, , from = '']) => !/\/trial|fixtures|patience/.test(from))
    .flatMap(([, names = '']) => names.match(/\b[A-Z][A-Z0-9]*(?:_[A-Z0-9]+)+\b/g) ?? [])
    .filter((name) => !allowed.includes(name));
}

it('expected values are written out in tests, not imported from the code under test', () => {
  const files = ['packages', 'apps', 'tests'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(test|browser)\.ts$/.test(name) && !/node_modules/.test(name))
      .map((name) => join(folder, name)),
  );
  expect(files.length).toBeGreaterThan(300);
  const found = files.flatMap((file) =>
    imported(readFileSync(join(root, file), 'utf8')).map((name) => `${file}: ${name}`),
  );
  expect(found).toEqual([]);
});

it('finds an imported constant, and leaves those of a trial alone', () => {
  expect(imported("import { layOut, REST_OVER_MS } from './lay-out.ts';")).toEqual(['REST_OVER_MS']);
  expect(imported("import { READY_MS } from './trial-session.ts';")).toEqual([]);
});
