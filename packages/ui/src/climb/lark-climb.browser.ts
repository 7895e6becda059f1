import type { ClimbWeek } from '@larkhold/engine';
import { expect, test } from 'vitest';
import './lark-climb.ts';

/** Weeks from 7 September 2026 on, twelve behind and seven ahead. */
const weeks: ClimbWeek[] = Array.from({ length: 19 }, (_, at) => {
  const monday = new Date(Date.UTC(2026, 8, 7 + 7 * at)).toISOString().slice(0, 10);
  const done = { longestMs: at < 12 ? 29_500 + 500 * at : 0, heldMs: at < 12 ? 600_000 : 0 };
  const ahead = { plannedLongestMs: at > 11 ? 45_000 : 0, plannedHeldMs: at > 11 ? 700_000 : 0 };
  return { monday, kind: at < 11 ? 'behind' : at === 11 ? 'now' : 'ahead', ...done, ...ahead } as ClimbWeek;
});

test.each([280, 358, 900])('on a place %i px wide, every word and number is inside the picture', async (width) => {
  const climb = Object.assign(document.createElement('lark-climb'), { weeks });
  climb.style.cssText = `display: block; width: ${width}px; margin: 40px`;
  document.body.append(climb);
  await climb.updateComplete;
  const picture = climb.renderRoot.querySelector('svg')!.getBoundingClientRect();
  const words = [...climb.renderRoot.querySelectorAll('text')];
  expect(words.length).toBeGreaterThanOrEqual(6);
  for (const one of words) {
    const { left, right } = one.getBoundingClientRect();
    expect({ text: one.textContent, isInside: left >= picture.left - 0.5 && right <= picture.right + 0.5 }).toEqual({
      text: one.textContent,
      isInside: true,
    });
  }
});
