import { expect, test } from 'vitest';
import { type Look, TimeWatch } from './time-watch.ts';

const hold = { state: 'running', step: { kind: 'hold' }, msLeft: 10_000 } as Parameters<TimeWatch['look']>[1];
const rest = (msLeft: number) => ({ ...hold, step: { kind: 'rest' }, msLeft }) as typeof hold;

/** What a second look says, and how long after the first it comes. */
function after(spanMs: number, changes: Partial<Look> = {}, view = hold, first: Partial<Look> = {}) {
  const watch = new TimeWatch();
  watch.look({ nowMs: 0, wallMs: 1_000_000, isSeen: true, isHeard: true, ...first }, view);
  return watch.look({ nowMs: spanMs, wallMs: 1_000_000 + spanMs, isSeen: true, isHeard: true, ...changes }, view);
}

// Own rules: five seconds are a gap, one second unnoticed is one where nothing was heard.
test('more than five seconds are lost, whatever was heard, and so is a sleep that only the wall clock tells', () => {
  expect([after(5000), after(5001)]).toEqual([undefined, 'lost']);
  expect([after(50, { wallMs: 1_005_050 }), after(50, { wallMs: 1_005_051 })]).toEqual([undefined, 'lost']);
  expect(after(50, { wallMs: 0 })).toBeUndefined(); // set back it tells nothing
});

test('a second with nothing heard is lost on a page that hung, and unnoticed on a hidden one', () => {
  const silent = { isHeard: false };
  expect([after(1000, silent), after(1001, silent)]).toEqual([undefined, 'lost']);
  expect(after(1001, { ...silent, isSeen: false })).toBe('unnoticed');
  expect(after(1001, silent, hold, { isSeen: false })).toBe('unnoticed');
  expect(after(1001, {}, hold, silent)).toBe('lost'); // heard again only now
});

test('a rest may go unnoticed until five seconds before the draw', () => {
  const hidden = { isHeard: false, isSeen: false };
  expect([after(2000, hidden, rest(7001)), after(2000, hidden, rest(7000))]).toEqual([undefined, 'unnoticed']);
});
