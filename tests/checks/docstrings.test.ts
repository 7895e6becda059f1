import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The names a package exports that say nothing of themselves. */
function undocumented(entry: string): string[] {
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(`${root}tsconfig.tests.json`, ts.sys.readFile).config,
    ts.sys,
    root,
  );
  const program = ts.createProgram([entry], options);
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(entry);
  const module = source && checker.getSymbolAtLocation(source);
  if (!module) throw new Error(`${entry} exports nothing`);
  return checker
    .getExportsOfModule(module)
    .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
    .filter((symbol) => symbol.getDocumentationComment(checker).length === 0)
    .map((symbol) => symbol.name);
}

describe('docstrings', () => {
  it.each(['engine', 'words', 'cues', 'sight', 'store', 'runner'])(
    'are on everything that %s exports',
    (name) => {
      expect(undocumented(`${root}packages/${name}/src/index.ts`)).toEqual([]);
    },
    60_000,
  );
});
