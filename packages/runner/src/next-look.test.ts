import { createSession, layOut, type SessionView } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { looksOtherwise, nextLookMs } from './next-look.ts';
import { TimeWatch } from './time-watch.ts';
import { trialPrescription } from './trial-environment.ts';

// Times follow from the prescription of the trial: ready 10 s, draw 3, hold 30, let down 3, rest 20.
const session = () => {
  const timeline = layOut(trialPrescription({ holdMs: 30_000 }));
  const made = createSession({
    timeline,
    program: 'T',
    startedAt: '2026-11-25T06:30:00+01:00',
    newId: () => 'a',
    gapLimitMs: 1e9,
  });
  made.send({ type: 'begin' }, 0);
  return made;
};
const at = (...timesMs: number[]): SessionView[] => {
  const drill = session();
  return timesMs.map((ms) => {
    drill.advance(ms);
    return drill.view();
  });
};
const loud = { nextCueMs: undefined, isSilent: false };

describe('the next look', () => {
  it('is at the next picture while the bow moves, ten a second in a long hold, at the next second in a wait', () => {
    const [ready, draw, hold, letDown, rest] = at(400, 11_000, 14_000, 44_000, 47_300);
    expect(nextLookMs(ready!, loud)).toBeCloseTo(600);
    expect(nextLookMs(draw!, loud)).toBe(0);
    expect(nextLookMs(hold!, loud)).toBe(100);
    expect(nextLookMs(letDown!, loud)).toBe(0);
    expect(nextLookMs(rest!, loud)).toBeCloseTo(700);
  });

  it('is at the next cue where that comes first, and close before a draw that nobody hears', () => {
    const [rest, nearDraw] = at(47_300, 62_100);
    expect(nextLookMs(rest!, { nextCueMs: 120, isSilent: false })).toBe(120);
    expect(nextLookMs(rest!, { nextCueMs: undefined, isSilent: true })).toBeCloseTo(700);
    expect(nextLookMs(nearDraw!, { nextCueMs: undefined, isSilent: true })).toBe(250);
  });

  it('does not come while nothing runs', () => {
    const drill = session();
    drill.advance(5_000);
    drill.send({ type: 'pause' }, 5_000);
    expect(nextLookMs(drill.view(), loud)).toBeUndefined();
    drill.send({ type: 'stop' }, 6_000);
    expect(nextLookMs(drill.view(), loud)).toBeUndefined();
  });

  it('comes no later than the number changes: looked at then, a wait shows every second once', () => {
    const drill = session();
    let nowMs = 0;
    const seconds: number[] = [];
    while (drill.view().step?.kind === 'ready') {
      seconds.push(Math.ceil(drill.view().msLeft / 1000));
      nowMs += nextLookMs(drill.view(), loud)!;
      drill.advance(nowMs);
    }
    expect(seconds).toEqual([10, 9, 8, 7, 6, 5, 4, 3, 2, 1]);
  });
});

describe('a wait that nobody hears', () => {
  // Browsers whose clock counts whole milliseconds (WebKit) look at exactly the second; a busy machine's timers are late.
  it.each([1, 0.1])(
    'is never mistaken for lost time by a live page, clock of %d ms, whatever its timers are late',
    (grain) => {
      fc.assert(
        fc.property(
          fc.infiniteStream(fc.integer({ min: 0, max: 200 })),
          fc.integer({ min: 0, max: 999 }),
          (late, first) => {
            const drill = session();
            const watch = new TimeWatch();
            const look = (nowMs: number) =>
              watch.look({ nowMs, wallMs: nowMs, isSeen: true, isHeard: false }, drill.view());
            look(0);
            let nowMs = first;
            while (drill.view().step?.kind === 'ready') {
              expect([nowMs, look(nowMs)]).toEqual([nowMs, undefined]);
              drill.advance(nowMs);
              const nextMs = nextLookMs(drill.view(), { nextCueMs: undefined, isSilent: true }) ?? 0;
              nowMs = Math.ceil((nowMs + nextMs + (late.next().value ?? 0)) / grain) * grain;
            }
          },
        ),
      );
    },
  );
});

describe('looksOtherwise', () => {
  it('says no where the same number would be drawn again', () => {
    const [first, soon, later] = at(47_100, 47_900, 48_100);
    expect(looksOtherwise(first!, soon!)).toBe(false);
    expect(looksOtherwise(first!, later!)).toBe(true);
    const [draw, moved] = at(11_000, 11_016);
    expect(looksOtherwise(draw!, moved!)).toBe(true);
  });
});
