import { expect, test } from 'vitest';
import { usualWeekStart } from './usual-week-start.ts';

// Unicode CLDR 46, supplemental/weekData: firstDay mon for 001 and DE, sun for US and JP, sat for EG. From memory.
test.each([
  ['de-DE', 'monday'],
  ['en-GB', 'monday'],
  ['fr-FR', 'monday'],
  ['en-US', 'sunday'],
  ['ja-JP', 'sunday'],
  ['ar-EG', 'saturday'],
  ['', 'monday'],
  ['not a language', 'monday'],
] as const)('in %s weeks begin on %s', (language, start) => {
  expect(usualWeekStart(language)).toBe(start);
});
