import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { builtInPrograms, formatProgram } from '@larkhold/engine';
import { publint } from 'publint';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { examplesOf, house, type Packed, packAll, packageFolders, strangersProject } from './packed.ts';

let packed: Packed[];
let project: string;

beforeAll(() => {
  // The bundle for pages without a bundler is part of what ships; `prepack` builds it on publishing.
  if (!existsSync(join(house, 'packages/runner/dist/bundle')))
    execFileSync('npm', ['run', 'bundle', '-w', 'packages/runner'], { cwd: house, stdio: 'ignore' });
  packed = packAll();
  project = strangersProject(packed);
});

afterAll(() => rmSync(project, { recursive: true, force: true }));

const names = packageFolders.map(
  (folder) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')).name as string,
);
const find = (name: string): Packed => packed.find((one) => one.name === name)!;
/** Packages whose code needs a page, or a bundler that reads CSS. */
const needsPage = ['@larkhold/ui', '@larkhold/runner'];

describe.each(names)('%s', (name) => {
  it('ships a README, a licence and no tests, trials or maps', () => {
    const { files } = find(name);
    expect(files).toEqual(expect.arrayContaining(['README.md', 'LICENSE', 'package.json']));
    expect(files.filter((path) => /\.(test|browser)\.|trial|\.map$|tsbuildinfo/.test(path))).toEqual([]);
  });

  it('says what it is and what it needs, and has no pinned dependency', () => {
    const told = JSON.parse(readFileSync(join(find(name).folder, 'package.json'), 'utf8'));
    expect(told.description).toMatch(/\w{3}/);
    expect(told.engines.node).toMatch(/^>=/);
    expect(told.scripts.prepack).toBeDefined();
    expect(Object.values(told.dependencies ?? {}).filter((range) => !/^[\^~]/.test(String(range)))).toEqual([]);
  });

  it('is found in order by publint', async () => {
    const { messages } = await publint({ pkgDir: join(project, 'node_modules', name), strict: true, pack: false });
    expect(messages.filter(({ type }) => type !== 'suggestion')).toEqual([]);
  });

  it('has types that resolve for ES modules', async () => {
    if (name === '@larkhold/cli') return expect(find(name).files).toContain('dist/larkhold.js');
    const data = new Uint8Array(readFileSync(find(name).tarball));
    const checked = await checkPackage(createPackageFromTarballData(data));
    if (!checked.types) throw new Error('there are no types');
    // Only ES modules ship: older ways to resolve are not offered, and style sheets and JSON have no types.
    const esm = checked.problems.filter(
      (problem) =>
        !(
          'resolutionKind' in problem &&
          (problem.resolutionKind === 'node10' || problem.resolutionKind === 'node16-cjs')
        ) &&
        !('entrypoint' in problem && /\.(css|json)$|bundle/.test(problem.entrypoint)) &&
        problem.kind !== 'CJSResolvesToESM',
    );
    expect(esm).toEqual([]);
  });

  it('runs the examples of its README', { timeout: 60_000 }, () => {
    const examples = examplesOf(find(name).folder, 'js');
    if (needsPage.includes(name) || name === '@larkhold/cli') return expect(examples).toEqual([]);
    expect(examples.length).toBeGreaterThan(0);
    for (const [index, text] of examples.entries()) {
      const file = join(project, `example-${index}.mjs`);
      writeFileSync(file, text);
      expect(execFileSync(process.execPath, [file], { cwd: project, encoding: 'utf8' })).not.toBe('');
    }
  });
});

describe("a stranger's project", () => {
  it('runs the prompt from its tarball, and every line of its README', () => {
    writeFileSync(join(project, 'wrong.drill.json'), '{ "format": "larkhold/program" }');
    const cli = join(project, 'node_modules/@larkhold/cli/dist/larkhold.js');
    expect(execFileSync(process.execPath, [cli, '--version'], { encoding: 'utf8' })).toMatch(/^\d+\.\d+\.\d+\n$/);
    writeFileSync(join(project, 'my-program.drill.json'), formatProgram(builtInPrograms[0]!));
    const lines = examplesOf(find('@larkhold/cli').folder, 'sh').flatMap((text) => text.trim().split('\n'));
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) {
      const [name, ...args] = line.split(' ');
      expect(name).toBe('larkhold');
      expect(execFileSync(process.execPath, [cli, ...args], { cwd: project, encoding: 'utf8' })).not.toBe('');
    }
    expect(() =>
      execFileSync(process.execPath, [cli, 'check', 'wrong.drill.json'], { cwd: project, stdio: 'pipe' }),
    ).toThrow();
    // A reader that has had enough, as `head`, is no fault.
    const cutOff = spawnSync('sh', ['-c', `"${process.execPath}" "${cli}" --help | true`], { encoding: 'utf8' });
    expect(cutOff.stderr).toBe('');
  });

  it('is a strict TypeScript app that Vite builds', { timeout: 120_000 }, async () => {
    const app = join(project, 'app');
    mkdirSync(join(app, 'src'), { recursive: true });
    writeFileSync(join(app, 'index.html'), '<!doctype html><script type="module" src="/src/main.ts"></script>');
    const examples = needsPage.flatMap((name) => examplesOf(find(name).folder, 'ts'));
    expect(examples).toHaveLength(2);
    examples.forEach((text, index) => {
      writeFileSync(join(app, `src/example-${index}.ts`), `${text}\nexport {};\n`);
    });
    writeFileSync(join(app, 'src/main.ts'), examples.map((_, index) => `import './example-${index}.ts';`).join('\n'));
    const compilerOptions = {
      ...{ target: 'ES2022', module: 'ESNext', moduleResolution: 'Bundler', strict: true, noEmit: true },
      ...{ lib: ['ES2023', 'DOM'], types: ['vite/client'], noUncheckedIndexedAccess: true, skipLibCheck: false },
      ...{ allowImportingTsExtensions: true },
    };
    writeFileSync(join(app, 'tsconfig.json'), JSON.stringify({ compilerOptions, include: ['src'] }));
    execFileSync(process.execPath, [join(house, 'node_modules/typescript/bin/tsc'), '-p', app], {
      stdio: 'pipe',
      encoding: 'utf8',
    });
    await build({ root: app, configFile: false, logLevel: 'error', build: { outDir: join(app, 'dist') } });
    expect(existsSync(join(app, 'dist/index.html'))).toBe(true);
  });

  it('is a plain page whose custom elements are described where they ship', () => {
    const folder = join(project, 'node_modules/@larkhold/runner');
    const { modules } = JSON.parse(readFileSync(join(folder, 'custom-elements.json'), 'utf8'));
    for (const { path } of modules) expect(existsSync(join(folder, path)), path).toBe(true);
    cpSync(join(folder, 'dist/bundle'), join(project, 'page'), { recursive: true });
    expect(existsSync(join(project, 'page/larkhold-runner.js'))).toBe(true);
  });
});
