import { describe, expect, it } from 'vitest';
import type { PrescribedBlock } from '../prescription/prescription.ts';
import { layOut } from '../timeline/lay-out.ts';
import { begun, made, send, timelineOf, walk } from './trial-session.ts';

const block: PrescribedBlock = {
  ...{ block: 0, title: 'Holds', drill: 'holding', sets: 2, reps: 2, drawMs: 3000, holdMs: 30_000, letDownMs: 2000 },
  ...{ restMs: 60_000, setRestMs: 120_000, letDownTo: 'rest', hand: 'usual', addedWeightLbf: 0 },
};
/** Two blocks of the file, its first and its fourth: 10 s to get ready, seven reps of 35 s, four rests of 60 s, two of 120 s. */
const twoBlocks = layOut({
  ...{ programTitle: 'T', date: '2026-11-25', reasons: [], cautions: [], durationMs: 0 },
  blocks: [block, { ...block, block: 3, sets: 1, reps: 3 }],
});

describe('what is shown of a session', () => {
  it('[S31] says which rep, set and block it is, and what is left', () => {
    const session = made(twoBlocks);
    expect(session.view()).toMatchObject({ state: 'waiting', msLeft: 10_000, step: { kind: 'ready' } });
    const atFoot = { repsDone: 0, repsTotal: 7, set: 0, sets: 2, rep: 0, reps: 2, block: 0, blocks: 2 };
    expect(session.view().progress).toEqual({ ...atFoot, msLeft: 735_000 });

    send(session, 'begin', 0);
    walk(session, 0, 260_000);
    expect(session.view()).toMatchObject({ msLeft: 3000, step: { kind: 'draw' }, next: { kind: 'hold' } });
    expect(session.view().progress).toEqual({ ...atFoot, repsDone: 2, set: 1, msLeft: 475_000 });

    walk(session, 260_000, 620_000);
    expect(session.view()).toMatchObject({
      msLeft: 18_000,
      step: { kind: 'hold', block: 3 },
      next: { kind: 'letDown' },
    });
    const inLastBlock = { repsTotal: 7, set: 0, sets: 1, reps: 3, block: 1, blocks: 2 };
    expect(session.view().progress).toEqual({ ...inLastBlock, repsDone: 5, rep: 1, msLeft: 115_000 });

    walk(session, 620_000, 735_000);
    expect(session.view()).toMatchObject({ state: 'done', msLeft: 0 });
    expect(session.view()).not.toHaveProperty('step');
    expect(session.view()).not.toHaveProperty('next');
    expect(session.view().progress).toEqual({ ...inLastBlock, repsDone: 7, rep: 2, msLeft: 0 });
  });

  it.each([
    ['the time to get ready has no call to go back to', timelineOf(), 8000, 8000],
    ['nor has a rest of 8 s', timelineOf({ restMs: 8000 }), 51_000, 51_000],
    [
      'a rest of 10 s goes back to just before its call, 5 s before the draw',
      timelineOf({ restMs: 10_000 }),
      53_000,
      49_999,
    ],
  ])('[S10] more rest in the last seconds: %s', (_, timeline, atMs, offsetMs) => {
    const session = begun(atMs, timeline);
    send(session, 'moreRest', atMs);
    expect(session.view().offsetMs).toBe(offsetMs);
  });

  it('[S13] with a gap limit of 0 every lateness is a gap; a limit that is not a number of milliseconds is refused by its name', () => {
    const session = made(timelineOf(), { gapLimitMs: 0 });
    send(session, 'begin', 0);
    session.advance(10_000);
    expect(session.view().state).toBe('running');
    session.advance(13_001);
    expect(session.view()).toMatchObject({ state: 'paused', pausedBy: 'gap' });
    for (const gapLimitMs of [-1, Number.NaN])
      expect(() => made(timelineOf(), { gapLimitMs })).toThrow(`gapLimitMs is ${gapLimitMs}; expected milliseconds`);
  });
});
