import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (path: string): string => readFileSync(`${root}${path}`, 'utf8');

interface Manifest {
  name: string;
  version: string;
  engines?: { node: string };
  dependencies?: Record<string, string>;
  devDependencies?: Record<string, string>;
}
const folders = [
  '',
  ...['packages', 'apps'].flatMap((room) => readdirSync(root + room).map((name) => `${room}/${name}/`)),
  'tests/',
];
const manifests = folders.map((folder): Manifest => JSON.parse(read(`${folder}package.json`)));
const { version } = manifests[0]!;

describe('a release', () => {
  it('is of one version, which the lock file and the prompt know too', () => {
    expect(manifests.map((one) => [one.name, one.version])).toEqual(manifests.map(({ name }) => [name, version]));
    const { packages } = JSON.parse(read('package-lock.json')) as { packages: Record<string, Manifest> };
    for (const folder of folders)
      expect([folder, packages[folder.replace(/\/$/, '')]?.version]).toEqual([folder, version]);
    expect(read('apps/cli/src/run.ts')).toContain(`const VERSION = '${version}';`);
  });

  it('lets each package take the next fixes of the others: caret ranges', () => {
    const ours = manifests.flatMap(({ name, dependencies, devDependencies }) =>
      Object.entries({ ...dependencies, ...devDependencies })
        .filter(([other]) => other.startsWith('@larkhold/'))
        .map(([other, range]) => `${name} > ${other} ${range}`),
    );
    expect(ours.length).toBeGreaterThan(15);
    expect(ours.filter((line) => !line.endsWith(` ^${version}`))).toEqual([]);
  });

  it('is in the changelog with its day, newest first', () => {
    const [newest = ''] = read('CHANGELOG.md').match(/^## \d.*$/gm) ?? [];
    expect(newest).toMatch(new RegExp(`^## ${version.replaceAll('.', '\\.')} · \\d{4}-\\d\\d-\\d\\d$`));
  });

  it('names one Node for people who carry on, within what the packages need', () => {
    const pinned = Number(read('.nvmrc').trim());
    for (const { name, engines } of manifests.filter(({ name }) => /^@larkhold\/(?!web|tests)/.test(name)))
      expect([name, engines?.node]).toEqual([name, `>=${pinned}.19`]);
  });
});
