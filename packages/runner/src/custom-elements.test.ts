import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const room = fileURLToPath(new URL('.', import.meta.url));
const manifest: {
  modules: { declarations: { tagName?: string; events?: { name: string }[]; members?: { name: string }[] }[] }[];
} = JSON.parse(readFileSync(`${room}../custom-elements.json`, 'utf8'));
const elements = readdirSync(room).filter((name) => /^lark-[a-z]+\.ts$/.test(name));

// What stands in an element's own docstring is what the manifest must hold: `npm run manifest -w packages/runner` writes it anew.
test.each(elements)('%s stands in the manifest with all that its docstring names', (name) => {
  const source = readFileSync(`${room}${name}`, 'utf8');
  const named = (tag: string) => [...source.matchAll(new RegExp(` \\* @${tag} (\\S+)`, 'g'))].map((match) => match[1]);
  const element = manifest.modules
    .flatMap((module) => module.declarations)
    .find((declaration) => declaration.tagName === name.slice(0, -3));
  expect(element?.events?.map((event) => event.name) ?? []).toEqual(named('event'));
  expect(element?.members?.map((member) => member.name)).toEqual(expect.arrayContaining(named('prop')));
});

test('there are elements to look at', () => {
  expect(elements.length).toBeGreaterThan(3);
});
