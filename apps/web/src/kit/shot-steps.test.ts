import { expect, test } from 'vitest';
import { readSteps } from './shot-steps.ts';

test('a shot process is one step a line, empty lines passed over', () => {
  expect(readSteps(' Stance \r\n\n  Set-up\nAnchor')).toEqual({ ok: true, steps: ['Stance', 'Set-up', 'Anchor'] });
  expect(readSteps(' \n ')).toEqual({ ok: true, steps: [] });
});

test('what the kit does not take is reported', () => {
  expect(readSteps('a\n'.repeat(21))).toEqual({ ok: false, message: 'Not kept: 21\u00a0steps, at most 20.' });
  expect(readSteps(`a\n${'b'.repeat(81)}`)).toEqual({
    ok: false,
    message: 'Not kept: step 2 is longer than 80\u00a0characters.',
  });
});
