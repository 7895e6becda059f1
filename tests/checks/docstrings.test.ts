import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

const packages = ['engine', 'words', 'cues', 'sight', 'store', 'box', 'ui', 'runner'];
const entryOf = (name: string) => `${root}packages/${name}/src/index.ts`;

/** The names each package exports that say nothing of themselves. All packages are read as one program: each alone would read its neighbours again. */
function undocumented(): (readonly [string, readonly string[]])[] {
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(`${root}tsconfig.tests.json`, ts.sys.readFile).config,
    ts.sys,
    root,
  );
  const program = ts.createProgram(packages.map(entryOf), options);
  const checker = program.getTypeChecker();
  return packages.map((name) => {
    const source = program.getSourceFile(entryOf(name));
    const module = source && checker.getSymbolAtLocation(source);
    if (!module) throw new Error(`${name} exports nothing`);
    const bare = checker
      .getExportsOfModule(module)
      .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
      .filter((symbol) => symbol.getDocumentationComment(checker).length === 0);
    return [name, bare.map((symbol) => symbol.name)] as const;
  });
}

it('docstrings are on everything that a package exports', () => {
  expect(undocumented()).toEqual(packages.map((name) => [name, []]));
}, 120_000);
