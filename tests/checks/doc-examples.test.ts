import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as engine from '@larkhold/engine';
import * as words from '@larkhold/words';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

interface Example {
  page: string;
  line: number;
  code: string;
}

const pages = [
  ...readdirSync(`${root}docs`).map((name) => `docs/${name}`),
  ...readdirSync(`${root}packages`).map((name) => `packages/${name}/README.md`),
];
const examples = pages
  .filter((page) => page.endsWith('.md'))
  .flatMap((page): Example[] => {
    const text = readFileSync(root + page, 'utf8');
    return [...text.matchAll(/^```ts\n([\s\S]*?)^```$/gm)].map(({ 1: code = '', index }) => ({
      ...{ page, code, line: text.slice(0, index).split('\n').length + 1 },
    }));
  });

/** What an example takes from its surroundings: made before it on its page, or by the reader. */
const given = `
import type { Timeline } from '@larkhold/engine';
import type { LarkDrill } from '@larkhold/runner';
declare global {
  const timeline: Timeline;
  const beginButton: HTMLButtonElement;
  const drill: LarkDrill;
  const html: (strings: TemplateStringsArray, ...values: unknown[]) => { isTemplate: true };
}
`;

/** What the type checker says against the examples. */
function faultsOf(all: readonly Example[]): string[] {
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(`${root}tsconfig.tests.json`, ts.sys.readFile).config,
    ts.sys,
    root,
  );
  const files = new Map(
    all.map(({ page, line, code }) => [
      `${root}tests/checks/example-${page.replaceAll('/', '-')}-${line}.ts`,
      `${code}\nexport {};\n`,
    ]),
  );
  files.set(`${root}tests/checks/example-given.ts`, given);
  const host = ts.createCompilerHost({ ...options, incremental: false });
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => files.has(path) || fileExists(path);
  host.readFile = (path) => files.get(path) ?? readFile(path);
  host.getSourceFile = (path, target, ...rest) => {
    const text = files.get(path);
    return text === undefined ? getSourceFile(path, target, ...rest) : ts.createSourceFile(path, text, target);
  };
  const program = ts.createProgram(
    [...files.keys()],
    { ...options, incremental: false, tsBuildInfoFile: undefined },
    host,
  );
  return [...files.keys()].flatMap((path) => {
    const source = program.getSourceFile(path);
    return program
      .getSemanticDiagnostics(source)
      .concat(program.getSyntacticDiagnostics(source))
      .map(({ messageText }) => `${path.split('/').at(-1)}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`);
  });
}

/** Values that an example says in a comment behind an expression: `week.total; // 1320`. */
const said = /^(?!const |import )(.+); \/\/ ('.*'|-?[\d.]+|true|false)$/gm;

/** Runs an example. @returns what its expressions gave, and what it says that they give */
async function outcomes(code: string): Promise<{ gave: unknown; says: unknown }[]> {
  const checked = code
    .replaceAll(said, (_, expression: string, value: string) => `note(${expression}, ${value});`)
    .replaceAll(/^import (\{[^}]*\}) from '@larkhold\/(\w+)';$/gm, 'const $1 = packages.$2;');
  const script = ts.transpileModule(checked, { compilerOptions: { target: ts.ScriptTarget.ES2022 } }).outputText;
  const found: { gave: unknown; says: unknown }[] = [];
  const note = (gave: unknown, says: unknown) =>
    found.push({ gave: typeof gave === 'string' ? gave.replaceAll('\u00a0', ' ') : gave, says });
  const AsyncFunction = (async () => undefined).constructor as new (
    ...args: string[]
  ) => (...values: unknown[]) => Promise<void>;
  await new AsyncFunction('packages', 'note', 'console', script)({ engine, words }, note, { log: () => undefined });
  return found;
}

const needsPage = /document|html`|performance|drill\.|^import '/m;

describe('examples in docs', () => {
  const before = words.presentWords();
  beforeAll(() => words.useWords(words.createWords('en-GB')));
  afterAll(() => words.useWords(before));

  it('are right in type, all of them', () => {
    expect(examples.length).toBeGreaterThan(10);
    expect(faultsOf(examples)).toEqual([]);
  }, 120_000);

  it.each(examples.filter(({ code }) => !needsPage.test(code)))(
    'run, and give what they say: $page, line $line',
    async ({ code }) => {
      const found = await outcomes(code);
      expect(found.map(({ gave }) => gave)).toEqual(found.map(({ says }) => says));
    },
  );

  it('turn red where a type or a value is wrong', async () => {
    const wrong = "import { holdTime } from '@larkhold/engine';\nholdTime('x');\n";
    expect(faultsOf([{ page: 'none', line: 1, code: wrong }])).toHaveLength(1);
    expect(await outcomes('1 + 1; // 3\n')).toEqual([{ gave: 2, says: 3 }]);
  }, 120_000);
});
