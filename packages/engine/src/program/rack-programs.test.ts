import { expect, it } from 'vitest';
import { builtInPrograms } from './built-in-programs.ts';
import { rackPrograms } from './rack-programs.ts';

it('has the built-in programs and the opened ones, an opened one in place of the built-in one of its id', () => {
  const [first, ...others] = builtInPrograms;
  const changed = { ...first!, title: 'My own way' };
  const own = { ...first!, id: 'own', title: 'Own' };
  expect(rackPrograms([changed, own])).toEqual([...others, changed, own]);
  expect(rackPrograms([])).toEqual(builtInPrograms);
});
