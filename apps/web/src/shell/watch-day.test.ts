import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { watchDay } from './watch-day.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

it('tells of a new day, also to a page that nobody touches', () => {
  let day = '2026-05-05';
  const told: string[] = [];
  const stop = watchDay(
    () => day,
    () => told.push(day),
    new EventTarget(),
  );
  vi.advanceTimersByTime(3_600_000);
  expect(told).toEqual([]);
  day = '2026-05-06';
  vi.advanceTimersByTime(60_000);
  expect(told).toEqual(['2026-05-06']);
  day = '2026-05-05'; // a flight to the west, or a clock corrected
  vi.advanceTimersByTime(60_000);
  expect(told).toEqual(['2026-05-06', '2026-05-05']);
  stop();
  day = '2026-05-07';
  vi.advanceTimersByTime(3_600_000);
  expect(told).toHaveLength(2);
});

it('looks at once when the page is seen again, for a hidden page may have had no timers', () => {
  let day = '2026-05-05';
  const told: string[] = [];
  const page = new EventTarget();
  watchDay(
    () => day,
    () => told.push(day),
    page,
  );
  day = '2026-05-06';
  page.dispatchEvent(new Event('visibilitychange'));
  page.dispatchEvent(new Event('visibilitychange'));
  expect(told).toEqual(['2026-05-06']);
});
