import { expect, test } from 'vitest';
import { StopQuestion } from './stop-question.ts';

// The question is shown for 3 s.
test('a second press is an answer while the question is shown, to the millisecond', () => {
  const stop = new StopQuestion();
  expect(stop.press(1000, 1000)).toBe(false);
  expect(stop.untilMs).toBe(4000);
  expect(stop.press(4001, 4001)).toBe(false);
  expect(stop.untilMs).toBe(7001);
  expect(stop.press(7001, 7001)).toBe(true);
  expect(stop.untilMs).toBeUndefined();
});

test('a press from before the question was shown does not answer it; its time runs from when it was shown', () => {
  const stop = new StopQuestion();
  stop.press(1000, 1500); // handled half a second late
  expect(stop.untilMs).toBe(4500);
  expect(stop.press(1499, 1600)).toBe(false);
  expect(stop.press(1600, 1700)).toBe(true);
  stop.press(2000, 2000);
  stop.close();
  expect(stop.press(2100, 2100)).toBe(false);
});
