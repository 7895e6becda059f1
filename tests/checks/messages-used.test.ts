import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Keys that are written out in the product, and the beginnings of those that a template makes: `phase.${phase}`. */
function keysIn(text: string): { whole: string[]; begun: string[] } {
  return {
    whole: [...text.matchAll(/['"`]([a-zA-Z]+\.[\w.:/-]+)['"`]/g)].map(([, key = '']) => key),
    begun: [...text.matchAll(/`([a-zA-Z]+\.[\w.:/-]*)\$\{/g)].map(([, beginning = '']) => beginning),
  };
}

it('has no message that nothing says', () => {
  // English is in `words`, but for what the engine says by itself.
  const english = ['packages/words/src/en', 'packages/engine/src'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => folder.endsWith('/en') || name.endsWith('-sentences.ts'))
      .map((name) => join(root, folder, name)),
  );
  const messages = english.flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/^ {2}'([^']+)':/gm)].map(([, key = '']) => key),
  );
  const files = ['packages', 'apps'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter(
        (name) => name.endsWith('.ts') && !/node_modules|dist|\.(test|browser)\.ts$|trial|[/\\](en|de)[/\\]/.test(name),
      )
      .map((name) => join(root, folder, name))
      .filter((file) => !english.includes(file)),
  );
  const texts = files.map((file) => readFileSync(file, 'utf8'));
  const whole = new Set(texts.flatMap((text) => keysIn(text).whole));
  const begun = [...new Set(texts.flatMap((text) => keysIn(text).begun))];
  const unused = messages.filter((key) => !whole.has(key) && !begun.some((beginning) => key.startsWith(beginning)));
  expect(messages.length).toBeGreaterThan(1000);
  expect(unused).toEqual([]);
});

it('finds keys that are written out and those that a template begins', () => {
  expect(keysIn(`say('line.begin') + say(\`phase.\${phase}\`)`)).toEqual({ whole: ['line.begin'], begun: ['phase.'] });
});
