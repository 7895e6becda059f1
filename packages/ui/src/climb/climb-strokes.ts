import type { ClimbWeek } from '@larkhold/engine';

/** Widths and heights of a climb in its own units; the page scales it. */
export const CLIMB = { step: 15, tall: 62, above: 14, below: 14, widest: 4.6, narrowest: 1.1 } as const;
const LEAN = 2;

/** One week's strokes: what was held, and what is to come. */
export interface ClimbStroke {
  week: ClimbWeek;
  /** Middle of the foot. */
  x: number;
  /** Heights in the climb's units; 0 where there is nothing. */
  tall: number;
  plannedTall: number;
  held: string;
  planned: string;
}

/**
 * The strokes of a climb: each as tall as the week's longest hold, as wide at the foot as its time at full draw.
 * @param weeks without a gap, the oldest first
 * @returns one for each week, in order
 */
export function climbStrokes(weeks: readonly ClimbWeek[]): ClimbStroke[] {
  const tallest = Math.max(1, ...weeks.flatMap(({ longestMs, plannedLongestMs }) => [longestMs, plannedLongestMs]));
  const most = Math.max(1, ...weeks.flatMap(({ heldMs, plannedHeldMs }) => [heldMs, plannedHeldMs]));
  const height = (ms: number) => (ms === 0 ? 0 : Math.max(3, (ms / tallest) * CLIMB.tall));
  const half = (ms: number) => CLIMB.narrowest + (CLIMB.widest - CLIMB.narrowest) * Math.sqrt(ms / most);
  return weeks.map((week, index) => {
    const x = (index + 0.5) * CLIMB.step;
    const [tall, plannedTall] = [height(week.longestMs), height(week.plannedLongestMs)];
    return {
      ...{ week, x, tall, plannedTall },
      held: tall === 0 ? '' : strokePath(x, tall, half(week.heldMs)),
      planned: plannedTall === 0 ? '' : strokePath(x, plannedTall, half(week.plannedHeldMs)),
    };
  });
}

/** A limb as in the hold ribbon, as wide at the foot as it is asked to be, leaning a little. */
function strokePath(x: number, tall: number, half: number): string {
  const ground = CLIMB.above + CLIMB.tall;
  const [top, tip, lean] = [ground - tall, half / 2, LEAN * (tall / CLIMB.tall)];
  const middle = ground - tall / 2;
  return `M${r(x - half)} ${ground}Q${r(x - half)} ${r(middle)} ${r(x + lean - tip)} ${r(top + tip)}A${r(tip)} ${r(tip)} 0 0 1 ${r(x + lean + tip)} ${r(top + tip)}Q${r(x + half * 0.75)} ${r(middle)} ${r(x + half)} ${ground}Z`;
}

function r(value: number): number {
  return Math.round(value * 100) / 100;
}
