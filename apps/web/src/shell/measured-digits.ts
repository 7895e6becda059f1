import type { SessionView } from '@larkhold/engine';
import { say } from '@larkhold/words';

/** What the drill's buttons take from the height, CSS pixels: one row where there is room, two on a narrow screen. */
const BUTTONS_PX = { oneRow: 84, twoRows: 158 };
const ONE_ROW_FROM_PX = 700;

const hold: SessionView = {
  state: 'running',
  step: { kind: 'hold', startMs: 0, durationMs: 30_000, block: 0, set: 0, rep: 0, hand: 'usual' },
  msLeft: 30_000,
  stepMs: 30_000,
  offsetMs: 0,
  progress: { repsDone: 0, repsTotal: 10, set: 0, sets: 2, rep: 0, reps: 5, block: 0, blocks: 1, msLeft: 600_000 },
};

/**
 * How large the digits of a hold get on this screen: a display is drawn unseen and measured.
 * @param widthPx the page's width, CSS pixels
 * @param heightPx the page's height, CSS pixels
 * @param layout what the display gives its room to
 * @returns their font size, CSS pixels; undefined where nothing can be drawn
 */
export async function measureDigitPx(
  widthPx: number,
  heightPx: number,
  layout: 'bow' | 'numbers' = 'bow',
): Promise<number | undefined> {
  const glance = document.createElement('lark-glance');
  const buttonsPx = widthPx >= ONE_ROW_FROM_PX ? BUTTONS_PX.oneRow : BUTTONS_PX.twoRows;
  Object.assign(glance.style, {
    ...{ position: 'fixed', left: '0', top: '0', visibility: 'hidden', pointerEvents: 'none' },
    ...{ width: `${widthPx}px`, height: `${Math.max(100, heightPx - buttonsPx)}px` },
  });
  glance.setAttribute('aria-hidden', 'true');
  glance.view = hold;
  glance.layout = layout;
  glance.blockTitle = say('bench.titleHolding');
  document.body.append(glance);
  try {
    await glance.updateComplete;
    return glance.digitPx;
  } finally {
    glance.remove();
  }
}
