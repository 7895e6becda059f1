import { expect, test } from 'vitest';
import {
  formatDay,
  formatDayFrom,
  formatDistance,
  formatDuration,
  formatImpulse,
  formatLength,
  formatMonth,
  formatReps,
  formatSeconds,
  formatShare,
  formatTimeOfDay,
  formatWeight,
} from './format-for-people.ts';
import { toCentimetres, toInches } from './formats.ts';
import { presentWords } from './present-words.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

test('seconds are plain, tenths only where there are some', () => {
  expect(plain(formatSeconds(5000))).toBe('5 s');
  expect(plain(formatSeconds(7500))).toBe('7.5 s');
  expect(plain(formatSeconds(27_960))).toBe('28 s');
});

test('durations are read in the unit that fits', () => {
  expect(plain(formatDuration(45_000))).toBe('45 s');
  expect(plain(formatDuration(125_000))).toBe('2 min 5 s');
  expect(plain(formatDuration(120_000))).toBe('2 min');
  expect(plain(formatDuration(28 * 60_000 + 10_000))).toBe('28 min');
  expect(plain(formatDuration(65 * 60_000))).toBe('1 h 5 min');
  expect(plain(formatDuration(59_600))).toBe('1 min');
  expect(plain(presentWords().minutes(5_000))).toBe('1 min');
});

test('sets, reps and hold', () => {
  expect(plain(formatReps({ sets: 1, reps: 5, holdMs: 5000 }))).toBe('5 × 5 s');
  expect(plain(formatReps({ sets: 2, reps: 10, holdMs: 30_000 }))).toBe('2 × 10 × 30 s');
});

// BIPM, The International System of Units, 9th edition: 1 lb is 0.45359237 kg, standard gravity 9.80665 m/s².
test('draw weights are in pounds, with kilograms and newtons in metric', () => {
  expect(plain(formatWeight(38, 'imperial'))).toBe('38 lb');
  expect(plain(formatWeight(38, 'metric'))).toBe('38 lb (17.2 kg, 169 N)');
});

// The inch is 25.4 mm exactly, the foot 0.3048 m (international yard and pound agreement, 1959).
test('lengths and distances', () => {
  expect(plain(formatLength(28, 'imperial'))).toBe('28 in');
  expect(plain(formatLength(28, 'metric'))).toBe('71.1 cm');
  expect(plain(formatDistance(2, 'metric'))).toBe('2 m');
  expect(plain(formatDistance(3.048, 'imperial'))).toBe('10 ft');
  expect(toCentimetres(10)).toBe(25.4);
  expect(toInches(25.4)).toBe(10);
});

test('shares', () => {
  expect(plain(formatShare(0.7))).toBe('70 %');
});

// 25 November 2026 is a Wednesday (any calendar).
test('days', () => {
  expect(formatDay('2026-11-25')).toMatch(/Wednesday.*25|Wednesday.*November/);
  expect(formatDay('2026-11-25', 'year')).toMatch(/2026/);
  expect(formatDayFrom('2026-11-25', '2026-11-25')).toBe('Today');
  expect(formatDayFrom('2026-11-24', '2026-11-25')).toBe('Yesterday');
  expect(formatDayFrom('2025-12-31', '2026-01-01')).toBe('Yesterday');
  expect(formatDayFrom('2025-11-24', '2026-11-25')).toMatch(/2025$/);
});

test('the time of day is the one that was stamped, whatever the zone of this machine', () => {
  expect(formatTimeOfDay('2026-11-25T07:05:00+09:00')).toBe('07:05');
  expect(formatTimeOfDay('nothing')).toBe('');
});

test('an impulse keeps to a few figures, a ratio to two', () => {
  expect(plain(formatImpulse(849.6))).toBe('850 N s');
  expect(plain(formatImpulse(10_675.7))).toBe('10.7 kN s');
  expect(presentWords().ratio(1.2497)).toBe('1.25');
});

test('a month has its name and its letter', () => {
  expect(formatMonth('2026-11')).toBe('November 2026');
  expect(formatMonth('2026-11', 'first')).toBe('N');
});
