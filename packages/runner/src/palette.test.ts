import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { lookStyles } from './glance-look.ts';

const tokens = readFileSync(new URL('../../ui/src/tokens.css', import.meta.url), 'utf8');
const look = lookStyles.cssText;

/** The colours that a rule sets, by name. */
function colours(sheet: string, selector: string): Record<string, string> {
  const from = sheet.indexOf(`${selector} {`);
  if (from < 0) throw new Error(`there is no rule for ${selector}`);
  const rule = sheet.slice(from, sheet.indexOf('}', from));
  return Object.fromEntries(
    [...rule.matchAll(/--([a-z-]+): (?:var\(--lark-[a-z-]+, )?(#[0-9a-f]+)/g)].map(([, name = '', value = '']) => [
      name,
      value,
    ]),
  );
}

it.each([
  [':root', ':host'],
  [':root[data-theme="light"]', ":host([theme='light'])"],
  [':root[data-theme="light"]', ":host([theme='system'])"],
  [':root[data-theme="contrast"]', ":host([theme='contrast'])"],
])('the app’s %s and the runner’s %s have one palette', (inApp, inRunner) => {
  const ours = colours(look, inRunner);
  expect(Object.keys(ours)).toHaveLength(7);
  expect(colours(tokens, inApp)).toMatchObject(ours);
});
