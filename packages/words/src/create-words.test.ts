import { expect, test } from 'vitest';
import { createWords, loadWords } from './create-words.ts';
import { presentWords, say, useWords } from './present-words.ts';

const english = createWords('en-GB');
const german = createWords('de');
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

test('one sentence, two languages, each in its own order', () => {
  expect(english.say('dose.length', { length: '12 min' })).toBe('12 min in all.');
  expect(german.say('dose.length', { length: '12 min' })).toBe('Insgesamt 12 min.');
});

test('a sentence in pieces keeps what is put into it', () => {
  const button = { is: 'a button' };
  expect(english.pieces('dose.length', { length: button })).toEqual([button, ' in all.']);
  expect(german.pieces('dose.length', { length: button })).toEqual(['Insgesamt ', button, '.']);
});

// CLDR: German writes a decimal comma and groups thousands by a full stop.
test('numbers, units and days are those of the locale', () => {
  expect(plain(english.seconds(7500))).toBe('7.5 s');
  expect(plain(german.seconds(7500))).toBe('7,5 s');
  expect(german.count(1250)).toBe('1.250');
  expect(german.day('2026-11-25')).toBe('Mittwoch, 25. November');
  expect(german.list(['Auszug', 'Halten', 'Pause'])).toBe('Auszug, Halten und Pause');
  expect(english.row(['Draw', 'Hold', 'Rest'])).toBe('Draw, Hold, Rest');
  expect(german.row(['Auszug', 'Halten', 'Pause'])).toBe('Auszug, Halten und Pause');
  expect([english.day('2026-11-25', 'tick'), german.day('2026-11-25', 'month')]).toEqual(['25 Nov', 'Nov. 2026']);
});

test('a message writes counts, times, shares and days in our units', () => {
  expect(english.say('dose.reps', { n: 1 })).toBe('1\u00a0rep');
  expect(german.say('dose.reps', { n: 1200 })).toBe('1.200\u00a0Wiederholungen');
  expect(plain(german.say('rep.early', { early: 2500, held: 27_500 }))).toBe(
    '2,5 s zu früh abgesetzt: als 27,5 s eingetragen.',
  );
  expect(plain(german.say('program.deload', { weeks: 4, keep: 0.6 }))).toContain('60 %');
  expect(german.say('field.span', { first: '2026-11-23', last: '2026-11-29' })).toBe(
    `${german.day('2026-11-23', 'year')} bis ${german.day('2026-11-29', 'year')}`,
  );
});

test('a wrong or missing parameter, or a wrong key, is a type error', () => {
  // @ts-expect-error the length is missing
  expect(() => english.say('dose.length')).toThrow();
  // @ts-expect-error the length is a string
  english.say('dose.length', { length: 12 });
  // @ts-expect-error it needs nothing
  english.say('line.begin', { length: '12' });
  // @ts-expect-error no such sentence
  expect(() => english.say('line.end')).toThrow();
});

test('the present words change for all', () => {
  const before = presentWords();
  useWords(german);
  expect(say('line.begin')).toBe('Beginnen');
  useWords(before);
});

test('every language is there at once outside of a browser, and can be awaited as in one', async () => {
  expect((await loadWords('de-CH')).say('line.begin')).toBe(createWords('de-CH').say('line.begin'));
});
