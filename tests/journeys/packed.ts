import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's root folder. */
export const house = fileURLToPath(new URL('../..', import.meta.url));

/** The folders of all packages that somebody could install. */
export const packageFolders: readonly string[] = [
  ...readdirSync(join(house, 'packages')).map((name) => join(house, 'packages', name)),
  join(house, 'apps/cli'),
].filter((folder) => existsSync(join(folder, 'package.json')));

/** A package as `npm pack` makes it. */
export interface Packed {
  name: string;
  folder: string;
  /** The tarball's path. */
  tarball: string;
  /** Paths in the tarball. */
  files: string[];
}

/**
 * Packs every package as for publishing, from what was built.
 * @returns the tarballs, in a folder of their own
 */
export function packAll(): Packed[] {
  const to = mkdtempSync(join(tmpdir(), 'larkhold-packed-'));
  return packageFolders.map((folder) => {
    const args = ['pack', '--json', '--ignore-scripts', '--pack-destination', to];
    const [told] = JSON.parse(execFileSync('npm', args, { cwd: folder, encoding: 'utf8' }));
    const files = told.files.map(({ path }: { path: string }) => path);
    return { name: told.name, folder, tarball: join(to, told.filename), files };
  });
}

/**
 * A stranger's project folder in which the tarballs are installed, with what they depend on from this project.
 * @param packed what `packAll` gave
 * @returns the folder
 */
export function strangersProject(packed: readonly Packed[]): string {
  const project = mkdtempSync(join(tmpdir(), 'larkhold-stranger-'));
  const modules = join(project, 'node_modules');
  mkdirSync(join(modules, '@larkhold'), { recursive: true });
  for (const name of readdirSync(join(house, 'node_modules'))) {
    if (name !== '@larkhold' && !name.startsWith('.'))
      symlinkSync(join(house, 'node_modules', name), join(modules, name));
  }
  for (const { name, tarball } of packed) {
    const folder = join(modules, name);
    mkdirSync(folder);
    execFileSync('tar', ['-xzf', tarball, '-C', folder, '--strip-components=1']);
  }
  return project;
}

/**
 * The examples of a README.
 * @param folder of the package
 * @param language of the code block
 * @returns each block's text
 */
export function examplesOf(folder: string, language: 'js' | 'ts' | 'sh'): string[] {
  const page = readFileSync(join(folder, 'README.md'), 'utf8');
  return [...page.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(([, text]) => text ?? '');
}
