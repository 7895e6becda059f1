import { builtInPrograms, formatProgram } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { pastedProgram } from './pasted-program.ts';
import { formatLink, formatPayload } from './program-link.ts';

test('links, files and other text are told apart', () => {
  const program = builtInPrograms[0]!;
  const text = formatProgram(program);
  const link = formatLink('https://example.org/', program);
  expect(pastedProgram(`${link} `)).toEqual({ kind: 'link', payload: formatPayload(program) });
  expect(pastedProgram(`\uFEFF ${text}`)).toEqual({ kind: 'text', text: `\uFEFF ${text}` });
  expect(pastedProgram('bread, milk')).toEqual({ kind: 'nothing' });
  expect(pastedProgram('https://example.org/')).toEqual({ kind: 'nothing' });
});
