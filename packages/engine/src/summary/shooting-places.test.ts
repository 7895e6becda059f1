import { expect, test } from 'vitest';
import { knownPlaces, placeOfDay } from './shooting-places.ts';

const days = [
  { date: '2026-11-23', place: 'Garden' },
  { date: '2026-11-20', place: 'Hall' },
  { date: '2026-11-24', arrows: [{ kind: 'practice' as const, count: 30 }] },
  { date: '2026-11-27', place: 'Field' },
];

test('a day that says nothing is where the last day before it was', () => {
  expect(placeOfDay(days, { date: '2026-11-25' })).toBe('Garden');
  expect(placeOfDay(days, { date: '2026-11-22' })).toBe('Hall');
  expect(placeOfDay(days, { date: '2026-11-01' })).toBe('');
});

test('a day’s own word counts, and arrows with no place have none', () => {
  expect(placeOfDay(days, { date: '2026-11-25', place: 'Cellar' })).toBe('Cellar');
  expect(placeOfDay(days, days[2]!)).toBe('');
});

test('places are listed once, the last first', () => {
  expect(knownPlaces([...days, { date: '2026-11-28', place: 'Hall' }])).toEqual(['Hall', 'Field', 'Garden']);
});
