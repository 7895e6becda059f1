import { builtInPrograms, type Program } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { freeTitle, sameTitle } from './title-clash.ts';

const called = (title: string, id: string): Program => ({ ...builtInPrograms[0]!, title, id });
const rack = [called('Holding', 'a'), called('Holding (2)', 'b')];

test('a clash is another program with the same title, however it is written', () => {
  expect(sameTitle({ id: 'c', title: ' holding' }, rack)).toBe(rack[0]);
  expect(sameTitle({ id: 'a', title: 'Holding' }, rack)).toBeUndefined();
  expect(sameTitle({ title: 'Holding' }, rack)).toBe(rack[0]);
  expect(sameTitle({ id: 'c', title: 'Power' }, rack)).toBeUndefined();
});

test('a free title has the first free number, and fits a file', () => {
  expect(freeTitle('Power', rack)).toBe('Power');
  expect(freeTitle('Holding', rack)).toBe('Holding (3)');
  const long = 'x'.repeat(120);
  expect(freeTitle(long, [called(long, 'c')])).toBe(`${'x'.repeat(116)} (2)`);
});
